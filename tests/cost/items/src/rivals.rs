//! What else could be used to get angles from an accelerometer. The filters' gyroscope reads zero:
//! the recording has none, and a part at rest does not turn.

use crate::signal::{RATE_HZ, WINDOW};
use ahrs::Ahrs as _;
use nalgebra::Vector3;
use plumbmark::prior::STANDARD_GRAVITY_M_S2;

/// Something that takes specific force and gives angles.
pub trait Attitude: Default {
    /// Its name in what is printed.
    const NAME: &'static str;

    /// One sample, m/s².
    fn update(&mut self, force_m_s2: [f32; 3]);
    /// Roll and pitch, Z-Y'-X'' order, radians.
    fn angles(&self) -> [f32; 2];
}

/// Crate `ahrs`, Madgwick's first filter, its own gain of 0.1.
pub struct Madgwick(ahrs::Madgwick<f32>);

impl Default for Madgwick {
    fn default() -> Self {
        Self(ahrs::Madgwick::new(1.0 / RATE_HZ as f32, 0.1))
    }
}

impl Attitude for Madgwick {
    const NAME: &'static str = "ahrs";

    fn update(&mut self, force_m_s2: [f32; 3]) {
        // Refuses a vector of length zero only, which gravity is not.
        let _ = self
            .0
            .update_imu(&Vector3::zeros(), &Vector3::from(force_m_s2));
    }

    fn angles(&self) -> [f32; 2] {
        let (roll, pitch, _) = self.0.quat.euler_angles();
        [roll, pitch]
    }
}

/// Crate `fusion-ahrs`, Madgwick's revised filter, its own gain of 0.5.
pub struct Fusion(fusion_ahrs::Ahrs);

impl Default for Fusion {
    fn default() -> Self {
        let settings = fusion_ahrs::AhrsSettings {
            sample_rate: RATE_HZ as f32,
            ..Default::default()
        };
        Self(fusion_ahrs::Ahrs::with_settings(settings))
    }
}

impl Attitude for Fusion {
    const NAME: &'static str = "fusion-ahrs";

    fn update(&mut self, force_m_s2: [f32; 3]) {
        let force_g = force_m_s2.map(|v| v * (1.0 / STANDARD_GRAVITY_M_S2));
        self.0.update_no_magnetometer([0.0; 3], force_g);
    }

    fn angles(&self) -> [f32; 2] {
        let euler = self.0.quaternion().to_euler();
        [euler.roll.to_radians(), euler.pitch.to_radians()]
    }
}

/// Roll and pitch of one vector by `nalgebra` and `libm`.
fn angles_of(force: &Vector3<f32>) -> [f32; 2] {
    let up = force.normalize();
    let lateral = libm::sqrtf(up.y * up.y + up.z * up.z);
    [libm::atan2f(up.y, up.z), libm::atan2f(-up.x, lateral)]
}

/// `nalgebra` and `libm`, the newest sample alone.
#[derive(Default)]
pub struct Bare(Vector3<f32>);

impl Attitude for Bare {
    const NAME: &'static str = "newest";

    fn update(&mut self, force_m_s2: [f32; 3]) {
        self.0 = Vector3::from(force_m_s2);
    }

    fn angles(&self) -> [f32; 2] {
        angles_of(&self.0)
    }
}

/// `nalgebra` and `libm`, the mean of the last window.
pub struct BareMean {
    ring: [Vector3<f32>; WINDOW],
    next: usize,
    sum: Vector3<f32>,
}

impl Default for BareMean {
    fn default() -> Self {
        Self {
            ring: [Vector3::zeros(); WINDOW],
            next: 0,
            sum: Vector3::zeros(),
        }
    }
}

impl Attitude for BareMean {
    const NAME: &'static str = "mean";

    fn update(&mut self, force_m_s2: [f32; 3]) {
        let force = Vector3::from(force_m_s2);
        self.sum += force - self.ring[self.next];
        self.ring[self.next] = force;
        self.next += 1;
        if self.next == WINDOW {
            self.next = 0;
        }
    }

    fn angles(&self) -> [f32; 2] {
        angles_of(&self.sum)
    }
}
