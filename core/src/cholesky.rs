//! Inverse of a small symmetric positive matrix: Cholesky's factors, forward and back.

/// Six rows of six.
pub(crate) type Matrix6 = [[f64; 6]; 6];

/// Smallest pivot, as a share of the largest diagonal entry: beyond it the poses leave a
/// combination of the unknowns open.
const SMALLEST_PIVOT: f64 = 1e-6;

/// The inverse; `None` where the matrix is singular to working precision.
pub(crate) fn inverse(m: &Matrix6) -> Option<Matrix6> {
    let largest = (0..6).map(|i| m[i][i]).fold(0.0, f64::max);
    let mut l = [[0.0; 6]; 6];
    for i in 0..6 {
        for j in 0..=i {
            let done: f64 = (0..j).map(|k| l[i][k] * l[j][k]).sum();
            let rest = m[i][j] - done;
            if i == j {
                if rest.is_nan() || rest <= SMALLEST_PIVOT * largest {
                    return None;
                }
                l[i][i] = libm::sqrt(rest);
            } else {
                l[i][j] = rest / l[j][j];
            }
        }
    }
    // Columns of the inverse, one unit vector at a time; it is symmetric, so they are its rows.
    Some(core::array::from_fn(|column| {
        let mut y = [0.0; 6];
        for i in 0..6 {
            let done: f64 = (0..i).map(|k| l[i][k] * y[k]).sum();
            let unit = if i == column { 1.0 } else { 0.0 };
            y[i] = (unit - done) / l[i][i];
        }
        for i in (0..6).rev() {
            let done: f64 = (i + 1..6).map(|k| l[k][i] * y[k]).sum();
            y[i] = (y[i] - done) / l[i][i];
        }
        y
    }))
}
