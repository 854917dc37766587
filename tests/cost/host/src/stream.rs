//! The angle error of each approach on a real sensor's recording with an optical reference: BROAD
//! trial 04 (D. Laidig, M. Caruso, A. Cereatti, T. Seel, Data 6(7):72, 2021, CC BY 4.0), at rest.

use cost_items::rivals::Attitude;
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::Live;
use plumbmark::parts::Part;
use plumbmark_tests::Table;
use plumbmark_tests::vector::{cross, elevation_deg, turned, unit};

const ROWS: usize = 6858;
/// Sensor axes whose elevation is judged: those that a heater's checks read.
const AXES: [[f64; 3]; 2] = [[0.0, 0.0, -1.0], [0.0, 1.0, 0.0]];
/// Samples between two looks, as a page or a gauge shows them.
const EVERY: usize = 3;
/// Rest before a look counts, ms: a whole window, and long enough for a filter whose gyroscope
/// reads zero to find its way.
const REST_MS: [f64; 2] = [1000.0, 10_000.0];

struct Sample {
    t_ms: f64,
    force_m_s2: [f64; 3],
    /// Optical reference, sensor frame; `None` while markers are hidden.
    up: Option<[f64; 3]>,
    moving: bool,
}

/// The recording, the sensor's mount in its marker cluster taken out.
pub struct Stream(Vec<Sample>);

/// Errors of elevation at rest, degrees.
pub struct Errors {
    /// Root mean square.
    pub rms_deg: f64,
    /// Largest.
    pub largest_deg: f64,
}

impl Errors {
    fn of(errors_deg: &[f64]) -> Self {
        let squares: f64 = errors_deg.iter().map(|e| e * e).sum();
        assert!(errors_deg.len() > 400, "the recording rests for longer");
        Self {
            rms_deg: (squares / errors_deg.len() as f64).sqrt(),
            largest_deg: errors_deg.iter().fold(0.0, |m, e| m.max(e.abs())),
        }
    }
}

impl Stream {
    /// Reads `tests/reference/broad-04-stream.csv`.
    #[must_use]
    pub fn open() -> Self {
        let table = Table::open("broad-04-stream.csv", ROWS);
        let sample = |row: plumbmark_tests::Row<'_>| {
            let up = row.vector(["ux", "uy", "uz"]);
            Sample {
                t_ms: row.get("t_ms"),
                force_m_s2: row.vector(["ax", "ay", "az"]).map(|v| v / 1000.0),
                up: up.iter().all(|v| v.is_finite()).then(|| unit(up)),
                moving: row.get("moving") == 1.0,
            }
        };
        let mut samples: Vec<_> = table.rows().map(sample).collect();
        let mount = mount_rotation(&samples);
        for sample in &mut samples {
            sample.up = sample.up.map(|up| turned(up, mount));
        }
        Self(samples)
    }

    /// Feeds `see` with time and force, rounded as browsers do where `rounded`; it returns its up
    /// vector, if it has one. Errors over the looks after each of [`REST_MS`].
    fn judge(
        &self,
        rounded: bool,
        mut see: impl FnMut(f64, [f64; 3]) -> Option<[f64; 3]>,
    ) -> [Errors; 2] {
        let mut errors_deg = REST_MS.map(|_| Vec::new());
        let mut moved_ms = 0.0;
        for (i, sample) in self.0.iter().enumerate() {
            if sample.moving {
                moved_ms = sample.t_ms;
            }
            let force = if rounded {
                sample.force_m_s2.map(|v| (v * 10.0).round() / 10.0)
            } else {
                sample.force_m_s2
            };
            let found = see(sample.t_ms, force);
            let (Some(up), Some(truth), 0) = (found, sample.up, i % EVERY) else {
                continue;
            };
            for (rest_ms, errors_deg) in REST_MS.into_iter().zip(&mut errors_deg) {
                if sample.t_ms - moved_ms >= rest_ms {
                    errors_deg.extend(AXES.map(|a| elevation_deg(a, up) - elevation_deg(a, truth)));
                }
            }
        }
        errors_deg.map(|e| Errors::of(&e))
    }

    /// Plumbmark's up vector.
    #[must_use]
    pub fn of_plumbmark(&self, rounded: bool) -> [Errors; 2] {
        let mut live = Live::new();
        live.set_sign(1);
        live.select(Part::Heater, Hold::Back, Surface::MetalFace)
            .expect("a heater is read from its face");
        self.judge(rounded, |t_ms, force| {
            live.motion(t_ms, force.map(Some));
            let reading = live.tick(t_ms).ok()?;
            Some(reading.up.up.map(f64::from))
        })
    }

    /// The up vector by roll and pitch of something else.
    #[must_use]
    pub fn of<A: Attitude>(&self, rounded: bool) -> [Errors; 2] {
        let mut rival = A::default();
        self.judge(rounded, |_, force| {
            rival.update(force.map(|v| v as f32));
            let [(sr, cr), (sp, cp)] = rival.angles().map(|a| f64::from(a).sin_cos());
            Some([-sp, sr * cp, cr * cp])
        })
    }
}

/// The one small rotation of the sensor in its marker cluster that best explains the rest samples:
/// the mean of u × f.
fn mount_rotation(samples: &[Sample]) -> [f64; 3] {
    let at_rest = samples.iter().filter(|s| !s.moving);
    let turns: Vec<_> = at_rest
        .filter_map(|s| s.up.map(|u| cross(u, unit(s.force_m_s2))))
        .collect();
    [0, 1, 2].map(|i| turns.iter().map(|w| w[i]).sum::<f64>() / turns.len() as f64)
}
