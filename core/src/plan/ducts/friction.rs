//! Friction of a flow in a round pipe: the Darcy factor.

/// Below this Reynolds number the flow is laminar; 2 000 to 2 300 in the books.
pub const LAMINAR_BELOW: f64 = 2000.0;
/// Above this one it is turbulent.
pub const TURBULENT_ABOVE: f64 = 4000.0;

/// A friction factor, and how far off it may be because nobody knows which kind of flow there is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Friction {
    /// Darcy's factor.
    pub factor: f64,
    /// Half-width; 0 outside the transition.
    pub half: f64,
}

/// Colebrook's and White's factor for turbulent flow, 1/√f = -2·log10(ε/(3.7·D) + 2.51/(Re·√f)):
/// J. ICE 11 (1939) 133 (value from memory), for Re of 4 000 to 1e8 and a relative roughness up
/// to 0.05. Newton on 1/√f; three steps leave less than 1e-9.
#[must_use]
pub fn colebrook(reynolds: f64, relative_roughness: f64) -> f64 {
    let rough = relative_roughness / 3.7;
    let smooth = 2.51 / reynolds;
    let log10 = 2.0 / core::f64::consts::LN_10;
    let mut x = 6.0;
    for _ in 0..3 {
        let inside = rough + smooth * x;
        x -= (x + log10 * libm::log(inside)) / (1.0 + log10 * smooth / inside);
    }
    1.0 / (x * x)
}

/// Darcy's factor: 64/Re (Hagen and Poiseuille) while laminar, [`colebrook`] where turbulent. In
/// between either may hold, so the factor goes from one to the other and its half-width takes in
/// both.
#[must_use]
pub fn darcy(reynolds: f64, relative_roughness: f64) -> Friction {
    if reynolds >= TURBULENT_ABOVE {
        return Friction {
            factor: colebrook(reynolds, relative_roughness),
            half: 0.0,
        };
    }
    let laminar = 64.0 / reynolds;
    if reynolds <= LAMINAR_BELOW {
        return Friction {
            factor: laminar,
            half: 0.0,
        };
    }
    let turbulent = colebrook(reynolds, relative_roughness);
    let part = (reynolds - LAMINAR_BELOW) / (TURBULENT_ABOVE - LAMINAR_BELOW);
    Friction {
        factor: laminar + part * (turbulent - laminar),
        half: part.max(1.0 - part) * (turbulent - laminar).abs(),
    }
}
