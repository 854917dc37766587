//! A random reading: a direction that a phone with a zero and a scale feels.

use crate::row::Row;
use plumbmark::budget::{Contact, UpEstimate};
use plumbmark::holds::Hold;
use plumbmark::limits::Limit;
use plumbmark::parts::Check;
use plumbmark::sensor::Sensor;
use plumbmark_tests::Draws;
use plumbmark_tests::vector::unit;

/// One of several.
pub fn one_of<T: Copy>(draws: &mut Draws, all: &[T]) -> T {
    all[(draws.uniform() * all.len() as f64) as usize]
}

/// A random direction within `most_deg` of `about`.
pub fn near(draws: &mut Draws, about: [f64; 3], most_deg: f64) -> [f64; 3] {
    let far = draws.direction();
    let by = draws.between(0.0, most_deg).to_radians().tan();
    unit([0, 1, 2].map(|i| about[i] + by * far[i]))
}

/// A sensor as assumed, or as finding `number` left it: a calibration, or a turn at some attitude.
pub fn sensor(draws: &mut Draws, number: u16) -> Sensor {
    if number == 0 {
        return Sensor::assumed();
    }
    let found_at = one_of(draws, &[0.0, 1.0]);
    let found_at = draws.direction().map(|v| (found_at * v) as f32);
    let mut three = |low, high| [0; 3].map(|_| draws.between(low, high) as f32);
    Sensor {
        zero: three(-0.03, 0.03),
        u_zero: three(0.0005, 0.006),
        zero_from: [number; 3],
        found_at,
        scale: three(0.99, 1.01),
        u_scale: three(0.0005, 0.004),
        scale_from: number,
        ..Sensor::assumed()
    }
}

/// The sensor used on this side of the phone; by half of the draws what was found was found on
/// another one, whose bump differs.
pub fn on_side(draws: &mut Draws, sensor: Sensor, hold: Hold) -> Sensor {
    if draws.uniform() < 0.5 {
        return sensor;
    }
    Sensor {
        u_side: [0; 3].map(|_| draws.between(0.0, 0.005) as f32),
        side: hold as u8 + 1,
        ..sensor
    }
}

/// What this sensor feels of a device's up.
fn feels(sensor: &Sensor, device: [f64; 3]) -> [f64; 3] {
    [0, 1, 2].map(|i| f64::from(sensor.scale[i]) * device[i] + f64::from(sensor.zero[i]))
}

/// A reading as drawn, before anything is corrected.
pub struct Drawn {
    /// What the phone feels, share of gravity, device frame.
    pub felt: [f64; 3],
    /// Its estimate.
    pub raw: UpEstimate,
    /// What is known of the sensor.
    pub sensor: Sensor,
    /// How the phone touches the part.
    pub contact: Contact,
    /// Which side of it.
    pub hold: Hold,
}

impl Drawn {
    /// A phone that lies so that up is `up_body` in the body frame.
    pub fn new(draws: &mut Draws, up_body: [f64; 3], hold: Hold, sensor: Sensor) -> Self {
        let r = hold.rotation();
        let device = [0, 1, 2].map(|i| (0..3).map(|k| f64::from(r[k][i]) * up_body[k]).sum());
        let contact = Contact {
            hold_deg: draws.between(0.03, 0.5) as f32,
            align_deg: draws.between(0.0, 1.5) as f32,
            normal: hold.normal(),
        };
        Self::on(draws, device, hold, sensor, contact)
    }

    /// The same by the device frame, with this contact.
    pub fn on(
        draws: &mut Draws,
        device: [f64; 3],
        hold: Hold,
        sensor: Sensor,
        contact: Contact,
    ) -> Self {
        let felt = feels(&sensor, device);
        let mut half_steps = [[0.0; 3]; 6];
        // Three rectangles along the axes, or two in any direction, as the channels have them.
        if draws.uniform() < 0.6 {
            for (i, half) in half_steps.iter_mut().take(3).enumerate() {
                half[i] = draws.between(0.0, 0.0052) as f32;
            }
        } else {
            for half in half_steps.iter_mut().take(2) {
                *half = draws.direction().map(|v| (v * 0.000_873) as f32);
            }
        }
        let raw = UpEstimate {
            up: unit(felt).map(|v| v as f32),
            noise: [0; 3].map(|_| draws.between(0.0, 0.003) as f32),
            half_steps,
            worst_half_step: 0.0052,
            settle_deg: one_of(draws, &[0.0, 0.05, 0.2]),
            sensor: Sensor::assumed(),
        };
        Self {
            felt,
            raw,
            sensor,
            contact,
            hold,
        }
    }

    /// The device's up that it follows from.
    pub fn device(&self) -> [f64; 3] {
        let s = &self.sensor;
        [0, 1, 2].map(|i| (self.felt[i] - f64::from(s.zero[i])) / f64::from(s.scale[i]))
    }

    /// The same phone where up is `device`.
    pub fn moved_to(&mut self, device: [f64; 3]) {
        self.felt = feels(&self.sensor, device);
        self.raw.up = unit(self.felt).map(|v| v as f32);
    }

    /// As core corrects it.
    pub fn corrected(&self) -> UpEstimate {
        self.sensor.apply(&self.raw)
    }

    /// Writes everything that was drawn, each name with `prefix` before it.
    pub fn write(&self, row: &mut Row, prefix: &str) {
        let mut put = |name: &str, v: &[f32]| row.singles(&format!("{prefix}{name}"), v);
        put("noise", &self.raw.noise);
        put("half", self.raw.half_steps.as_flattened());
        put("settle_deg", &[self.raw.settle_deg]);
        put("zero", &self.sensor.zero);
        put("u_zero", &self.sensor.u_zero);
        put("zero_from", &self.sensor.zero_from.map(f32::from));
        put("u_side", &self.sensor.u_side);
        put("side", &[f32::from(self.sensor.side)]);
        put("found_at", &self.sensor.found_at);
        put("scale", &self.sensor.scale);
        put("u_scale", &self.sensor.u_scale);
        put("scale_from", &[f32::from(self.sensor.scale_from)]);
        put("hold_deg", &[self.contact.hold_deg]);
        put("align_deg", &[self.contact.align_deg]);
        row.numbers(&format!("{prefix}felt"), &self.felt);
        let hold = match self.hold {
            Hold::Back => "back",
            Hold::LongEdge => "long_edge",
            Hold::ShortEdge => "short_edge",
        };
        row.word(&format!("{prefix}hold"), hold);
    }
}

/// A limit about the edges of an interval, so that every verdict comes up.
pub fn limit(draws: &mut Draws, check: Check, value_deg: f32, u_deg: f32) -> Limit {
    let mut limit = Limit::not_entered(check);
    let at = value_deg + u_deg * draws.between(-2.2, 2.2) as f32;
    if draws.uniform() < 0.5 {
        limit.low_deg = Some(at);
    } else {
        limit.high_deg = Some(at);
    }
    limit
}

/// Writes a check and its limit.
pub fn write_check(row: &mut Row, check: Check, limit: &Limit) {
    row.word("check", check.name());
    row.singles("low", &[limit.low_deg.unwrap_or(f32::NEG_INFINITY)]);
    row.singles("high", &[limit.high_deg.unwrap_or(f32::INFINITY)]);
}

/// Up for a check: any direction, or now and then its axis near plumb.
pub fn up_for(draws: &mut Draws, check: Check) -> [f64; 3] {
    let axis = check.axis_body().map(f64::from);
    match draws.uniform() {
        p if p < 0.05 => near(draws, axis, 6.0),
        p if p < 0.10 => near(draws, axis.map(|v| -v), 6.0),
        _ => draws.direction(),
    }
}
