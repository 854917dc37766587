//! Unevenness under the seal: gaps between a straightedge and the face, along every side of the
//! seal line and both diagonals, by feeler gauge. A list with a line missing can show that the
//! face is too uneven, never that it is even enough.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

/// Where the straightedge lay.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Line {
    /// Along the seal, one of its long sides.
    LongOne,
    /// The other one.
    LongTwo,
    /// One of its short sides.
    ShortOne,
    /// The other one.
    ShortTwo,
    /// From corner to corner.
    DiagonalOne,
    /// Between the other two corners.
    DiagonalTwo,
}

impl Line {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 6] = [
        Self::LongOne,
        Self::LongTwo,
        Self::ShortOne,
        Self::ShortTwo,
        Self::DiagonalOne,
        Self::DiagonalTwo,
    ];

    /// Its length, in the unit of the seal's two sides.
    fn length(self, long: f64, short: f64) -> f64 {
        match self {
            Self::LongOne | Self::LongTwo => long,
            Self::ShortOne | Self::ShortTwo => short,
            Self::DiagonalOne | Self::DiagonalTwo => libm::sqrt(long * long + short * short),
        }
    }
}

/// A blade's thickness: 0.01 mm (assumed).
const BLADE: Kind = Kind::new(Unit::Mm, 0.0, 20.0).give_or_take(0.01, 0.0);
const SPREAD: Kind = Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0);

row! {
    /// The seal and the straightedge.
    Support {
        /// Long side of the seal line.
        long_mm: Kind::tape(20.0, 2000.0),
        /// Short side of the seal line.
        short_mm: Kind::tape(20.0, 2000.0),
        /// Length of the straightedge.
        straightedge_mm: Kind::tape(50.0, 3000.0),
        /// How far off straight its edge can be, from its paper or by turning it over.
        straightness_mm: Kind::new(Unit::Mm, 0.0, 2.0),
        /// How far off it is: −1 hollow, 1 crowned.
        edge_spread: SPREAD,
    }
}

row! {
    /// The largest gap along one line.
    SupportLine {
        /// Which line, by its code.
        line: Kind::choice(Line::ALL.len()),
        /// Thickest blade or pile of blades that goes in; 0 where none does; empty: not yet read.
        goes_mm: BLADE.or_none(),
        /// Thinnest that does not go in; empty: even the thickest goes in.
        stays_mm: BLADE.or_none(),
        /// Where the gap lies between the two.
        step_spread: SPREAD,
    }
}

row! {
    /// What the list tells.
    SupportGiven {
        /// Largest gap, where every line was read along its whole length.
        unevenness_mm: Kind::result(Unit::Mm),
        /// Largest gap found, where not: the face is at least as uneven.
        at_least_mm: Kind::result(Unit::Mm),
        /// Lines not read along their whole length.
        open_lines: Kind::result(Unit::Count),
    }
}

row! {
    /// What one line tells.
    SupportLineGiven {
        /// Middle between the blade that goes in and the one that does not.
        gap_mm: Kind::result(Unit::Mm),
    }
}

/// The whole list is held against the limit; a part of it can only break it.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::Unevenness),
    Checked::partial(1, BoundId::Unevenness),
];

/// The sheet.
pub const SHEET: Declared = Declared::new::<Support, SupportGiven>("support", support)
    .rows::<SupportLine>()
    .row_results::<SupportLineGiven>()
    .checks(CHECKS);

/// The largest gap of a list.
///
/// # Errors
/// A blade that stays out thinner than one that goes in, or with none that goes in told.
pub fn support(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    const WIDTH: usize = SupportLine::KINDS.len();
    let fixed = Support::KINDS.len();
    let seal = Support::read(x);
    let lines = x.get(fixed..).unwrap_or_default().as_chunks::<WIDTH>().0;
    let (given, row_given) = to
        .split_at_mut_checked(SupportGiven::KINDS.len())
        .unwrap_or_default();
    let mut largest = f64::NAN;
    for (i, (line, to)) in lines.iter().zip(row_given).enumerate() {
        let line = SupportLine::read(line);
        let at = |place| fixed + i * WIDTH + place;
        if line.goes_mm.is_nan() && !line.stays_mm.is_nan() {
            return Err(Refusal::at(at(1), Problem::Missing));
        }
        if line.stays_mm <= line.goes_mm {
            return Err(Refusal::at(at(2), Problem::Contradiction));
        }
        let gap_mm = gap_mm(&line);
        largest = largest.max(gap_mm);
        *to = gap_mm;
    }
    let found = largest + seal.edge_spread * seal.straightness_mm;
    let is_open = |line: &&Line| !is_read(&seal, **line, lines);
    let open_lines = Line::ALL.iter().filter(is_open).count();
    let whole = open_lines == 0;
    SupportGiven {
        unevenness_mm: if whole { found } else { f64::NAN },
        at_least_mm: if whole { f64::NAN } else { found },
        open_lines: open_lines as f64,
    }
    .write(given);
    Ok(())
}

/// A gap lies between the thickest blade that goes in and the thinnest that does not.
fn gap_mm(line: &SupportLine) -> f64 {
    if line.stays_mm.is_nan() {
        return line.goes_mm;
    }
    line.goes_mm + 0.5 * (1.0 + line.step_spread) * (line.stays_mm - line.goes_mm)
}

/// Whether a line was read along its whole length, every gap on it with a blade that stays out.
fn is_read(seal: &Support, line: Line, rows: &[[f64; SupportLine::KINDS.len()]]) -> bool {
    if seal.straightedge_mm < line.length(seal.long_mm, seal.short_mm) {
        return false;
    }
    let (mut any, mut all) = (false, true);
    for row in rows {
        let row = SupportLine::read(row);
        if row.line == f64::from(line as u8) && !row.goes_mm.is_nan() {
            any = true;
            all &= !row.stays_mm.is_nan();
        }
    }
    any && all
}
