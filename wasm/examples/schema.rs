//! The JSON schema of a limit set, made of the core's own lists and ranges: prints
//! `limits.schema.json`. The build runs it; the page ships it.

use plumbmark::holds::Surface;
use plumbmark::limits::Basis;
use plumbmark::parts::Check;
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::bound_error::LONGEST;
use serde_json::{Map, Value, json};

fn number(description: &str) -> Value {
    json!({"type": ["number", "null"], "description": description})
}

fn text(longest: usize, description: &str) -> Value {
    json!({"type": "string", "maxLength": longest, "description": description})
}

/// An object of these properties and no others.
fn object(required: &[&str], properties: Value) -> Value {
    json!({
        "type": "object",
        "required": required,
        "properties": properties,
        "additionalProperties": false,
    })
}

/// The properties with those that every limit has.
fn cited(own: Value) -> Value {
    let mut all = json!({
        "basis": {"enum": Basis::ALL},
        "source": text(LONGEST, "Document and page, or clause; needed of a manual and a law."),
        "vehicles": text(LONGEST, "The vehicles that a law is for; needed of a law."),
        "reason": text(LONGEST, "Why it is looser than trade usage or a law; needed where it is."),
    });
    if let (Value::Object(all), Value::Object(own)) = (&mut all, own) {
        all.extend(own);
    }
    all
}

fn angle() -> Value {
    let properties = cited(json!({
        "check": {"enum": Check::ALL},
        "low_deg": number("Lowest value permitted."),
        "high_deg": number("Highest value permitted."),
        "preferred_low_deg": number("Lower end of the preferred band; advice only."),
        "preferred_high_deg": number("Upper end of the preferred band."),
        "at_limit_allowed": {"type": "boolean", "description":
            "Whether parts are commonly mounted exactly at the limit."},
        "allowance_deg": number("By how much the limit may be passed, from the manual."),
        "holds_in_operation": {"type": "boolean", "description":
            "Whether the limit holds on the slopes that the vehicle works on."},
        "length_mm": number("Length of the part between its two ends."),
    }));
    object(&["check", "basis"], properties)
}

/// A limit in the unit that its id ends with.
fn bound(id: &BoundId) -> Value {
    let (low, high) = id.range();
    let end = json!({"type": ["number", "null"], "minimum": low, "maximum": high});
    let properties = cited(json!({"id": {"const": id.name()}, "low": end, "high": end}));
    object(&["id", "low", "high", "basis"], properties)
}

fn surface() -> Value {
    let properties = json!({
        "surface": {"enum": Surface::ALL},
        "hold_deg": {"type": "number", "minimum": 0.02, "maximum": 5},
        "align_deg": {"type": "number", "minimum": 0, "maximum": 10},
    });
    object(&["surface", "hold_deg", "align_deg"], properties)
}

fn list(most: usize, items: Value, description: &str) -> Value {
    json!({"type": "array", "maxItems": most, "items": items, "description": description})
}

fn main() {
    let bounds: Vec<Value> = BoundId::ALL.iter().map(bound).collect();
    let properties = json!({
        "format": {"const": "plumbmark-limits"},
        "version": {"enum": [1, 2]},
        "name": text(64, "What the set is for."),
        "lines": list(Check::ALL.len(), angle(), "Angles, at most one line a check, degrees."),
        "bounds": list(bounds.len(), json!({"oneOf": bounds}),
            "Lengths, pressures and the like, at most one line an id."),
        "surfaces": list(Surface::ALL.len(), surface(),
            "How well a phone lies on a surface: standard uncertainties, at most one line a surface."),
    });
    let mut schema = Map::new();
    schema.insert(
        "$schema".into(),
        json!("https://json-schema.org/draft/2020-12/schema"),
    );
    schema.insert("title".into(), json!("Plumbmark limit set"));
    schema.insert("description".into(), json!(
        "The limits in force for one heater, each with on whose word it stands. A limit without an \
         end is not entered. Version 1 had no bounds, vehicles and reasons."));
    if let Value::Object(shape) = object(&["format", "version", "name", "lines"], properties) {
        schema.extend(shape);
    }
    println!("{}", Value::Object(schema));
}
