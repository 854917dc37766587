//! What must hold of a reading and of a verdict, whatever came in.

use plumbmark::budget::Source;
use plumbmark::check::{End, Outcome};
use plumbmark::decision::{Measured, Verdict, decide, margin_deg};
use plumbmark::limits::Limit;
use plumbmark::live::{Blind, Live};
use plumbmark::parts::Quantity;

/// Rounding of the last bits of an angle, degrees.
const ROUNDING_DEG: f32 = 1e-3;

/// No number without a reading; no reading that is not one.
pub fn live(live: &Live) {
    assert!((0.0..=1.0).contains(&live.progress()));
    let Ok(reading) = live.reading() else {
        assert!(live.up_body().is_none(), "no reading, no number");
        assert!(live.capture().is_err(), "no reading, no capture");
        assert!(live.blind() != Blind::Ready, "no reading, no capture");
        return;
    };
    let length2: f32 = reading.up.up.iter().map(|c| c * c).sum();
    assert!((length2 - 1.0).abs() < 1e-4, "{:?}", reading.up);
    assert!(reading.rate_hz.is_finite() && reading.rate_hz > 0.0);
    assert!(reading.samples > 0 && reading.step_m_s2 >= 0.0);
    for o in &reading.outcomes {
        outcome(o, &live.limits().limit(o.check), live.end_told(o.check));
    }
    if live.placement().is_some() {
        let report = live.capture().expect("a reading can be captured");
        assert_eq!(report.checks.len(), reading.outcomes.len());
        assert!(report.pitch_deg.abs() <= 90.0);
        serde_json::to_string(&report).expect("a report is JSON");
    }
}

/// One check's answer.
pub fn outcome(o: &Outcome, limit: &Limit, told: Option<End>) {
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
    if o.verdict != Verdict::None {
        assert_eq!(o.verdict, decide(m, limit).0);
        decision(m, limit);
    }
}

/// The whole interval within, the whole interval beyond, or neither. For a value that the
/// quantity can take and a limit that core accepts.
pub fn decision(m: &Measured, limit: &Limit) {
    let (verdict, _) = decide(m, limit);
    let permitted = limit.permitted_deg();
    let margin = margin_deg(verdict, m, limit);
    assert!(limit.is_entered() || verdict == Verdict::NotProven);
    let range = m.quantity.range_deg();
    for step in -4..=4_i8 {
        let at = m.value_deg + m.u_deg * f32::from(step) / 4.0;
        if m.quantity != Quantity::Roll && !(range.0..=range.1).contains(&at) {
            continue; // The quantity ends before the interval does.
        }
        let turns: &[f32] = if m.quantity == Quantity::Roll {
            &[-720.0, -360.0, 0.0, 360.0, 720.0]
        } else {
            &[0.0]
        };
        // By how much the nearest turn of this point lies inside.
        let inside = turns
            .iter()
            .map(|turn| (at + turn - permitted.0).min(permitted.1 - at - turn))
            .fold(f32::NEG_INFINITY, f32::max);
        match verdict {
            Verdict::Within => assert!(inside >= -ROUNDING_DEG, "{m:?} {limit:?} {at}"),
            Verdict::Beyond => assert!(inside <= ROUNDING_DEG, "{m:?} {limit:?} {at}"),
            _ => {}
        }
    }
    match verdict {
        Verdict::Within => assert!(margin.is_some_and(|x| x >= 0.0), "{m:?} {limit:?}"),
        Verdict::Beyond => assert!(margin.is_some_and(|x| x <= 0.0), "{m:?} {limit:?}"),
        _ => assert!(margin.is_none()),
    }
}
