//! The core's sheets and the limits that belong to them, by name and unit: prints the module
//! `sheets.js`, which the page loads with the tape-measure half. The build runs it.

use plumbmark::limits::Basis;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::{BoundId, Section};
use plumbmark::plan::bound_error::{BoundError, LONGEST};
use plumbmark::plan::demand::material::MATERIALS;
use plumbmark::plan::form::Checked;
use plumbmark::plan::kind::{Kinds, Problem, Slip, Unit};
use plumbmark::plan::place::orientation::Orientation;
use plumbmark::plan::start::co_air::{THRESHOLDS, Threshold};
use plumbmark::plan::usage::{Known, LAW, USAGE};
use serde::Serialize;

#[derive(Serialize)]
struct Sheets {
    sheets: Vec<SheetEntry>,
    bounds: Vec<BoundEntry>,
    usage: Vec<KnownEntry>,
    law: Vec<KnownEntry>,
    problems: [&'static str; 8],
    slips: [Slip; 6],
    /// Field and problem by code, from 1.
    bound_errors: [(&'static str, &'static str); 10],
    longest_text: usize,
    /// The ways that the heater can stand in a compartment, by their places in core's list.
    orientations: Vec<OrientationEntry>,
    /// Materials by name, and their conductivity in W/(m·K).
    materials: Vec<(&'static str, f64)>,
    /// Published thresholds of carbon monoxide, lowest first.
    co_thresholds: [Threshold; 9],
}

#[derive(Serialize)]
struct OrientationEntry {
    /// Where the heater's x, y and z point, in the compartment.
    axes: [[i8; 3]; 3],
    allowed: bool,
    /// Place of its room among the results of the sheet "fit".
    lay: usize,
}

#[derive(Serialize)]
struct SheetEntry {
    name: &'static str,
    inputs: Vec<FieldEntry>,
    row: Vec<FieldEntry>,
    outputs: Vec<ResultEntry>,
    row_outputs: Vec<ResultEntry>,
    checks: Vec<CheckedEntry>,
    row_checks: Vec<CheckedEntry>,
}

#[derive(Serialize)]
struct FieldEntry {
    name: &'static str,
    unit: Unit,
    low: f64,
    high: f64,
    half_width: f64,
    half_share: f64,
    optional: bool,
}

#[derive(Serialize)]
struct ResultEntry {
    name: &'static str,
    unit: Unit,
}

#[derive(Serialize)]
struct CheckedEntry {
    output: usize,
    bound: &'static str,
    only_beyond: bool,
    alternative: bool,
    partial: bool,
}

#[derive(Serialize)]
struct BoundEntry {
    id: &'static str,
    section: Section,
    unit: Unit,
    low: f64,
    high: f64,
}

#[derive(Serialize)]
struct KnownEntry {
    id: &'static str,
    low: Option<f64>,
    high: Option<f64>,
    basis: Basis,
    source: &'static str,
    vehicles: &'static str,
    reason: &'static str,
}

fn fields(names: &[&'static str], kinds: Kinds) -> Vec<FieldEntry> {
    let each = names.iter().zip(kinds);
    each.map(|(&name, kind)| FieldEntry {
        name,
        unit: kind.unit,
        low: kind.low,
        high: kind.high,
        half_width: kind.half_width,
        half_share: kind.half_share,
        optional: kind.optional,
    })
    .collect()
}

fn results(names: &[&'static str], kinds: Kinds) -> Vec<ResultEntry> {
    let each = names.iter().zip(kinds);
    each.map(|(&name, kind)| ResultEntry {
        name,
        unit: kind.unit,
    })
    .collect()
}

fn checks(all: &[Checked]) -> Vec<CheckedEntry> {
    let entry = |c: &Checked| CheckedEntry {
        output: c.output,
        bound: c.bound.name(),
        only_beyond: c.only_beyond,
        alternative: c.alternative,
        partial: c.partial,
    };
    all.iter().map(entry).collect()
}

fn sheet(sheet: &Sheet) -> SheetEntry {
    let (form, names) = (sheet.form(), sheet.names());
    SheetEntry {
        name: names.sheet,
        inputs: fields(names.inputs, form.inputs),
        row: fields(names.row, form.row),
        outputs: results(names.outputs, form.outputs),
        row_outputs: results(names.row_outputs, form.row_outputs),
        checks: checks(form.checks),
        row_checks: checks(form.row_checks),
    }
}

fn bound(id: &BoundId) -> BoundEntry {
    let (low, high) = id.range();
    BoundEntry {
        id: id.name(),
        section: id.section(),
        unit: id.unit(),
        low,
        high,
    }
}

fn orientation(o: Orientation) -> OrientationEntry {
    OrientationEntry {
        axes: o.axes(),
        allowed: o.is_allowed(),
        lay: o.lay(),
    }
}

fn known(k: &Known) -> KnownEntry {
    KnownEntry {
        id: k.id.name(),
        low: k.low,
        high: k.high,
        basis: k.basis,
        source: k.source,
        vehicles: k.vehicles,
        reason: "",
    }
}

fn main() {
    let lists = Sheets {
        sheets: Sheet::ALL.iter().map(sheet).collect(),
        bounds: BoundId::ALL.iter().map(bound).collect(),
        usage: USAGE.iter().map(known).collect(),
        law: LAW.iter().map(known).collect(),
        problems: Problem::NAMES,
        slips: Slip::ALL,
        bound_errors: BoundError::NAMES,
        longest_text: LONGEST,
        orientations: Orientation::ALL.into_iter().map(orientation).collect(),
        materials: MATERIALS
            .iter()
            .map(|m| (m.name, m.conductivity_w_per_m_k))
            .collect(),
        co_thresholds: THRESHOLDS,
    };
    let lists = serde_json::to_string(&lists).expect("lists of names and numbers");
    println!("export default {lists};");
}
