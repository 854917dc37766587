//! A limit set on its way across the border, line by line in numbers.

use crate::{in_words, known, to_js};
use plumbmark::holds::Surface;
use plumbmark::limits::{Basis, Limit, LimitSet, SurfaceTerms};
use plumbmark::parts::Check;
use wasm_bindgen::prelude::{JsError, JsValue, wasm_bindgen};

/// A limit set under construction: see `plumbmark::limits::LimitSet`.
#[wasm_bindgen]
pub struct Limits(LimitSet);

#[wasm_bindgen]
impl Limits {
    /// A set without any line, named.
    #[wasm_bindgen(constructor)]
    pub fn new(name: &str) -> Result<Self, JsValue> {
        let mut set = LimitSet::empty();
        set.set_name(name).map_err(in_words)?;
        Ok(Self(set))
    }

    /// Adds the line of a check; codes are places in the catalogue's lists.
    #[expect(
        clippy::too_many_arguments,
        reason = "one flat call a line, no object to take apart"
    )]
    pub fn add_line(
        &mut self,
        check: u8,
        low_deg: Option<f32>,
        high_deg: Option<f32>,
        preferred_low_deg: Option<f32>,
        preferred_high_deg: Option<f32>,
        at_limit_allowed: bool,
        allowance_deg: Option<f32>,
        basis: u8,
        source: &str,
        holds_in_operation: bool,
        length_mm: Option<f32>,
    ) -> Result<(), JsValue> {
        let mut line = Limit {
            low_deg,
            high_deg,
            preferred_low_deg,
            preferred_high_deg,
            at_limit_allowed,
            allowance_deg,
            basis: known(&Basis::ALL, basis)?,
            holds_in_operation,
            length_mm,
            ..Limit::not_entered(known(&Check::ALL, check)?)
        };
        line.set_source(source).map_err(in_words)?;
        self.0.add_line(line).map_err(in_words)
    }

    /// Sets a surface's contact uncertainties.
    pub fn set_surface(
        &mut self,
        surface: u8,
        hold_deg: f32,
        align_deg: f32,
    ) -> Result<(), JsError> {
        self.0.set_surface(SurfaceTerms {
            surface: known(&Surface::ALL, surface)?,
            hold_deg,
            align_deg,
        });
        Ok(())
    }

    /// The set as core understands it; an error names the field.
    pub fn check(&self) -> Result<JsValue, JsValue> {
        self.0.validate().map_err(in_words)?;
        Ok(to_js(&self.0)?)
    }
}

impl Limits {
    pub(crate) fn set(&self) -> &LimitSet {
        &self.0
    }
}
