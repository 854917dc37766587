//! A bare accelerometer by embedded-hal alone: whole counts in, verdicts out, as a gauge of one's
//! own would do it. `driver.rs` is what a board takes over, and hands its own bus and delay to;
//! here `pretend.rs` stands in for both.
//!
//! ```text
//! cargo run -p plumbmark --example accelerometer
//! ```
//!
//! The zero of such a part is bounded by its data sheet alone, so that U is some 3°. To make it
//! smaller, turn the sensor end for end between two captures ([`Direct::keep_first`]), or find its
//! zero and scale once (`plumbmark::calibration`).
//!
//! [`Direct::keep_first`]: plumbmark::direct::Direct::keep_first

pub mod driver;
pub mod pretend;

use driver::{Accelerometer, capture};
use embedded_hal::delay::DelayNs;
use embedded_hal::i2c::I2c;
use plumbmark::check::{End, Outcome};
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::{Limit, LimitSet};
use plumbmark::parts::{Check, Part};
use std::error::Error;

/// The limit of the pump's outlet from an invented manual; that of its roll was not entered.
fn limits() -> Result<LimitSet, Box<dyn Error>> {
    let mut outlet = Limit {
        low_deg: Some(22.5),
        ..Limit::not_entered(Check::PumpOutlet)
    };
    outlet.set_source("invented manual, page 12")?;
    let mut limits = LimitSet::empty();
    limits.add_line(outlet)?;
    Ok(limits)
}

/// The checks of a pump on whose bracket the sensor lies. Somebody has looked: its outlet is the
/// higher end.
///
/// # Errors
/// Why there are none.
pub fn verdicts<I: I2c>(bus: I, delay: &mut impl DelayNs) -> Result<Vec<Outcome>, Box<dyn Error>>
where
    I::Error: 'static,
{
    let limits = limits()?;
    let placement = Placement::new(Part::Pump, Hold::Back, Surface::Bracket)?;
    let surface_deg = limits.surface_deg(placement.surface);
    let ends = [Some(End::Tail), None];
    let mut accelerometer = Accelerometer::new(bus)?;
    let taken = capture(&mut accelerometer, delay, placement, surface_deg, ends)?;
    Ok(taken.outcomes(&limits.lines, surface_deg).to_vec())
}

fn main() -> Result<(), Box<dyn Error>> {
    let at_rest = pretend::Bus::at(31.0, -4.0);
    for outcome in verdicts(at_rest, &mut pretend::Delay)? {
        let (name, verdict) = (outcome.check.name(), outcome.verdict);
        match outcome.measured {
            Some(m) => println!("{name}: {verdict:?}, {:.1}° ± {:.1}°", m.value_deg, m.u_deg),
            None => println!("{name}: {verdict:?}"),
        }
    }
    Ok(())
}
