"""Calibration fits by scipy on the same poses: whatever way a phone leans, it feels gravity."""

import numpy as np
from scipy import optimize

FEWEST = 9
HALF_OF_GRAVITY = 0.5
LARGEST_ZERO, LARGEST_SCALE = 0.08, 0.05
MOST_RESIDUAL = 3.0


def fit(case, report):
    forces = np.array(case["forces"]).reshape(-1, 3)
    want, zero, scale, own = judged(forces, case["u"][0])
    got = case.get("core_refusal", "found")
    if want is None:
        return report.skip("fit", "at the edge of a refusal")
    report.same("fit", want, want, got, case)
    if got != "found" or want != "found":
        return
    report.close("fit", "zero, share of gravity", np.abs(np.array(case["core_zero"]) - zero).max(), 2e-6, case)
    report.close("fit", "scale", np.abs(np.array(case["core_scale"]) - scale).max(), 2e-6, case)
    # Core widens for the correlation of the six: between one and sqrt(6) times each.
    core = np.array(case["core_u_zero"] + case["core_u_scale"])
    report.between("fit", "smallest u, share of least squares'", (core / own).min(), 0.999, 2.5, case)
    report.between("fit", "largest u, share of least squares'", (core / own).max(), 0.999, 2.5, case)


def judged(forces, u):
    """What the fit should say, by the documented limits; None at an edge of one."""
    if len(forces) < FEWEST:
        return "too_few_poses", None, None, None
    up, down = forces.max(axis=0), -forces.min(axis=0)
    reach = np.minimum(up, down).min()
    if abs(reach - HALF_OF_GRAVITY) < 1e-6:
        return None, None, None, None
    if reach < HALF_OF_GRAVITY:
        return "one_sided", None, None, None
    residual = lambda q: (((forces - q[:3]) / q[3:]) ** 2).sum(axis=1) - 1
    found = optimize.least_squares(residual, [0, 0, 0, 1, 1, 1], xtol=1e-14, ftol=1e-14, gtol=1e-14)
    zero, scale = found.x[:3], found.x[3:]
    largest = max(np.abs(zero).max() / LARGEST_ZERO, np.abs(1 / scale - 1).max() / LARGEST_SCALE)
    seen = 2 * found.cost / (len(forces) - 6)
    stated = 4 * u * u
    contradiction = seen / (MOST_RESIDUAL**2 * max(stated, 1e-10))
    if abs(largest - 1) < 0.01 or abs(contradiction - 1) < 0.01:
        return None, None, None, None
    if largest > 1:
        return "too_large", None, None, None
    if contradiction > 1:
        return "does_not_fit", None, None, None
    own = np.sqrt(np.diag(np.linalg.inv(found.jac.T @ found.jac)) * max(seen, stated))
    return "found", zero, scale, own
