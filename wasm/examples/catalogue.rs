//! The core's own lists, by name, for the page to build its screens from: prints the module
//! `catalogue.js`. The build runs it, so that the lists are the core's without being in the .wasm.

use plumbmark::advice::AdviceKind;
use plumbmark::budget::Source;
use plumbmark::calibration::CalibrationRefusal;
use plumbmark::check::End;
use plumbmark::decision::{Verdict, Why};
use plumbmark::holds::{Hold, Placement, Refusal, Surface};
use plumbmark::level::LevelRefusal;
use plumbmark::limits::{Basis, Field, Limit, LimitSet, Problem, SurfaceTerms};
use plumbmark::line::LineError;
use plumbmark::live::Channel;
use plumbmark::parts::{Check, Part, Quantity};
use plumbmark::plan::usage::{Known, USAGE};
use plumbmark::reading::ZeroBy;
use plumbmark::reason::NoReading;
use plumbmark::reversal::TurnRefusal;
use plumbmark::vehicle::{Pointing, VehicleField, VehicleTerms};
use serde::Serialize;

#[derive(Serialize)]
struct Catalogue {
    parts: Vec<PartEntry>,
    checks: Vec<CheckEntry>,
    reasons: Vec<Option<NoReading>>,
    verdicts: [Verdict; 4],
    whys: Vec<Option<Why>>,
    sources: [Source; 10],
    advices: [AdviceKind; 7],
    bases: [Basis; 4],
    holds: [Hold; 3],
    surfaces: [Surface; 5],
    ends: [End; 4],
    zeros: [ZeroBy; 3],
    pointings: [Pointing; 4],
    level_refusals: Vec<Option<LevelRefusal>>,
    channels: [Channel; 2],
    /// In the order of the lists in `refusals.rs`.
    refusals: [Vec<&'static str>; 6],
    fields: [Field; 14],
    problems: [&'static str; 11],
    vehicle_fields: [VehicleField; 6],
    default_limits: WholeSet,
    blank_limits: WholeSet,
    vehicle: VehicleTerms,
}

/// A limit set as files have it: angles, and what a tape or a table tells.
#[derive(Serialize)]
struct WholeSet {
    name: String,
    lines: Vec<Limit>,
    surfaces: Vec<SurfaceTerms>,
    bounds: Vec<BoundEntry>,
}

#[derive(Serialize)]
struct BoundEntry {
    id: &'static str,
    low: Option<f64>,
    high: Option<f64>,
    basis: Basis,
    source: &'static str,
}

fn whole(set: LimitSet, known: &[Known]) -> WholeSet {
    let bound = |k: &Known| BoundEntry {
        id: k.id.name(),
        low: k.low,
        high: k.high,
        basis: k.basis,
        source: k.source,
    };
    WholeSet {
        name: set.name.as_str().into(),
        lines: set.lines.into_iter().collect(),
        surfaces: set.surfaces.into_iter().collect(),
        bounds: known.iter().map(bound).collect(),
    }
}

#[derive(Serialize)]
struct PartEntry {
    id: Part,
    checks: Vec<Check>,
    placements: Vec<PlacementEntry>,
    refused: Vec<RefusedEntry>,
}

#[derive(Serialize)]
struct PlacementEntry {
    hold: Hold,
    surface: Surface,
    checks: &'static [Check],
    /// Row-major, body = R · device.
    rotation: Vec<i8>,
}

#[derive(Serialize)]
struct RefusedEntry {
    hold: Hold,
    surface: Surface,
    why: Refusal,
}

#[derive(Serialize)]
struct CheckEntry {
    id: Check,
    part: Part,
    quantity: Quantity,
    low_deg: f32,
    high_deg: f32,
    axis_body: [f32; 3],
    asks_lower_end: bool,
}

fn catalogue() -> Catalogue {
    let coded = |all: &[NoReading]| {
        let named = all.iter().map(|&r| Some(r));
        core::iter::once(None).chain(named).collect()
    };
    Catalogue {
        parts: Part::ALL.into_iter().map(part).collect(),
        checks: Check::ALL.into_iter().map(check).collect(),
        reasons: coded(&NoReading::ALL),
        verdicts: Verdict::ALL,
        whys: core::iter::once(None).chain(Why::ALL.map(Some)).collect(),
        sources: Source::ALL,
        advices: AdviceKind::ALL,
        bases: Basis::ALL,
        holds: Hold::ALL,
        surfaces: Surface::ALL,
        ends: End::ALL,
        zeros: ZeroBy::ALL,
        pointings: Pointing::ALL,
        level_refusals: core::iter::once(None)
            .chain(LevelRefusal::ALL.map(Some))
            .collect(),
        channels: Channel::ALL,
        refusals: [
            NoReading::ALL.map(NoReading::name).to_vec(),
            TurnRefusal::ALL.map(TurnRefusal::name).to_vec(),
            CalibrationRefusal::ALL
                .map(CalibrationRefusal::name)
                .to_vec(),
            LevelRefusal::ALL.map(LevelRefusal::name).to_vec(),
            Refusal::ALL.map(Refusal::name).to_vec(),
            LineError::ALL.map(LineError::name).to_vec(),
        ],
        fields: Field::ALL,
        problems: Problem::NAMES,
        vehicle_fields: VehicleField::ALL,
        default_limits: whole(LimitSet::trade_usage(), USAGE),
        blank_limits: whole(LimitSet::not_entered(), &[]),
        vehicle: VehicleTerms::ASSUMED,
    }
}

fn part(id: Part) -> PartEntry {
    let pairs = Surface::ALL
        .into_iter()
        .flat_map(|s| Hold::ALL.map(|h| (h, s)));
    let mut entry = PartEntry {
        id,
        checks: Check::ALL.into_iter().filter(|c| c.part() == id).collect(),
        placements: Vec::new(),
        refused: Vec::new(),
    };
    for (hold, surface) in pairs {
        match Placement::new(id, hold, surface) {
            Ok(p) => entry.placements.push(PlacementEntry {
                hold,
                surface,
                checks: p.checks,
                rotation: hold.rotation().concat(),
            }),
            Err(why) => entry.refused.push(RefusedEntry { hold, surface, why }),
        }
    }
    entry
}

fn check(id: Check) -> CheckEntry {
    let (low_deg, high_deg) = id.quantity().range_deg();
    CheckEntry {
        id,
        part: id.part(),
        quantity: id.quantity(),
        low_deg,
        high_deg,
        axis_body: id.axis_body(),
        asks_lower_end: id.asks_lower_end(),
    }
}

fn main() {
    let lists = serde_json::to_string(&catalogue()).expect("lists of names and numbers");
    println!("export default {lists};");
}
