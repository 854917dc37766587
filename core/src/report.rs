//! What is kept of a capture: one flat shape for pages, files and boards.

use crate::advice::Advice;
use crate::budget::Source;
use crate::check::{End, Outcome};
use crate::decision::{Verdict, Why};
use crate::frames::{elevation_deg, roll_deg, roll_sensitivity, to_body};
use crate::holds::{Hold, Surface};
use crate::limits::{Basis, Limit};
use crate::live::{Channel, Live, Reading};
use crate::parts::{Check, Part};
use crate::reason::NoReading;
use heapless::{String, Vec};

/// The format's name in JSON.
pub const FORMAT: &str = "plumbmark-report";
/// The format's version in JSON.
pub const VERSION: u32 = 1;

/// One contribution to an uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Contribution {
    /// Where it comes from.
    pub name: Source,
    /// Standard uncertainty, degrees.
    pub u_deg: f32,
}

/// The limit that a check was held against, degrees.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct LimitUsed {
    /// Lowest value permitted.
    pub low_deg: Option<f32>,
    /// Highest value permitted.
    pub high_deg: Option<f32>,
    /// Lower end of the preferred band.
    pub preferred_low_deg: Option<f32>,
    /// Upper end of the preferred band.
    pub preferred_high_deg: Option<f32>,
    /// Allowance on the limit.
    pub allowance_deg: Option<f32>,
}

/// One check of a report.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct CheckReport {
    /// The check.
    pub id: Check,
    /// Best value; `None` for a roll that can't be read.
    pub value: Option<f32>,
    /// Expanded uncertainty, two-sided 95 %.
    pub u: Option<f32>,
    /// Unit of both: "deg".
    pub unit: &'static str,
    /// u over the combined standard uncertainty.
    pub k: Option<f32>,
    /// The limit; `None` where none was entered.
    pub limit: Option<LimitUsed>,
    /// On whose word.
    pub basis: Basis,
    /// Document and page.
    pub source: String<120>,
    /// The answer.
    pub verdict: Verdict,
    /// What stands behind it, where it is not plain.
    pub why: Option<Why>,
    /// Left to the limit, or the excess (negative), after the uncertainty, degrees.
    pub margin_deg: Option<f32>,
    /// Probability of conformance.
    pub probability: Option<f32>,
    /// Which end looked lower.
    pub end_told: Option<End>,
    /// Whether it lies in the preferred band, where there is one.
    pub in_preferred: Option<bool>,
    /// Where the uncertainty comes from.
    pub contributions: [Contribution; 7],
    /// The largest of them.
    pub dominant: Source,
    /// What to do next.
    pub advice: Advice,
}

/// A capture.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Report {
    /// [`FORMAT`].
    pub format: &'static str,
    /// [`VERSION`].
    pub version: u32,
    /// The part.
    pub part: Part,
    /// The side of the phone.
    pub hold: Hold,
    /// What it lay on.
    pub surface: Surface,
    /// The channel in charge.
    pub channel: Channel,
    /// Sign of the browser's gravity.
    pub sign: i8,
    /// Step of the values, m/s²; 0 for the orientation channel.
    pub step_m_s2: f32,
    /// Samples a second.
    pub rate_hz: f32,
    /// Samples.
    pub samples: u32,
    /// Whether this phone's zero has been found by turning it; not in this version.
    pub phone_checked: bool,
    /// Up in the body frame.
    pub up: [f32; 3],
    /// Elevation of body x, degrees, for people.
    pub pitch_deg: f32,
    /// Roll about body x, degrees, for people; `None` where this placement can't give it.
    pub roll_deg: Option<f32>,
    /// The checks.
    pub checks: Vec<CheckReport, 2>,
}

impl Live {
    /// Captures the reading of the last [`Live::tick`].
    ///
    /// # Errors
    /// Why there is no reading; [`NoReading::Starting`] also where no placement was chosen.
    pub fn capture(&self) -> Result<Report, NoReading> {
        let reading = self.reading()?;
        let placement = self.placement().ok_or(NoReading::Starting)?;
        let up = to_body(&placement.hold.rotation(), reading.up.up);
        let flat = matches!(
            placement.surface,
            Surface::MetalFace | Surface::Sheet | Surface::Bracket
        ) && placement.hold == Hold::Back;
        Ok(Report {
            format: FORMAT,
            version: VERSION,
            part: placement.part,
            hold: placement.hold,
            surface: placement.surface,
            channel: reading.channel,
            sign: self.sign(),
            step_m_s2: reading.step_m_s2,
            rate_hz: reading.rate_hz,
            samples: reading.samples,
            phone_checked: false,
            up,
            pitch_deg: elevation_deg([1.0, 0.0, 0.0], up),
            // Steeper than 84° a roll is a matter of luck.
            roll_deg: roll_sensitivity(up)
                .filter(|c| flat && crate::vector::norm(*c) < 10.0)
                .map(|_| roll_deg(up)),
            checks: self.check_reports(reading),
        })
    }

    fn check_reports(&self, reading: &Reading) -> Vec<CheckReport, 2> {
        let told = |o: &Outcome| self.end_told(o.check).filter(|_| o.check.asks_lower_end());
        reading
            .outcomes
            .iter()
            .map(|o| check_report(o, &self.limits().limit(o.check), told(o)))
            .collect()
    }
}

fn check_report(o: &Outcome, limit: &Limit, end_told: Option<End>) -> CheckReport {
    CheckReport {
        id: o.check,
        value: o.measured.map(|m| m.value_deg),
        u: o.measured.map(|m| m.u_deg),
        unit: "deg",
        k: o.measured.map(|m| m.u_deg / m.combined_deg),
        limit: limit.is_entered().then_some(LimitUsed {
            low_deg: limit.low_deg,
            high_deg: limit.high_deg,
            preferred_low_deg: limit.preferred_low_deg,
            preferred_high_deg: limit.preferred_high_deg,
            allowance_deg: limit.allowance_deg,
        }),
        basis: limit.basis,
        source: limit.source.clone(),
        verdict: o.verdict,
        why: o.why,
        margin_deg: o.margin_deg,
        probability: o.probability,
        end_told,
        in_preferred: o.in_preferred,
        contributions: Source::ALL.map(|name| Contribution {
            name,
            u_deg: o.budget.of(name),
        }),
        dominant: o.budget.dominant(),
        advice: o.advice,
    }
}
