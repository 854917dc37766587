//! Arbitrary inputs. Plain bit patterns are almost never angles or accelerations, so most numbers
//! are drawn from where core does its work, and the rest from everywhere.

use arbitrary::{Arbitrary, Result, Unstructured};
use plumbmark::budget::{Contact, UpEstimate};
use plumbmark::decision::Measured;
use plumbmark::findings::Device;
use plumbmark::holds::{Hold, Surface};
use plumbmark::limits::{Basis, Limit, LimitSet, SurfaceTerms};
use plumbmark::parts::{Check, Quantity};
use plumbmark::sensor::Sensor;
use plumbmark::vector::{Vec3, unit};
use plumbmark::vehicle::VehicleTerms;

/// Any `f32`: from −328 to 328 in hundredths, from −1 to 1, a special value, or any bits.
pub fn number(u: &mut Unstructured<'_>) -> Result<f32> {
    Ok(match u.int_in_range(0..=7)? {
        0 => f32::from_bits(u.arbitrary()?),
        1 => *u.choose(&[
            f32::NAN,
            f32::INFINITY,
            f32::NEG_INFINITY,
            f32::MAX,
            f32::MIN_POSITIVE,
            1e-45,
            -0.0,
            1e30,
        ])?,
        2 | 3 => f32::from(i16::arbitrary(u)?) / 32768.0,
        _ => hundredths(u)?,
    })
}

/// Any `f64`, as [`number`].
pub fn wide_number(u: &mut Unstructured<'_>) -> Result<f64> {
    if u.ratio(1, 16)? {
        Ok(f64::from_bits(u.arbitrary()?))
    } else {
        number(u).map(f64::from)
    }
}

/// From −328 to 328 in hundredths.
pub fn hundredths(u: &mut Unstructured<'_>) -> Result<f32> {
    Ok(f32::from(i16::arbitrary(u)?) / 100.0)
}

/// From `low` to `high`.
pub fn between(u: &mut Unstructured<'_>, low: f32, high: f32) -> Result<f32> {
    Ok(low + (high - low) * (f32::from(u16::arbitrary(u)?) / 65535.0))
}

/// Any three numbers.
pub fn vector(u: &mut Unstructured<'_>) -> Result<Vec3> {
    Ok([number(u)?, number(u)?, number(u)?])
}

/// Any direction, of length 1.
pub fn direction(u: &mut Unstructured<'_>) -> Result<Vec3> {
    let a = <[i8; 3]>::arbitrary(u)?.map(f32::from);
    Ok(unit(a).unwrap_or([0.0, 0.0, 1.0]))
}

/// Three numbers from `low` to `high`.
pub fn between_each(u: &mut Unstructured<'_>, low: f32, high: f32) -> Result<Vec3> {
    Ok([
        between(u, low, high)?,
        between(u, low, high)?,
        between(u, low, high)?,
    ])
}

/// A number or nothing.
pub fn maybe(u: &mut Unstructured<'_>) -> Result<Option<f32>> {
    if u.ratio(1, 3)? {
        Ok(None)
    } else {
        number(u).map(Some)
    }
}

/// Any check.
pub fn check(u: &mut Unstructured<'_>) -> Result<Check> {
    u.choose(&Check::ALL).copied()
}

/// Any hold.
pub fn hold(u: &mut Unstructured<'_>) -> Result<Hold> {
    u.choose(&Hold::ALL).copied()
}

/// One of a few phones, with or without its case.
pub fn device(u: &mut Unstructured<'_>) -> Result<Device> {
    Ok(Device {
        number: u.int_in_range(0..=2)?,
        in_case: u.arbitrary()?,
    })
}

/// Any sensor that there may be.
pub fn sensor(u: &mut Unstructured<'_>) -> Result<Sensor> {
    let mut number = || u.int_in_range(0..=2);
    let (zero_from, scale_from) = ([number()?, number()?, number()?], number()?);
    Ok(Sensor {
        zero: between_each(u, -0.08, 0.08)?,
        u_zero: between_each(u, 0.0, 0.01)?,
        zero_from,
        u_side: between_each(u, 0.0, 0.01)?,
        side: u.int_in_range(0..=3)?,
        found_at: between_each(u, -1.0, 1.0)?,
        scale: between_each(u, 0.95, 1.05)?,
        u_scale: between_each(u, 0.0, 0.01)?,
        scale_from,
    })
}

/// What a channel may say of a phone that feels `up`.
pub fn estimate_at(u: &mut Unstructured<'_>, up: Vec3) -> Result<UpEstimate> {
    let mut half_steps = [[0.0; 3]; 6];
    let rectangles = *u.choose(&[0, 2, 3, 6])?;
    for half_step in half_steps.iter_mut().take(rectangles) {
        *half_step = between_each(u, 0.0, 0.02)?;
    }
    Ok(UpEstimate {
        up,
        noise: between_each(u, 0.0, 0.02)?,
        half_steps,
        worst_half_step: between(u, 0.0, 0.02)?,
        settle_deg: between(u, 0.0, 1.0)?,
        sensor: sensor(u)?,
    })
}

/// What a channel may say.
pub fn estimate(u: &mut Unstructured<'_>) -> Result<UpEstimate> {
    let up = direction(u)?;
    estimate_at(u, up)
}

/// An estimate of any numbers.
pub fn wild_estimate(u: &mut Unstructured<'_>) -> Result<UpEstimate> {
    let mut half_steps = [[0.0; 3]; 6];
    for half_step in &mut half_steps {
        *half_step = vector(u)?;
    }
    Ok(UpEstimate {
        up: vector(u)?,
        noise: vector(u)?,
        half_steps,
        worst_half_step: number(u)?,
        settle_deg: number(u)?,
        sensor: Sensor {
            zero: vector(u)?,
            u_zero: vector(u)?,
            zero_from: u.arbitrary()?,
            u_side: vector(u)?,
            side: u.arbitrary()?,
            found_at: vector(u)?,
            scale: vector(u)?,
            u_scale: vector(u)?,
            scale_from: u.arbitrary()?,
        },
    })
}

/// A contact that a limit set allows, of a hold.
pub fn contact(u: &mut Unstructured<'_>, normal: Vec3) -> Result<Contact> {
    Ok(Contact {
        hold_deg: between(u, 0.02, 5.0)?,
        align_deg: between(u, 0.0, 10.0)?,
        normal,
    })
}

/// A contact of any numbers.
pub fn wild_contact(u: &mut Unstructured<'_>) -> Result<Contact> {
    Ok(Contact {
        hold_deg: number(u)?,
        align_deg: number(u)?,
        normal: vector(u)?,
    })
}

/// What may be told of a vehicle: mostly what can be.
pub fn vehicle(u: &mut Unstructured<'_>) -> Result<VehicleTerms> {
    let mut terms = VehicleTerms {
        heading_deg: between(u, 1.0, 45.0)?,
        lean_lengthwise_deg: between(u, -15.0, 15.0)?,
        lean_crosswise_deg: between(u, -15.0, 15.0)?,
        rake_deg: between(u, 0.1, 10.0)?,
        working_lengthwise_deg: *u.choose(&[0.0, 5.0, 45.0])?,
        working_crosswise_deg: *u.choose(&[0.0, 5.0, 45.0])?,
    };
    if u.ratio(1, 4)? {
        let wrong = number(u)?;
        let fields = [
            &mut terms.heading_deg,
            &mut terms.lean_lengthwise_deg,
            &mut terms.lean_crosswise_deg,
            &mut terms.rake_deg,
            &mut terms.working_lengthwise_deg,
            &mut terms.working_crosswise_deg,
        ];
        let i = u.choose_index(fields.len())?;
        *fields[i] = wrong;
    }
    Ok(terms)
}

/// Any value that a sensor can give of `quantity`, with any uncertainty that is one.
pub fn measured(u: &mut Unstructured<'_>, quantity: Quantity) -> Result<Measured> {
    let (low, high) = quantity.range_deg();
    let most_deg = *u.choose(&[0.0, 1.0, 10.0, 200.0])?;
    let u_deg = between(u, 0.0, most_deg)?;
    Ok(Measured {
        quantity,
        value_deg: between(u, low, high)?,
        u_deg,
        combined_deg: u_deg / 2.0,
        rectangle_deg: between(u, 0.0, u_deg)?,
    })
}

/// A limit of `check`: mostly in order, sometimes anything.
pub fn limit(u: &mut Unstructured<'_>, check: Check) -> Result<Limit> {
    let range = check.quantity().range_deg();
    let mut limit = Limit::not_entered(check);
    if u.ratio(3, 4)? {
        let mut ends = [0.0; 4];
        for end in &mut ends {
            *end = between(u, range.0, range.1)?;
        }
        ends.sort_by(f32::total_cmp);
        let given: [bool; 4] = u.arbitrary()?;
        let end = |i: usize| given[i].then_some(ends[i]);
        (limit.low_deg, limit.preferred_low_deg) = (end(0), end(1));
        (limit.preferred_high_deg, limit.high_deg) = (end(2), end(3));
        limit.allowance_deg = u.ratio(1, 3)?.then_some(between(u, 0.0, 10.0)?);
    } else {
        (limit.low_deg, limit.high_deg) = (maybe(u)?, maybe(u)?);
        (limit.preferred_low_deg, limit.preferred_high_deg) = (maybe(u)?, maybe(u)?);
        (limit.allowance_deg, limit.length_mm) = (maybe(u)?, maybe(u)?);
    }
    limit.at_limit_allowed = u.arbitrary()?;
    limit.holds_in_operation = u.arbitrary()?;
    limit.basis = *u.choose(&Basis::ALL)?;
    // A text that is too long leaves the one before.
    let _ = limit.set_source(u.arbitrary()?);
    Ok(limit)
}

/// A limit set of any lines and surfaces.
pub fn limit_set(u: &mut Unstructured<'_>) -> Result<LimitSet> {
    let mut set = LimitSet::empty();
    for check in Check::ALL {
        let of = if u.ratio(1, 16)? {
            self::check(u)?
        } else {
            check
        };
        if u.ratio(3, 4)? {
            let line = limit(u, of)?;
            set.add_line(line).expect("six lines have room");
        }
    }
    for surface in Surface::ALL {
        if u.ratio(1, 8)? {
            set.set_surface(SurfaceTerms {
                surface,
                hold_deg: number(u)?,
                align_deg: number(u)?,
            });
        }
    }
    let _ = set.set_name(u.arbitrary()?);
    Ok(set)
}
