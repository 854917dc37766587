//! A capture as numbers in a row, in the order of `plumbmark::report`; the page's `report.js` reads
//! them in the same order. Formats, units and texts stay on the page.

use crate::numbers::Numbers;
#[cfg(feature = "phone")]
use crate::{page::page, refusals::coded};
use plumbmark::in_vehicle::Working;
use plumbmark::report::{CheckReport, Report, VehicleReport};
#[cfg(feature = "phone")]
use wasm_bindgen::prelude::wasm_bindgen;

/// The report of the last tick's reading, of so many numbers; or a refusal.
#[cfg(feature = "phone")]
#[wasm_bindgen]
pub fn capture() -> i32 {
    let page = page();
    let numbers = &mut page.numbers;
    coded(page.live.capture().map(|report| {
        numbers.clear();
        put_report(numbers, &report);
        numbers.count()
    }))
}

pub fn put_report(to: &mut Numbers, r: &Report<'_>) {
    to.put_code(r.part as u8);
    to.put_code(r.hold as u8);
    to.put_code(r.surface as u8);
    to.put_code(r.channel as u8);
    to.put(f64::from(r.sign));
    to.put_all(&[r.step_m_s2, r.rate_hz]);
    to.put(f64::from(r.samples));
    to.put_code(r.zero_by as u8);
    to.put_all(&r.up);
    to.put_all(&[r.pitch_deg]);
    to.put_option(r.roll_deg);
    put_checks(to, &r.checks);
    to.put_code(u8::from(r.vehicle.is_some()));
    if let Some(vehicle) = &r.vehicle {
        put_vehicle(to, vehicle);
    }
}

fn put_checks(to: &mut Numbers, checks: &[CheckReport<'_>]) {
    to.put_code(checks.len() as u8);
    for check in checks {
        put_check(to, check);
    }
}

fn put_check(to: &mut Numbers, c: &CheckReport<'_>) {
    to.put_code(c.id as u8);
    for number in [c.value, c.u, c.k] {
        to.put_option(number);
    }
    to.put_code(u8::from(c.limit.is_some()));
    if let Some(limit) = &c.limit {
        for number in [
            limit.low_deg,
            limit.high_deg,
            limit.preferred_low_deg,
            limit.preferred_high_deg,
            limit.allowance_deg,
        ] {
            to.put_option(number);
        }
    }
    to.put_code(c.basis as u8);
    to.put_code(c.verdict as u8);
    to.put_code(c.why.map_or(0, |why| why as u8 + 1));
    to.put_option(c.margin_deg);
    to.put_option(c.probability);
    to.put_option_code(c.end_told.map(|end| end as u8));
    to.put_option_code(c.in_preferred.map(u8::from));
    for contribution in &c.contributions {
        to.put_all(&[contribution.u_deg]);
    }
    to.put_code(c.dominant as u8);
    to.put_code(c.advice.kind as u8);
    for number in [c.advice.turn_deg, c.advice.rise_mm, c.advice.over_mm] {
        to.put_option(number);
    }
}

fn put_vehicle(to: &mut Numbers, v: &VehicleReport<'_>) {
    to.put_all(&v.level_up);
    to.put(v.level_age_s);
    to.put_all(&[
        v.terms.heading_deg,
        v.terms.lean_lengthwise_deg,
        v.terms.lean_crosswise_deg,
        v.terms.rake_deg,
        v.terms.working_lengthwise_deg,
        v.terms.working_crosswise_deg,
    ]);
    to.put_code(v.pointing as u8);
    to.put_code(v.refused.map_or(0, |refusal| refusal as u8 + 1));
    put_checks(to, &v.checks);
    for working in &v.working {
        put_working(to, working.as_ref());
    }
}

fn put_working(to: &mut Numbers, working: Option<&Working>) {
    to.put_option(working.map(|w| w.slope_deg));
    if let Some(working) = working {
        to.put_option(working.takes_deg);
        to.put_code(u8::from(working.decides));
    }
}
