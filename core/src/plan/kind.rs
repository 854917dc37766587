//! What kind of number a field takes: its unit, what it can be, how well it is usually known; and
//! why a number is refused.

/// The unit of a field or a result.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[repr(u8)]
pub enum Unit {
    /// One of a list, by its place in it.
    Choice,
    /// A whole number of things.
    Count,
    /// A share or a factor, no unit.
    Ratio,
    /// Millimetres, of lengths told by a tape.
    Mm,
    /// Metres.
    M,
    /// Square centimetres.
    Cm2,
    /// Square metres.
    M2,
    /// Cubic metres.
    M3,
    /// Square millimetres, of conductors.
    Mm2,
    /// Millilitres.
    Ml,
    /// Litres.
    L,
    /// Degrees of angle.
    Deg,
    /// Degrees Celsius.
    Celsius,
    /// Kelvin, of differences.
    Kelvin,
    /// Pascal.
    Pa,
    /// Watt.
    W,
    /// Watt a metre and kelvin.
    WPerMK,
    /// Watt a square metre and kelvin.
    WPerM2K,
    /// Square metre kelvin a watt.
    M2KPerW,
    /// Kilojoules a kelvin.
    KjPerK,
    /// Kilowatt-hours a litre.
    KwhPerL,
    /// Litres an hour.
    LPerH,
    /// Cubic metres an hour.
    M3PerH,
    /// Kilograms an hour.
    KgPerH,
    /// Metres a second.
    MPerS,
    /// Square millimetres a second.
    Mm2PerS,
    /// Kilograms a cubic metre.
    KgPerM3,
    /// Hertz.
    Hz,
    /// Milliseconds.
    Ms,
    /// Seconds.
    S,
    /// Minutes.
    Min,
    /// Hours.
    H,
    /// Volts.
    V,
    /// Amperes.
    A,
    /// Ampere-hours.
    Ah,
    /// Milliohm.
    Mohm,
    /// Times an hour.
    PerH,
    /// Millionths of a volume.
    Ppm,
    /// Ohm a kilometre, or milliohm a metre.
    OhmPerKm,
    /// Hundredths.
    Percent,
}

/// What a row's numbers are, in order. By reference, since many are alike.
pub type Kinds = &'static [&'static Kind];

/// What a field takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kind {
    /// Unit.
    pub unit: Unit,
    /// Lowest value that makes sense, in the unit.
    pub low: f64,
    /// Highest value that makes sense.
    pub high: f64,
    /// A number nearer to zero than this, and not zero, is likely one of another unit.
    pub least: f64,
    /// Half-width assumed where none is told: this much ...
    pub half_width: f64,
    /// ... and this share of the value.
    pub half_share: f64,
    /// Whether the sheet can do without it; it is then not a number.
    pub optional: bool,
}

impl Kind {
    /// A number of the unit from `low` to `high`, taken as exact until told otherwise.
    #[must_use]
    pub const fn new(unit: Unit, low: f64, high: f64) -> Self {
        Self {
            unit,
            low,
            high,
            least: 0.0,
            half_width: 0.0,
            half_share: 0.0,
            optional: false,
        }
    }

    /// A length in mm told by a tape: both ends read to a millimetre, the tape itself (class II,
    /// 0.3 mm + 0.2 mm/m, Directive 2014/32/EU annex X, value from memory) and a hand that holds
    /// it. Assumed: 2 mm + 0.2 %. Less than a millimetre is not told by a tape: 0.2 is likely 200.
    #[must_use]
    pub const fn tape(low_mm: f64, high_mm: f64) -> Self {
        Self {
            least: 1.0,
            ..Self::new(Unit::Mm, low_mm, high_mm).give_or_take(2.0, 0.002)
        }
    }

    /// One of a list of `n`, by its place in it.
    #[must_use]
    pub const fn choice(n: usize) -> Self {
        Self::new(Unit::Choice, 0.0, (n - 1) as f64)
    }

    /// The same, and a number nearer to zero than `least`, and not zero, is likely one of another
    /// unit.
    #[must_use]
    pub const fn zero_or_from(self, least: f64) -> Self {
        Self { least, ..self }
    }

    /// What a sheet gives: any number of the unit.
    #[must_use]
    pub const fn result(unit: Unit) -> Self {
        Self::new(unit, f64::NEG_INFINITY, f64::INFINITY)
    }

    /// The same of a result; where its interval leaves `low` to `high`, the formulas of its sheet
    /// may not hold, and no other result of the sheet is bounded.
    #[must_use]
    pub const fn only_within(self, low: f64, high: f64) -> Self {
        Self { low, high, ..self }
    }

    /// The same, known only to within half a width: `half_width` in the unit and a share of the
    /// value.
    #[must_use]
    pub const fn give_or_take(self, half_width: f64, half_share: f64) -> Self {
        Self {
            half_width,
            half_share,
            ..self
        }
    }

    /// The same, and the sheet can do without it.
    #[must_use]
    pub const fn or_none(self) -> Self {
        Self {
            optional: true,
            ..self
        }
    }

    /// Half-width assumed for `value`.
    #[must_use]
    pub fn assumed(&self, value: f64) -> f64 {
        self.half_width + self.half_share * value.abs()
    }

    /// Checks one number.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn check(&self, value: f64) -> Result<(), Problem> {
        if value.is_nan() {
            return if self.optional {
                Ok(())
            } else {
                Err(Problem::Missing)
            };
        }
        let whole = matches!(self.unit, Unit::Choice | Unit::Count);
        if whole && libm::floor(value) != value {
            return Err(Problem::NotWhole);
        }
        if (self.low..=self.high).contains(&value) && (value == 0.0 || value.abs() >= self.least) {
            return Ok(());
        }
        Err(self
            .other_unit(value)
            .map_or(Problem::OutOfRange, Problem::OtherUnit))
    }

    /// The unit that a length or a power was likely typed in, where it makes no sense in its own
    /// and another makes it one that does.
    fn other_unit(&self, value: f64) -> Option<Slip> {
        let per_unit: &[(Slip, f64)] = match self.unit {
            Unit::Mm => &[
                (Slip::Metres, 1000.0),
                (Slip::Centimetres, 10.0),
                (Slip::Inches, 25.4),
            ],
            Unit::M => &[
                (Slip::Millimetres, 0.001),
                (Slip::Centimetres, 0.01),
                (Slip::Feet, 0.3048),
            ],
            Unit::W => &[(Slip::Kilowatts, 1000.0)],
            _ => return None,
        };
        let fits = |&&(_, factor): &&(Slip, f64)| {
            value * factor >= self.least && (self.low..=self.high).contains(&(value * factor))
        };
        if value > 0.0 {
            per_unit.iter().find(fits).map(|&(slip, _)| slip)
        } else {
            None
        }
    }
}

/// The unit that a number was likely typed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[repr(u8)]
pub enum Slip {
    /// Millimetres.
    Millimetres,
    /// Centimetres.
    Centimetres,
    /// Metres.
    Metres,
    /// Inches.
    Inches,
    /// Feet.
    Feet,
    /// Kilowatts.
    Kilowatts,
}

impl Slip {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 6] = [
        Self::Millimetres,
        Self::Centimetres,
        Self::Metres,
        Self::Inches,
        Self::Feet,
        Self::Kilowatts,
    ];
}

/// Why a number, or a sheet, is refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Problem {
    /// Not entered.
    Missing,
    /// Outside what makes sense: see the field's kind.
    OutOfRange,
    /// The same, and it would make sense in this unit.
    OtherUnit(Slip),
    /// Must be a whole number.
    NotWhole,
    /// A half-width below zero, or no number.
    HalfWidth,
    /// Contradicts another field: smaller than what must fit in it, points of a curve that don't
    /// fall, a bend of no angle.
    Contradiction,
    /// The numbers make sense one by one, but what they describe is outside what the formulas are
    /// for: fuel below its cloud point, air hotter than the table.
    BeyondFormula,
    /// More rows than a sheet takes.
    TooMany,
}

impl Problem {
    /// Its code: a place in [`Self::NAMES`], and the slip's code or 0.
    #[must_use]
    pub fn code(self) -> (u8, u8) {
        match self {
            Self::Missing => (0, 0),
            Self::OutOfRange => (1, 0),
            Self::OtherUnit(slip) => (2, slip as u8),
            Self::NotWhole => (3, 0),
            Self::HalfWidth => (4, 0),
            Self::Contradiction => (5, 0),
            Self::BeyondFormula => (6, 0),
            Self::TooMany => (7, 0),
        }
    }

    /// Names by code, for a page that has its own words.
    pub const NAMES: [&'static str; 8] = [
        "missing",
        "out_of_range",
        "other_unit",
        "not_whole",
        "half_width",
        "contradiction",
        "beyond_formula",
        "too_many",
    ];
}

/// What is refused: the place of the number among those given, and why.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Refusal {
    /// Place in the slice that the sheet was given.
    pub place: usize,
    /// Why.
    pub problem: Problem,
}

impl Refusal {
    /// A refusal of the number at `place`.
    #[must_use]
    pub const fn at(place: usize, problem: Problem) -> Self {
        Self { place, problem }
    }
}
