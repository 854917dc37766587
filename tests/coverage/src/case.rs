//! What one row of the coverage table is about.

use plumbmark_simulator::{Draws, Population};

/// The channel that is listened to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Channel {
    /// Acceleration including gravity alone.
    Acceleration,
    /// The browser's fused orientation alone.
    Orientation,
    /// Both, as most phones give them: core chooses.
    Both,
}

impl Channel {
    /// Each alone, and both.
    pub const ALL: [Self; 3] = [Self::Acceleration, Self::Orientation, Self::Both];

    /// The channel's name in the tables.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Acceleration => "acceleration",
            Self::Orientation => "orientation",
            Self::Both => "both",
        }
    }
}

/// How often the phone is laid on the part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Placing {
    /// Once.
    First,
    /// Twice, the second time turned end for end.
    Reversal,
}

impl Placing {
    /// All ways.
    pub const ALL: [Self; 2] = [Self::First, Self::Reversal];

    /// The way's name in the tables.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::First => "first touch",
            Self::Reversal => "reversal",
        }
    }
}

/// Where the part's length points, degrees above level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Elevation {
    /// About level, 15°, 45° and plumb in equal shares.
    Mixed,
    /// Within ±5° of level.
    NearLevel,
    /// About one elevation.
    About(f64),
}

impl Elevation {
    /// One elevation, degrees; beyond 90° the part leans over backwards.
    pub fn draw(self, draws: &mut Draws) -> f64 {
        let about = |e: f64, draws: &mut Draws| e + draws.between(-0.6, 0.6);
        match self {
            Self::Mixed => {
                let which = (4.0 * draws.uniform()) as usize;
                about([0.0, 15.0, 45.0, 90.0][which], draws)
            }
            Self::NearLevel => draws.between(-5.0, 5.0),
            Self::About(e) => about(e, draws),
        }
    }

    /// The choice's name in the tables.
    #[must_use]
    pub fn name(self) -> String {
        match self {
            Self::Mixed => "0/15/45/90".to_owned(),
            Self::NearLevel => "-5 to 5".to_owned(),
            Self::About(e) => format!("{e}"),
        }
    }
}

/// One row: what is held fixed; all the rest is drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// What is unlike the nominal population and a phone at rest; "nominal" where nothing is.
    pub what: &'static str,
    /// What is asked of it.
    pub gate: Gate,
    /// How often the phone is laid on the part.
    pub placing: Placing,
    /// The channel listened to.
    pub channel: Channel,
    /// Noise of one sample in steps of the browser's rounding.
    pub sigma_steps: f64,
    /// Standard uncertainty of a placement's tilt, degrees an axis: in the limit set and in truth.
    pub hold_deg: f64,
    /// Where the part points.
    pub elevation: Elevation,
    /// What phones are like.
    pub population: Population,
    /// Turn of the phone about the surface's normal, degrees: in the limit set and in truth.
    pub heading_deg: f64,
    /// Part of the hold that is not drawn anew at each placement.
    pub fixed: Fixed,
    /// Error of the fused filter when the phone comes to rest, degrees an axis.
    pub start_deg: f64,
    /// Change of the zero between two placements, mg an axis.
    pub drift_mg: f64,
    /// Tremor, m/s² rms an axis.
    pub tremor_m_s2: f64,
    /// Slow wander of the hand, degrees an axis.
    pub wander_deg: f64,
    /// Whether acceleration is rounded.
    pub rounded: bool,
}

/// What is asked of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Gate {
    /// Coverage, false "within", and that U is no wider than it must be.
    Full,
    /// Coverage and false "within". Where core chooses between two channels, readings of two
    /// widths are mixed, and a mean U over a percentile of all errors says nothing.
    Honesty,
    /// Nothing: it is reported as what it is.
    None,
}

impl Gate {
    /// The gate's name in the tables.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Full => "full",
            Self::Honesty => "honesty",
            Self::None => "no",
        }
    }
}

/// Where a misplacement sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fixed {
    /// Nowhere: fresh at each placement.
    Nothing,
    /// In the phone's case: a reversal cancels it.
    Case,
    /// In the surface: a reversal repeats it.
    Surface,
}

impl Case {
    /// The nominal population, a settled filter, everything at rest.
    #[must_use]
    pub fn nominal(placing: Placing, channel: Channel, sigma_steps: f64, hold_deg: f64) -> Self {
        Self {
            what: "nominal",
            gate: match channel {
                Channel::Acceleration | Channel::Orientation => Gate::Full,
                Channel::Both => Gate::Honesty,
            },
            placing,
            channel,
            sigma_steps,
            hold_deg,
            elevation: match placing {
                Placing::First => Elevation::Mixed,
                Placing::Reversal => Elevation::NearLevel,
            },
            population: Population::NOMINAL,
            heading_deg: 0.0,
            fixed: Fixed::Nothing,
            start_deg: 0.0,
            drift_mg: 0.0,
            tremor_m_s2: 0.0,
            wander_deg: 0.0,
            rounded: true,
        }
    }

    /// The cells of the row's name, as the tables have them.
    #[must_use]
    pub fn key(&self) -> String {
        format!(
            "{},{},{},{},{},{}",
            self.what,
            self.placing.name(),
            self.channel.name(),
            self.sigma_steps,
            self.hold_deg,
            self.elevation.name()
        )
    }

    /// The row's own seed: FNV-1a of its name, so that rows can be added without redrawing others.
    #[must_use]
    pub fn seed(&self) -> u64 {
        self.key()
            .bytes()
            .fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
                (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
            })
    }
}
