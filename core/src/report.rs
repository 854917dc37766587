//! What is kept of a capture: one flat shape for pages, files and boards.

use crate::advice::Advice;
use crate::budget::Source;
use crate::check::{End, Outcome};
use crate::decision::{Verdict, Why};
use crate::frames::{elevation_deg, roll_deg, roll_sensitivity, to_body};
use crate::gathered::gathered;
use crate::holds::{Hold, Placement, Surface};
use crate::in_vehicle::Working;
use crate::level::LevelRefusal;
use crate::limits::{Basis, LimitSet};
use crate::live::{Channel, Live, Reading};
use crate::parts::{Check, Part};
use crate::reading::ZeroBy;
use crate::reason::NoReading;
use crate::taken::Taken;
use crate::vehicle::{Pointing, VehicleTerms};
use heapless::Vec;

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
pub struct CheckReport<'a> {
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
    pub source: &'a str,
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
    pub contributions: [Contribution; 10],
    /// The largest of them.
    pub dominant: Source,
    /// What to do next.
    pub advice: Advice,
}

/// A capture.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Report<'a> {
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
    /// What is known of the phone's zero.
    pub zero_by: ZeroBy,
    /// Up in the body frame.
    pub up: [f32; 3],
    /// Elevation of body x, degrees, for people.
    pub pitch_deg: f32,
    /// Roll about body x, degrees, for people; `None` where this placement can't give it.
    pub roll_deg: Option<f32>,
    /// The checks, as parked.
    pub checks: Vec<CheckReport<'a>, 2>,
    /// The same in the vehicle; `None` where its level was not read.
    pub vehicle: Option<VehicleReport<'a>>,
}

/// The checks of a capture in the vehicle.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct VehicleReport<'a> {
    /// Up in the rail's body frame.
    pub level_up: [f32; 3],
    /// Age of that reading, seconds.
    pub level_age_s: f64,
    /// What was told of the vehicle.
    pub terms: VehicleTerms,
    /// Which way the part points against the phone on the rail.
    pub pointing: Pointing,
    /// Why the checks can't be answered in the vehicle, if so.
    pub refused: Option<LevelRefusal>,
    /// The checks, as if the vehicle stood level.
    pub checks: Vec<CheckReport<'a>, 2>,
    /// What the working slope takes of each, where one was told.
    pub working: Vec<Option<Working>, 2>,
}

impl Live {
    /// Captures the reading of the last [`Live::tick`].
    ///
    /// # Errors
    /// Why there is no reading; [`NoReading::Starting`] also where no part was chosen.
    pub fn capture(&self) -> Result<Report<'_>, NoReading> {
        let reading = self.reading()?;
        let placement = self.placement().ok_or(NoReading::Starting)?;
        let told = |check| self.end_told(check);
        let parked = report(reading, placement, self.sign(), self.limits(), &told)?;
        Ok(Report {
            vehicle: self.vehicle_report(reading),
            ..parked
        })
    }

    fn reported(&self, o: &Outcome) -> CheckReport<'_> {
        check_report(o, self.limits(), &|check| self.end_told(check))
    }

    fn vehicle_report(&self, reading: &Reading) -> Option<VehicleReport<'_>> {
        let level = self.level()?;
        let answers = reading.in_vehicle.as_ref()?;
        let given = answers.as_ref().map_or(&[][..], |a| a);
        Some(VehicleReport {
            level_up: level.up_body(),
            level_age_s: (self.clock_ms - level.taken_ms) / 1000.0,
            terms: *self.vehicle(),
            pointing: self.pointing(),
            refused: answers.as_ref().err().copied(),
            checks: gathered(given.iter().map(|v| self.reported(&v.outcome))),
            working: gathered(given.iter().map(|v| v.working)),
        })
    }
}

impl Taken {
    /// The capture, answered by `limits`.
    ///
    /// # Errors
    /// [`NoReading::Starting`] where it is of no part.
    pub fn report<'a>(&self, limits: &'a LimitSet) -> Result<Report<'a>, NoReading> {
        let surface_deg = limits.surface_deg(self.placement.surface);
        let reading = Reading {
            channel: Channel::Acceleration,
            up: self.up,
            samples: self.samples,
            rate_hz: self.rate_hz,
            step_m_s2: self.step_m_s2,
            zero_by: self.zero_by,
            outcomes: self.outcomes(&limits.lines, surface_deg),
            in_vehicle: None,
        };
        let told = |check| self.end_told(check);
        // Whoever read the sensor knows which way is up.
        report(&reading, &self.placement, 1, limits, &told)
    }
}

/// What was said of a check's ends.
type Told<'a> = &'a dyn Fn(Check) -> Option<End>;

/// A reading as parked.
fn report<'a>(
    reading: &Reading,
    placement: &Placement,
    sign: i8,
    limits: &'a LimitSet,
    told: Told<'_>,
) -> Result<Report<'a>, NoReading> {
    let part = placement.part.ok_or(NoReading::Starting)?;
    let up = to_body(&placement.hold.rotation(), reading.up.up);
    let flat = matches!(
        placement.surface,
        Surface::MetalFace | Surface::Sheet | Surface::Bracket
    ) && placement.hold == Hold::Back;
    let checks = reading.outcomes.iter();
    Ok(Report {
        format: FORMAT,
        version: VERSION,
        part,
        hold: placement.hold,
        surface: placement.surface,
        channel: reading.channel,
        sign,
        step_m_s2: reading.step_m_s2,
        rate_hz: reading.rate_hz,
        samples: reading.samples,
        zero_by: reading.zero_by,
        up,
        pitch_deg: elevation_deg([1.0, 0.0, 0.0], up),
        // Steeper than 84° a roll is a matter of luck.
        roll_deg: roll_sensitivity(up)
            .filter(|c| flat && crate::vector::norm(*c) < 10.0)
            .map(|_| roll_deg(up)),
        checks: gathered(checks.map(|o| check_report(o, limits, told))),
        vehicle: None,
    })
}

fn check_report<'a>(o: &Outcome, limits: &'a LimitSet, told: Told<'_>) -> CheckReport<'a> {
    let limit = limits.line(o.check);
    let end_told = told(o.check).filter(|_| o.check.asks_lower_end());
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
        source: &limit.source,
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
