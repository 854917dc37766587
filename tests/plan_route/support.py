"""The seal face a second way. The list: by draws of every gap between its two blades (JCGM 101),
whose largest must lie in the interval 95 times in 100. Two tilts: the flattest pair of planes round
the ends of the two bases by linear programming (scipy), never closer than core says."""

import math

import numpy as np
from scipy import optimize

NONE = math.nan


def lines(rng):
    return [(k, goes, goes + rng.choice([0.05, 0.1, 0.2])) for k in range(6) for goes in [rng.uniform(0, 1.5)]]


def listed(answers, rng, n=700):
    cases, wholes = [], []
    for _ in range(n):
        long, short = rng.uniform(100, 400, 2)
        edge = rng.uniform(100, 800)
        rows = lines(rng)
        dropped = rng.integers(0, 12)
        rows = [r for r in rows if r[0] != dropped]
        open_end = rng.integers(0, 30)
        rows = [(k, g, NONE if i == open_end else s) for i, (k, g, s) in enumerate(rows)]
        x = [long, short, edge, rng.uniform(0, 0.1), 0] + [v for k, g, s in rows for v in (k, g, s, 0)]
        cases.append((x, []))
        sides = [long, long, short, short, np.hypot(long, short), np.hypot(long, short)]
        read = {k for k, _, s in rows if not math.isnan(s)}
        wholes.append(sum(k not in read or edge < sides[k] for k in range(6)))
    covered = total = 0
    for (x, _), missing, (values, us) in zip(cases, wholes, answers("support", cases), strict=True):
        assert values[2] == missing, (x, values, missing)
        assert math.isnan(values[0]) == (missing > 0)
        place = 0 if missing == 0 else 1
        rows = np.array(x[5:]).reshape(-1, 4)
        middle = np.where(np.isnan(rows[:, 2]), rows[:, 1], (rows[:, 1] + rows[:, 2]) / 2)
        assert np.allclose(values[3:], middle, atol=1e-12)
        assert abs(values[place] - middle.max()) < 1e-12
        if missing == 0:
            gaps = rng.uniform(rows[:, 1], rows[:, 2], (200, len(rows)))
            blade = rng.uniform(-0.01, 0.01, gaps.shape)
            largest = (gaps + blade).max(axis=1) + rng.uniform(-1, 1, 200) * x[3]
            covered += np.sum(np.abs(largest - values[0]) <= us[0])
            total += 200
    assert covered >= 0.95 * total, covered / total
    return f"support: {n} lists agree, {covered / total:.3f} of {total} draws inside"


def zone(points):
    """Least distance from the lowest to the highest point off any plane: minimise t."""
    x, y, z = points.T
    one = np.ones(len(z))
    a = np.vstack([np.column_stack([x, y, one, -one]), np.column_stack([-x, -y, -one, -one])])
    done = optimize.linprog([0, 0, 0, 1], A_ub=a, b_ub=np.concatenate([z, -z]), bounds=[(None, None)] * 3 + [(0, None)])
    return 2 * done.fun


def twisted(answers, rng, n=500):
    first, turn = rng.uniform(-8, 8, n), rng.uniform(-6, 6, n)
    base, apart = rng.uniform(80, 300, n), rng.uniform(60, 200, n)
    told = answers("twist", [([a, a + t, b], [0.2, 0.2, 2]) for a, t, b in zip(first, turn, base, strict=True)])
    for a, t, b, w, (values, _) in zip(first, turn, base, apart, told, strict=True):
        # Seen along the mean of the two tilts: the ends of each base, the second on the other side.
        ends = []
        for angle, y, shift in ((-t / 2, 0, 0), (t / 2, w, rng.uniform(-20, 20))):
            c, s = b / 2 * math.cos(math.radians(angle)), b / 2 * math.sin(math.radians(angle))
            ends += [(shift - c, y, -s), (shift + c, y, s)]
        least = zone(np.array(ends))
        assert values[0] <= least * (1 + 1e-9) + 1e-9, (a, t, b, values, least)
        assert values[0] >= 0.99 * least
    return f"twist: {n} pairs never above the flattest planes"


def run(answers):
    rng = np.random.default_rng(5)
    return "\n".join([listed(answers, rng), twisted(answers, rng)])
