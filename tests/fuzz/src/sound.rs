//! What must hold of a reading and of a verdict, whatever came in.

use plumbmark::budget::Source;
use plumbmark::check::{End, Outcome};
use plumbmark::decision::{Measured, Verdict, decide, decide_in_operation, margin_deg};
use plumbmark::in_vehicle::VehicleOutcome;
use plumbmark::limits::Limit;
use plumbmark::live::{Live, Reading};
use plumbmark::parts::Quantity;
use plumbmark::report::Report;
use plumbmark::vector::{Vec3, unit};

/// Rounding of the last bits of an angle, degrees.
const ROUNDING_DEG: f32 = 1e-3;

/// No number without a reading; no reading that is not one.
pub fn live(live: &Live) {
    assert!((0.0..=1.0).contains(&live.progress()));
    let Ok(reading) = live.reading() else {
        assert!(live.up_body().is_none(), "no reading, no number");
        assert!(live.capture().is_err(), "no reading, no capture");
        return;
    };
    let length2: f32 = reading.up.up.iter().map(|c| c * c).sum();
    assert!((length2 - 1.0).abs() < 1e-4, "{:?}", reading.up);
    assert!(reading.rate_hz.is_finite() && reading.rate_hz > 0.0);
    assert!(reading.samples > 0 && reading.step_m_s2 >= 0.0);
    let Some(placement) = live.placement().filter(|p| p.part.is_some()) else {
        assert!(reading.outcomes.is_empty() && reading.in_vehicle.is_none());
        assert!(live.capture().is_err(), "a table is no part");
        return;
    };
    let hold_deg = live.contact(placement).hold_deg;
    for o in &reading.outcomes {
        outcome(o, &live.limits().limit(o.check), live.end_told(o.check));
        // Whatever is known of the zero, the phone lies no better than it lies.
        assert!(
            o.measured.is_none_or(|m| m.u_deg >= 1.64 * hold_deg),
            "{o:?}"
        );
    }
    on_a_vehicle(live, reading);
    report(&live.capture().expect("a reading can be captured"), reading);
}

fn on_a_vehicle(live: &Live, reading: &Reading) {
    let Some(answers) = &reading.in_vehicle else {
        assert!(live.level().is_none(), "a level gives answers or a refusal");
        return;
    };
    assert!(live.level().is_some(), "no level, no answer in the vehicle");
    let Ok(answers) = answers else { return };
    assert_eq!(answers.len(), reading.outcomes.len());
    for answer in answers {
        let check = answer.outcome.check;
        in_vehicle(answer, &live.limits().limit(check), live.end_told(check));
    }
}

/// What is kept says what was read, in numbers.
fn report(report: &Report, reading: &Reading) {
    assert!(report.pitch_deg.abs() <= 90.0);
    assert_eq!(report.checks.len(), reading.outcomes.len());
    for (kept, o) in report.checks.iter().zip(&reading.outcomes) {
        assert_eq!((kept.id, kept.verdict), (o.check, o.verdict));
    }
    let mut kept = report.clone();
    if let Some(vehicle) = &mut kept.vehicle {
        let answered = matches!(reading.in_vehicle, Some(Ok(_)));
        assert_eq!(vehicle.refused.is_none(), answered);
        assert_eq!(vehicle.checks.len(), vehicle.working.len());
        if !answered {
            vehicle.level_age_s = 0.0; // By a clock that may be none.
        }
    }
    let in_vehicle = kept.vehicle.iter_mut().flat_map(|v| &mut v.checks);
    for check in kept.checks.iter_mut().chain(in_vehicle) {
        check.source = "";
    }
    let text = format!("{kept:?}");
    let mut words = text.split(|c: char| !c.is_alphanumeric());
    assert!(!words.any(|w| w == "NaN" || w == "inf"), "{text}");
    serde_json::to_string(report).expect("a report is JSON");
}

/// A direction beside a unit vector.
#[must_use]
pub fn leaning(from: Vec3, by: Vec3) -> Vec3 {
    unit(core::array::from_fn(|i| from[i] + by[i])).unwrap_or(from)
}

/// One check's answer as parked.
pub fn outcome(o: &Outcome, limit: &Limit, told: Option<End>) {
    numbers(o, told);
    if let Some(m) = o.measured.filter(|_| o.verdict != Verdict::None) {
        assert_eq!(o.verdict, decide(&m, limit).0);
        decision(&m, limit);
    }
}

/// One check's answer in the vehicle.
pub fn in_vehicle(answer: &VehicleOutcome, limit: &Limit, told: Option<End>) {
    let o = &answer.outcome;
    let Some(working) = answer.working.filter(|w| w.decides) else {
        return outcome(o, limit, told);
    };
    numbers(o, told);
    assert!(working.slope_deg > 0.0 && working.slope_deg < 90.0);
    assert!(
        working
            .takes_deg
            .is_none_or(|t| t >= working.slope_deg * 0.999)
    );
    if let Some(m) = o.measured.filter(|_| o.verdict != Verdict::None) {
        assert_eq!(
            o.verdict,
            decide_in_operation(&m, limit, working.takes_deg).0
        );
        if o.verdict == Verdict::Within {
            let takes_deg = working.takes_deg.expect("no slope leaves this within");
            within_by(&m, limit, takes_deg);
        }
    }
}

/// What holds of every answer, whatever decides.
fn numbers(o: &Outcome, told: Option<End>) {
    let of = Source::ALL.map(|s| o.budget.of(s));
    assert!(of.iter().all(|u| u.is_finite() && *u >= 0.0), "{o:?}");
    assert!(o.probability.is_none_or(|p| (0.0..=1.0).contains(&p)));
    assert!(o.margin_deg.is_none_or(f32::is_finite));
    assert!(o.advice.turn_deg.is_none_or(f32::is_finite));
    assert!(o.advice.rise_mm.is_none_or(f32::is_finite));
    let Some(m) = &o.measured else {
        assert_eq!(o.verdict, Verdict::None, "no value, no verdict");
        return;
    };
    let (low, high) = o.check.quantity().range_deg();
    assert!((low..=high).contains(&m.value_deg), "{m:?}");
    assert!(m.u_deg.is_finite() && m.u_deg > 0.0, "{m:?}");
    // k is at least 1.647 and the sum at least its largest part.
    assert!(of.iter().all(|u| m.u_deg >= 1.64 * u), "{o:?}");
    if o.check.asks_lower_end() && matches!(told, None | Some(End::CantTell)) {
        assert_eq!(o.verdict, Verdict::None, "nobody said which end is lower");
    }
}

/// The whole interval within, the whole interval beyond, or neither. For a value that the
/// quantity can take and a limit that core accepts.
pub fn decision(m: &Measured, limit: &Limit) {
    let (verdict, _) = decide(m, limit);
    let permitted = limit.permitted_deg();
    let margin = margin_deg(verdict, m, limit);
    assert!(limit.is_entered() || verdict == Verdict::NotProven);
    for inside in insides(m, permitted, m.u_deg) {
        match verdict {
            Verdict::Within => assert!(inside >= -ROUNDING_DEG, "{m:?} {limit:?} {inside}"),
            Verdict::Beyond => assert!(inside <= ROUNDING_DEG, "{m:?} {limit:?} {inside}"),
            _ => {}
        }
    }
    let any = permitted == (f32::NEG_INFINITY, f32::INFINITY);
    match verdict {
        Verdict::Within if any => assert!(margin.is_none(), "{m:?} {limit:?}"),
        Verdict::Within => assert!(margin.is_some_and(|x| x >= 0.0), "{m:?} {limit:?}"),
        Verdict::Beyond => assert!(margin.is_some_and(|x| x <= 0.0), "{m:?} {limit:?}"),
        _ => assert!(margin.is_none()),
    }
}

/// The whole interval within, widened by `takes_deg` either way.
pub fn within_by(m: &Measured, limit: &Limit, takes_deg: f32) {
    for inside in insides(m, limit.permitted_deg(), m.u_deg + takes_deg) {
        assert!(inside >= -ROUNDING_DEG, "{m:?} {limit:?} {takes_deg}");
    }
}

/// By how much points of the interval lie inside, in the nearest of their turns.
fn insides(m: &Measured, permitted: (f32, f32), half: f32) -> impl Iterator<Item = f32> {
    let (value, range) = (m.value_deg, m.quantity.range_deg());
    let roll = m.quantity == Quantity::Roll;
    let turns: &[f32] = if roll {
        &[-720.0, -360.0, 0.0, 360.0, 720.0]
    } else {
        &[0.0]
    };
    (-4..=4_i8)
        .map(move |step| value + half * f32::from(step) / 4.0)
        // The quantity may end before the interval does.
        .filter(move |at| roll || (range.0..=range.1).contains(at))
        .map(move |at| {
            turns
                .iter()
                .map(|turn| (at + turn - permitted.0).min(permitted.1 - at - turn))
                .fold(f32::NEG_INFINITY, f32::max)
        })
}
