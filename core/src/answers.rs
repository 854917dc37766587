//! From a second of rest to answers: which channel, what is known of its zero, each check as parked
//! and in the vehicle.

use crate::budget::{Contact, UpEstimate};
use crate::check::{Basis, End, Outcome, answer};
use crate::gathered::gathered;
use crate::holds::Placement;
use crate::in_vehicle::{InVehicle, Vehicle, in_vehicle};
use crate::level::LevelRefusal;
use crate::limit_set::line_of;
use crate::limits::Limit;
use crate::live::{Channel, Live, Reading};
use crate::parts::Check;
use crate::prior::NOISE_STEPS;
use crate::reading::{Rest, ZeroBy, noise_of};
use crate::reason::NoReading;
use crate::reversal::{half_turn, turned};
use crate::sensor::Sensor;
use crate::turn::Placed;
use crate::vector::{Vec3, unit};
use heapless::Vec;

/// What one channel says.
struct Candidate {
    channel: Channel,
    up: UpEstimate,
    /// The other channel's up, freed of the same zero.
    other_up: Option<Vec3>,
    zero_by: ZeroBy,
}

impl Live {
    /// How the phone lies in a placement.
    #[must_use]
    pub fn contact(&self, placement: &Placement) -> Contact {
        placement.contact(self.limits.surface_deg(placement.surface))
    }

    /// Reads a second of rest: acceleration leads; the fused orientation stands in where there is
    /// none, and takes over where its own zero is known and its U smaller.
    pub(crate) fn evaluate(&self, rest: &Rest) -> Result<Reading, NoReading> {
        let first = self.first_placed()?;
        let mut best = None;
        let mut reason = None;
        for channel in Channel::ALL {
            match self.candidate(channel, rest, first) {
                Ok(candidate) => {
                    let alone = rest.still.is_none();
                    let may_lead = channel == Channel::Acceleration
                        || alone
                        || candidate.zero_by != ZeroBy::Assumed;
                    if may_lead {
                        best = Some(smaller(best, self.reading_of(&candidate, rest)));
                    }
                }
                // Of two reasons the one of the channel that leads counts.
                Err(why) if why != NoReading::NoSensor => reason = reason.or(Some(why)),
                Err(_) => {}
            }
            // What acceleration objects to, the fused orientation does not heal.
            if let (Some(why), None) = (reason, &best) {
                return Err(why);
            }
        }
        best.ok_or(NoReading::NoSensor)
    }

    fn candidate(
        &self,
        channel: Channel,
        rest: &Rest,
        first: Option<&Placed>,
    ) -> Result<Candidate, NoReading> {
        let other = match channel {
            Channel::Acceleration => Channel::Orientation,
            Channel::Orientation => Channel::Acceleration,
        };
        let Some(placement) = &self.placement else {
            return Ok(Candidate {
                channel,
                up: rest.by(channel, NOISE_STEPS)?,
                other_up: None,
                zero_by: ZeroBy::Assumed,
            });
        };
        let key = self.key(channel, placement);
        let Some(first) = first else {
            let sensor = self.findings.sensor(key, self.clock_ms);
            let found = self.findings.zero(key, self.clock_ms).is_some()
                || self.findings.calibration(key, self.clock_ms).is_some();
            return Ok(Candidate {
                channel,
                up: up_of_one(channel, rest, &sensor)?,
                other_up: rest.mean_up(other).map(|up| sensor.corrected(up)),
                zero_by: if found {
                    ZeroBy::Found
                } else {
                    ZeroBy::Assumed
                },
            });
        };
        let contact = self.contact(placement);
        let sensor = self.findings.sensor(key, self.clock_ms);
        Ok(Candidate {
            channel,
            up: up_of_two(channel, [&first.rest, rest], &contact, &sensor)?,
            other_up: turned_mean(&first.rest, rest, other, contact.normal, &sensor),
            zero_by: ZeroBy::Turn,
        })
    }

    fn reading_of(&self, candidate: &Candidate, rest: &Rest) -> Reading {
        let (samples, rate_hz) = rest.samples();
        let mut reading = Reading {
            channel: candidate.channel,
            up: candidate.up,
            samples,
            rate_hz,
            step_m_s2: rest.step_m_s2(),
            zero_by: candidate.zero_by,
            outcomes: Vec::new(),
            in_vehicle: None,
        };
        let Some(placement) = self.placement.filter(|p| p.part.is_some()) else {
            return reading;
        };
        let contact = self.contact(&placement);
        let from = Basis {
            up: &candidate.up,
            other_up: candidate.other_up,
            rotation: &placement.hold.rotation(),
            contact: &contact,
        };
        reading.outcomes = answers(placement.checks, &from, &self.limits.lines, &|c| {
            self.end_told(c)
        });
        reading.in_vehicle = self.answers_in_vehicle(&reading.outcomes, &from);
        reading
    }

    fn answers_in_vehicle(&self, parked: &[Outcome], from: &Basis<'_>) -> Option<InVehicle> {
        let level = self.level.as_ref()?;
        if !level.counts_at(self.clock_ms) {
            return Some(Err(LevelRefusal::Stale));
        }
        let vehicle = Vehicle {
            level,
            terms: &self.vehicle,
            pointing: self.pointing,
        };
        let mut answers = Vec::new();
        for parked in parked {
            match in_vehicle(parked, from, &vehicle, self.limits.line(parked.check)) {
                // As many as there are as parked, so nothing is lost here.
                Ok(answer) => _ = answers.push(answer),
                Err(refusal) => return Some(Err(refusal)),
            }
        }
        Some(Ok(answers))
    }
}

/// Up by one placement of a sensor.
pub(crate) fn up_of_one(
    channel: Channel,
    rest: &Rest,
    sensor: &Sensor,
) -> Result<UpEstimate, NoReading> {
    let raw = rest.by(channel, noise_of([rest].into_iter()))?;
    Ok(sensor.apply(&raw))
}

/// Up by two placements, the second one turned end for end.
pub(crate) fn up_of_two(
    channel: Channel,
    placed: [&Rest; 2],
    contact: &Contact,
    sensor: &Sensor,
) -> Result<UpEstimate, NoReading> {
    let bounds = noise_of(placed.into_iter());
    let [first, second] = placed;
    up_of_turn(
        &first.by(channel, bounds),
        &second.by(channel, bounds),
        contact,
        sensor,
        first.largest_zero,
    )
}

/// The same, by what each placement gives. By reference: a small board has no room for an estimate
/// twice.
pub(crate) fn up_of_turn(
    one: &Result<UpEstimate, NoReading>,
    two: &Result<UpEstimate, NoReading>,
    contact: &Contact,
    sensor: &Sensor,
    largest_zero: f32,
) -> Result<UpEstimate, NoReading> {
    match (one, two) {
        (Ok(one), Ok(two)) => {
            turned(one, two, contact, sensor, largest_zero).map_err(|_| NoReading::TurnDisagrees)
        }
        (Err(reason), _) | (_, Err(reason)) => Err(*reason),
    }
}

/// A placement's checks, answered as parked.
pub(crate) fn answers(
    checks: &[Check],
    from: &Basis<'_>,
    lines: &[Limit],
    told: &dyn Fn(Check) -> Option<End>,
) -> Vec<Outcome, 2> {
    let outcome = |&c: &Check| answer(c, from, line_of(lines, c), told(c));
    gathered(checks.iter().map(outcome))
}

/// The reading with the smaller U; the first one where they are alike.
fn smaller(best: Option<Reading>, other: Reading) -> Reading {
    let largest = |r: &Reading| {
        let of_checks = r.outcomes.iter().filter_map(|o| o.measured);
        of_checks.map(|m| m.u_deg).fold(0.0, f32::max)
    };
    match best {
        Some(best) if largest(&best) <= largest(&other) => best,
        _ => other,
    }
}

/// The other channel's mean of two placements, freed of the same zero.
fn turned_mean(
    first: &Rest,
    second: &Rest,
    channel: Channel,
    normal: Vec3,
    sensor: &Sensor,
) -> Option<Vec3> {
    let one = first.mean_up(channel)?;
    let back = half_turn(second.mean_up(channel)?, normal);
    let mean = unit(core::array::from_fn(|i| one[i] + back[i]))?;
    Some(sensor.after_a_turn(normal, mean).corrected(mean))
}
