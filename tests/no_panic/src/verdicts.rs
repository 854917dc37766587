//! Budgets, decisions, checks, advice.

use crate::{any, any_contact, any_estimate, any_vector};
use plumbmark::advice::advise;
use plumbmark::budget::{Budget, Contact, Source, UpEstimate, coverage_factor, least_factor};
use plumbmark::check::{Basis, End, answer, decided, value_deg};
use plumbmark::decision::{Measured, Verdict, Why, decide, decide_in_operation, margin_deg};
use plumbmark::limits::Limit;
use plumbmark::parts::{Check, Quantity};

pub(crate) fn call() {
    let (up, contact) = (any_estimate(), any_contact());
    budgets(&up, &contact);
    decisions();
    checks(&up, &contact);
}

fn budgets(up: &UpEstimate, contact: &Contact) {
    let budget = any(Budget::new(up, contact, any_vector()));
    any(budget.or_larger(&any(budget)));
    any(budget.bent_by(&any(budget), any(0.0)));
    any(budget.after_a_move(up, any_vector()));
    any((budget.combined_deg(), budget.of(any(Source::Zero))));
    any((budget.dominant(), budget.coverage_factor()));
    any(budget.repeat_deg());
    any(coverage_factor(any(0.0), any(0.0)));
    any(least_factor(any(0.0), any(0.0)));
    let limit = any(Limit::not_entered(any(Check::PumpRoll)));
    let (verdict, why) = any((Verdict::Within, Some(Why::EndNotTold)));
    any(advise(verdict, why, &measured(), &limit, &budget));
}

fn measured() -> Measured {
    any(Measured {
        quantity: Quantity::Roll,
        value_deg: 0.0,
        u_deg: 0.0,
        combined_deg: 0.0,
        rectangle_deg: 0.0,
    })
}

fn decisions() {
    let measured = measured();
    let limit = any(Limit::not_entered(any(Check::PumpRoll)));
    any(measured.interval_deg(any((0.0, 0.0))));
    any(measured.near(any((0.0, 0.0))));
    any(measured.probability(any((0.0, 0.0))));
    any(decide(&measured, &limit));
    any(decide_in_operation(&measured, &limit, any(Some(0.0))));
    any(margin_deg(any(Verdict::Beyond), &measured, &limit));
}

fn checks(up: &UpEstimate, contact: &Contact) {
    let rotation = any([[0; 3]; 3]);
    let from = Basis {
        up,
        other_up: any(None),
        rotation: &rotation,
        contact,
    };
    let limit = any(Limit::not_entered(any(Check::PumpRoll)));
    let check = any(Check::PumpRoll);
    any(answer(check, &from, &limit, any(Some(End::Head))));
    any(decided(check, &from, &limit, any(Some(End::Head))));
    any(value_deg(check, any_vector()));
}
