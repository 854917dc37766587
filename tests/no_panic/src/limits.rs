//! Limit sets and their messages.

use crate::{any, write_to_nowhere};
use plumbmark::holds::Surface;
use plumbmark::limits::{Limit, LimitError, LimitSet, SurfaceTerms};
use plumbmark::parts::Check;

pub(crate) fn call() {
    sets();
    lines();
}

fn told(result: Result<(), LimitError>) {
    if let Err(error) = any(result) {
        write_to_nowhere(&error);
    }
}

fn sets() {
    any(LimitSet::not_entered());
    any(LimitSet::trade_usage());
    let mut set = any(LimitSet::empty());
    told(set.set_name(any("")));
    told(set.add_line(any(Limit::not_entered(any(Check::PumpRoll)))));
    set.set_surface(any(SurfaceTerms {
        surface: Surface::Bar,
        hold_deg: 0.0,
        align_deg: 0.0,
    }));
    any(set.limit(any(Check::PumpRoll)));
    any(set.surface_deg(any(Surface::Bar)));
    told(any(&set).validate());
}

fn lines() {
    let mut limit = any(Limit::not_entered(any(Check::PumpRoll)));
    told(limit.set_source(any("")));
    told(any(&limit).validate());
    any((limit.is_entered(), limit.permitted_deg()));
    any(limit.preferred_deg());
}
