"""The flue a second way. Heights: numpy over the whole covariance matrix of the readings; the ends of
pipes drawn with one zero, one scale and one vehicle level for each phone. Low points: water poured over the pipe as a resampled
line and let run out by a queue (the flood of a landscape), so no rule about legs. Verdicts: readings
drawn about true pipes near the limit; how often core says within of a leg that rises. Ends by a
table; heel by scipy's rotation in space."""

import heapq
import math

import numpy as np
from scipy.spatial.transform import Rotation

NONE = math.nan
FIXED, WIDTH, OWN, EACH = 9, 15, 3, 6
HEIGHT, ALONG, STANDING, DEPTH, REMEDY, DRAIN = range(EACH)
ROOT3 = math.sqrt(3)


def run(answers):
    rng = np.random.default_rng(7)
    return "\n".join(part(answers, rng) for part in (heights, flooded, sways, verdicts, ends, heeled))


# Pipes


class Pipe:
    """Legs as arrays; `u` are combined, zero, scale, datum, heading and rake; group 0 was not read by a phone."""

    def __init__(self, rng, n, steep=25.0, drains=0.0):
        self.deg = rng.uniform(-steep, steep, n)
        self.m = rng.uniform(0.05, 1.5, n)
        self.bend = rng.uniform(0, 120, n)
        self.group = rng.integers(0, 4, n)
        parts = rng.uniform(0, 0.4, (5, n)) * (rng.random((5, n)) < 0.6)
        own = rng.uniform(0.05, 0.8, n)
        # As reports tell it: their own zero and scale are part of the combined one.
        self.u = np.vstack([np.sqrt((parts**2).sum(axis=0) + own**2), parts])
        self.half_deg = np.where(self.group == 0, rng.uniform(0.05, 1.5, n), 0.0)
        self.half_m = rng.uniform(0.001, 0.02, n)
        self.drained = rng.random(n) < drains

    def numbers(self, deg=None, m=None):
        deg = self.deg if deg is None else deg
        m = self.m if m is None else m
        x, half = [0, NONE, NONE, NONE, NONE, 1, 0, 0, 0], [NONE] * FIXED
        for i in range(len(deg)):
            where = [0, 1, 4] if self.drained[i] else [NONE] * 3
            u = self.u[:, i] if self.group[i] else [NONE] * 6
            x += [deg[i], m[i], self.bend[i], *where, self.group[i], *u, 0, 0]
            half += [self.half_deg[i], self.half_m[i], 0] + [NONE] * (WIDTH - 3)
        return x, half

    def covariance(self):
        """Of the elevations, degrees²: what one phone shares is fully correlated within its group."""
        read = self.group > 0
        shared = np.where(read, np.sqrt((self.u[1:] ** 2).sum(axis=0)), 0.0)
        same = self.group[:, None] == self.group[None, :]
        own = np.where(read, self.u[0] ** 2 - shared**2, self.half_deg**2 / 3)
        return np.outer(shared, shared) * same + np.diag(own)

    def draw(self, rng, truth, times):
        """Readings of true elevations as phones leave them: for each group one zero, one scale and one
        vehicle level, normal; normal own errors; rectangles for what was typed; lengths by tape."""
        n = len(self.m)
        read = self.group > 0
        own = np.sqrt(np.maximum(self.u[0] ** 2 - (self.u[1:] ** 2).sum(axis=0), 0)) * read
        errors = rng.normal(size=(times, n)) * own
        for shared in self.u[1:] * read:
            errors += rng.normal(size=(times, 4))[:, self.group] * shared
        errors += rng.uniform(-1, 1, (times, n)) * self.half_deg
        return truth + errors, self.m + rng.uniform(-1, 1, (times, n)) * self.half_m


def rows(values):
    return values[OWN:].reshape(-1, EACH)


def heights(answers, rng, n=2500):
    pipes = [Pipe(rng, rng.integers(1, 13)) for _ in range(n)]
    told = answers("exhaust", [p.numbers() for p in pipes])
    told_air = answers("air_pipe", [p.numbers() for p in pipes[:200]])
    for (a, b), (c, d) in zip(told[:200], told_air, strict=True):
        assert np.array_equal(a, c, equal_nan=True) and np.array_equal(b, d, equal_nan=True)
    covered = total = 0
    for p, (values, us) in zip(pipes, told, strict=True):
        e = np.radians(p.deg)
        lower = np.tril(np.ones((len(e), len(e))))
        rise, level = 1000 * p.m * np.sin(e), 1000 * p.m * np.cos(e)
        got, got_u = rows(values), rows(us)
        assert np.allclose(got[:, HEIGHT], lower @ rise, atol=1e-3)
        assert np.allclose(got[:, ALONG], lower @ level, atol=1e-3)
        assert np.isclose(values[0], p.m.sum()) and np.isclose(values[1], p.bend.sum())
        by_angle = lower * np.radians(level)
        by_length = lower * 1000 * np.sin(e)
        cov = by_angle @ p.covariance() @ by_angle.T
        cov += by_length @ np.diag(p.half_m**2 / 3) @ by_length.T
        want = 2 * np.sqrt(np.diag(cov))
        # Core moves by a step and counts the larger side: a little above the tangent, never below.
        assert np.all(got_u[:, HEIGHT] >= want * (1 - 1e-3)), (got_u[:, HEIGHT], want)
        assert np.all(got_u[:, HEIGHT] <= want * 1.03), (got_u[:, HEIGHT], want)
        assert np.isclose(us[2], got_u[-1, HEIGHT])
        deg, m = p.draw(rng, p.deg, 100)
        ends = (1000 * m * np.sin(np.radians(deg))).sum(axis=1)
        covered += np.sum(np.abs(ends - values[2]) <= us[2])
        total += 100
    assert 0.945 <= covered / total, covered / total
    return f"flue heights: {n} pipes agree with their covariance, {covered / total:.4f} of {total} ends inside"


# Water


def flood(rise, drained, steps=40):
    """Depth of water at every joint of a pipe that was filled: a line of points, its end and its drains
    open, the heater's end closed. The lowest open place runs out first (priority flood)."""
    line, joints = [0.0], [0]
    for r in rise:
        line += list(line[-1] + r * np.arange(1, steps + 1) / steps)
        joints.append(len(line) - 1)
    level = np.full(len(line), np.inf)
    queue = []
    for place in [joints[-1]] + [j for j, d in zip(joints, drained, strict=False) if d]:
        level[place] = line[place]
        heapq.heappush(queue, (line[place], place))
    while queue:
        at, place = heapq.heappop(queue)
        for near in (place - 1, place + 1):
            if 0 <= near < len(line) and level[near] == np.inf:
                level[near] = max(line[near], at)
                heapq.heappush(queue, (level[near], near))
    return (level - line)[joints], level - line


def flooded(answers, rng, n=2500):
    pipes = [Pipe(rng, rng.integers(1, 13), steep=15, drains=rng.choice([0, 0.25])) for _ in range(n)]
    found = 0
    for p, (values, _) in zip(pipes, answers("exhaust", [p.numbers() for p in pipes]), strict=True):
        rise = 1000 * p.m * np.sin(np.radians(p.deg))
        at, all_along = flood(rise, p.drained)
        got = rows(values)
        for i, depth in enumerate(got[:, DEPTH]):
            beside = [all_along[40 * i + 1]] + ([all_along[40 * i - 1]] if i else [])
            lowest = at[i] > 1e-6 and max(beside) < at[i]
            assert (at[i] > 1e-6) == (not math.isnan(depth)), (rise, p.drained, i, depth, at)
            assert math.isnan(depth) or abs(depth - at[i]) < 1e-3, (rise, p.drained, i, depth, at[i])
            found += lowest
            assert got[i, REMEDY] == (1 if lowest else 0)
        # Water anywhere: a leg says so; every leg drains: no water anywhere.
        assert (got[:, STANDING] > 0).any() == (all_along.max() > 1e-6), (rise, p.drained, got, at)
    return f"flue water: {n} pipes flooded, {found} low points agree"


def sways(answers, rng, n=500):
    """Afloat: the largest error of a mean of a swing over every phase, by sums, is the bound."""
    cases, wants = [], []
    for _ in range(n):
        period, roll = rng.uniform(1, 12), rng.uniform(0.2, 8)
        averaged = period * (rng.integers(10, 40) + 0.5)
        x = [1, 1, period, averaged, roll, NONE, 0, 0, 0, -4, 1, 0] + [NONE] * 3 + [0] + [NONE] * 6 + [0, 0]
        cases.append((x, [0] * (FIXED + WIDTH - 2) + [ROOT3, 1]))
        t = (np.arange(4000) + 0.5) / 4000 * averaged
        phases = np.linspace(0, 2 * np.pi, 24, endpoint=False)
        means = np.sin(2 * np.pi * t[None] / period + phases[:, None]).mean(axis=1)
        wants.append(roll * np.abs(means).max())
    for want, (_, us) in zip(wants, answers("exhaust", cases), strict=True):
        mm = 1000 * math.radians(want) * math.cos(math.radians(4)) * 2 / ROOT3
        assert abs(us[2] - mm) < 0.01 * mm, (us[2], mm)
    short = [([1, 1, 4, 39.9, 2, NONE, 0, 0, 0, *cases[0][0][FIXED:]], [])]
    assert answers("exhaust", short)[0] == (3, "beyond_formula")
    return f"flue afloat: {n} swings agree"


def verdicts(answers, rng, pipes=120, times=250):
    """False assurance, where it is likeliest: legs that are level or rise by a part of what the
    reading is uncertain by, among legs that fall."""
    cases, truths = [], []
    for _ in range(pipes):
        p = Pipe(rng, rng.integers(1, 7))
        shared = (p.u[1:] ** 2).sum(axis=0)
        p.u[0] = np.sqrt(shared + rng.uniform(0.05, 0.8, len(p.m)) ** 2)
        u = np.where(p.group > 0, p.u[0], p.half_deg / ROOT3)
        truth = rng.choice([0.0, 0.0, 0.3, 1.0, -3.0], len(p.m)) * u
        truth[0] = rng.choice([truth[0], -8.0])
        deg, m = p.draw(rng, truth, times)
        cases += [p.numbers(d, length) for d, length in zip(deg, m, strict=True)]
        truths += [(p.m * np.sin(np.radians(truth)), p.drained)] * times
    rises = rises_within = level = level_within = pipe_wet = pipe_within = dry = dry_beyond = 0
    for (rise, drained), (values, us) in zip(truths, answers("exhaust", cases), strict=True):
        got, got_u = rows(values), rows(us)
        within = got[:, STANDING] + got_u[:, STANDING] <= 0
        rises, rises_within = rises + np.sum(rise > 0), rises_within + np.sum(within & (rise > 0))
        level, level_within = level + np.sum(rise == 0), level_within + np.sum(within & (rise == 0))
        if flood(1000 * rise, drained, 1)[0].max() > 0:
            pipe_wet += 1
            pipe_within += within.all()
        else:
            dry += len(rise)
            with np.errstate(invalid="ignore"):
                dry_beyond += np.sum(got[:, DEPTH] - got_u[:, DEPTH] > 0)
    assert level_within <= 0.025 * level, level_within / level
    assert rises_within <= 0.015 * rises, rises_within / rises
    assert pipe_within <= 0.025 * pipe_wet, pipe_within / pipe_wet
    assert dry_beyond <= 0.025 * dry, dry_beyond / dry
    return (
        f"flue verdicts: within were {level_within / level:.4f} of {level} level legs, "
        f"{rises_within / rises:.4f} of {rises} that rise, of "
        f"{pipe_wet} pipes that hold water {pipe_within / pipe_wet:.4f}; of {dry} legs of dry ones "
        f"{dry_beyond / dry:.4f} beyond"
    )


# Ends and boats

SORTS = {0: 0, 1: 0, 2: 0, 3: 0, 4: 0, 5: 1, 6: 1, 7: 1, 8: 1, 9: 2}


def ends(answers, rng, n=2000):
    cases = []
    for _ in range(n):
        fixed = [rng.choice([NONE, rng.uniform(1, 9000)]), rng.choice([NONE, rng.uniform(1, 900)])]
        fixed.append(rng.choice([NONE, 0, 1]))
        k = rng.integers(0, 9)
        near = np.column_stack([rng.integers(0, 10, k), rng.uniform(1, 15_000, k)])
        cases.append(([*fixed, *near.ravel()], []))
    share = 2 * rng.uniform(-1, 1, 4_000_000).std()
    for (x, _), (values, us) in zip(cases, answers("pipe_ends", cases), strict=True):
        assert np.array_equal(values[:2], x[:2], equal_nan=True)
        near = np.array(x[3:]).reshape(-1, 2)
        for (what, mm), got, u in zip(near, values[2:].reshape(-1, 3), us[2:].reshape(-1, 3), strict=True):
            want = [NONE] * 3
            if not (what == 9 and x[2] == 1):
                want[SORTS[what]] = mm
            assert np.array_equal(got, want, equal_nan=True), (what, got)
            told = ~np.isnan(got)
            assert np.allclose(u[told], share * (2 + 0.002 * mm), rtol=1e-3)
    return f"flue ends: {n} lists agree"


def heeled(answers, rng, n=2500, draws=4000):
    height, across = rng.uniform(50, 3000, (n, 2)), rng.uniform(1, 3000, (n, 2))
    heel, sinkage = rng.uniform(0, 45, n), rng.uniform(0, 300, n)
    half = np.column_stack([rng.uniform(1, 40, (n, 4)), rng.uniform(0, 4, n), rng.uniform(1, 150, n)])
    x = np.column_stack([height[:, 0], across[:, 0], height[:, 1], across[:, 1], heel, sinkage])
    told = answers("boat_outlet", [(a, b) for a, b in zip(x, half, strict=True)])

    def above(numbers, at):
        # Bow x, port y, up z; she heels to port: about the bow's axis, port goes down.
        points = np.column_stack([np.zeros(len(numbers)), numbers[:, 2 * at + 1], numbers[:, 2 * at]])
        return Rotation.from_euler("x", -numbers[:, [4]], degrees=True).apply(points)[:, 2] - numbers[:, 5]

    covered = total = 0
    for i, (values, us) in enumerate(told):
        for at in (0, 1):
            assert abs(values[at] - above(x[i : i + 1], at)[0]) < 2e-3
            if i < 200:
                drawn = above(x[i] + half[i] * rng.uniform(-1, 1, (draws, 6)), at)
                covered += np.sum(np.abs(drawn - values[at]) <= us[at])
                total += draws
    assert covered >= 0.95 * total, covered / total
    return f"flue heel: {n} boats agree, {covered / total:.4f} of {total} draws inside"
