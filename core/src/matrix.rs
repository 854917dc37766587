//! Inverse of a small symmetric positive matrix, by Gauss and Jordan's elimination in place. Such a
//! matrix needs no exchange of rows: its pivots are the squares of Cholesky's.

/// Six rows of six.
pub(crate) type Matrix6 = [[f32; 6]; 6];

/// Smallest pivot, as a share of the largest diagonal entry: beyond it the poses leave a
/// combination of the unknowns open. What single precision leaves of the inverse is a thousandth.
const SMALLEST_PIVOT: f32 = 1e-4;

/// The inverse; `None` where the matrix is singular to working precision.
pub(crate) fn inverse(m: &Matrix6) -> Option<Matrix6> {
    let largest = (0..6).map(|i| m[i][i]).fold(0.0, f32::max);
    let mut a = *m;
    for k in 0..6 {
        let pivot = a[k][k];
        if pivot.is_nan() || pivot <= SMALLEST_PIVOT * largest {
            return None;
        }
        a[k][k] = 1.0;
        let solved = a[k].map(|v| v / pivot);
        for (i, row) in a.iter_mut().enumerate() {
            if i == k {
                *row = solved;
                continue;
            }
            let share = core::mem::replace(&mut row[k], 0.0);
            for (v, s) in row.iter_mut().zip(solved) {
                *v -= share * s;
            }
        }
    }
    Some(a)
}
