//! What is assumed of a phone and of a hand before anything is known: standard uncertainties,
//! each with its source. "Simulated" means the study behind the estimator's design (nominal
//! population: zero 6.3 mg rms an axis); "assumed" is our own number.

/// Standard gravity, m/s². 3rd CGPM (1901), exact by definition.
pub const STANDARD_GRAVITY_M_S2: f32 = 9.806_65;

/// Zero offset of one axis of an unchecked phone, milli-g.
/// Recordings of three phones show up to 16 mg on the worst of their axes; 8 mg rms gives that.
pub const ZERO_MG: f32 = 8.0;

/// Cross-axis error, share of full scale; one with the zero until a reversal. Simulated.
pub const CROSS_AXIS: f32 = 0.002;

/// Zero found by a reversal, or a calibration: for how long it counts in full in the same place, ms.
/// One hour. Assumed: 1 mg/K is typical of the parts (BMI160 data sheet), and a cab cools by 20 K.
pub const FOUND_FOR_MS: f64 = 3_600_000.0;

/// Largest zero of one axis that is still a sensor's and not a mistake, share of gravity.
/// BMI160 data sheet: ±40 mg. Two placements alone can't show that the phone was tipped between
/// them; a zero that no sensor has can.
pub const LARGEST_ZERO: f32 = 0.04;

/// What a phone's own case, bump or edge adds to its zero from one side to another, degrees.
/// Assumed: half a millimetre under 140 mm is 0.20°.
pub const SIDE_TO_SIDE_DEG: f32 = 0.2;

/// Scale error of one axis. Recordings: 0.3 to 0.5 %.
pub const SCALE: f32 = 0.005;

/// Bounds of the noise of one sample in units of the rounding step. Recordings: 0.10 to 0.5.
pub const NOISE_STEPS: (f32, f32) = (0.02, 0.5);

/// Step that browsers round acceleration to, m/s².
/// W3C *Device Orientation and Motion* and *Accelerometer*: 0.1 m/s² an axis.
pub const BROWSER_STEP_M_S2: f32 = 0.1;

/// Step taken for a sensor that never changes although nobody rounds it, m/s²:
/// that of the coarsest part in use, 8 bits over ±2 g (15.6 mg). Assumed.
pub const UNSEEN_STEP_M_S2: f32 = 0.16;

/// Resolution kept of readings that no browser rounds, m/s².
pub const FINE_COUNT_M_S2: f32 = 0.001;

/// Step that browsers round β and γ to, degrees. W3C *Device Orientation and Motion*.
pub const ANGLE_STEP_DEG: f32 = 0.1;

/// Largest lasting difference of the two channels that is not a fault, degrees: 0.07 for rounding
/// and filter noise (simulated) and 0.17 (3 mg) that recordings show between a phone's fused
/// orientation and its own accelerometer.
pub const AGREE_DEG: f32 = 0.24;

/// Coverage factor of a normal distribution's sum with no rectangle, two-sided 95 %,
/// rounded up by the fit in [`crate::budget::coverage_factor`].
pub const K_NORMAL: f32 = 1.965;

/// Rayleigh factor of a two-dimensional error with a one-sided result, 95 %: √(−2 ln 0.05).
pub const K_PLUMB: f32 = 2.448;

/// Band that |a| must lie in at rest, m/s²: gravity on earth (9.78 to 9.83) with 30 mg of zero,
/// 2 % of scale and the step. Assumed.
pub const AT_REST_M_S2: (f32, f32) = (9.3, 10.3);
