"""From a distribution to an interval and a verdict: JCGM 101 for the factor, JCGM 106 and
ILAC-G8 for the guard band w = U."""

import math

import numpy as np
from scipy import optimize, stats

RANGES = {"pump_roll": None, "filter_upright": (0, 180)}


def exact_factor(share):
    """Two-sided 95 % factor of a normal convolved with one rectangle that has `share` of the
    combined standard uncertainty."""
    if share < 1e-6:
        return stats.norm.ppf(0.975)
    if share > 1 - 1e-9:
        return 0.95 * math.sqrt(3)
    a, sigma = share * math.sqrt(3), math.sqrt(1 - share * share)
    integral = lambda z: z * stats.norm.cdf(z) + stats.norm.pdf(z)
    below = lambda x: sigma / (2 * a) * (integral((x + a) / sigma) - integral((x - a) / sigma))
    return optimize.brentq(lambda x: below(x) - 0.975, 1.2, 2.2, xtol=1e-12)


SHARES = np.linspace(0, 1, 801)
FACTORS = np.array([exact_factor(s) for s in SHARES])


def factor(rectangle, combined):
    """The same from a table, good to 1e-5."""
    return float(np.interp(min(rectangle / (math.sqrt(3) * combined), 1), SHARES, FACTORS))


def verdict(check, value, u, low, high):
    """Within, beyond or not proven, and how far the nearest edge of the interval is from flipping
    it. `low` or `high` is infinite. Elevations and angles off plumb end where they can."""
    if check == "pump_roll":
        limit = low if math.isfinite(low) else high
        # One-sided limits of a roll are not turned round the circle.
        edges = (value - u, value + u)
    else:
        least, most = RANGES.get(check, (-90, 90))
        edges = (max(value - u, least), min(value + u, most))
        limit = low if math.isfinite(low) else high
    near = min(abs(edge - limit) for edge in edges)
    if edges[0] >= low and edges[1] <= high:
        return "within", near
    if edges[0] > high or edges[1] < low:
        return "beyond", near
    return "not_proven", near
