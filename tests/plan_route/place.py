"""Place. Fit: 10 000 random lockers against a search over every place of a grid, by a table of sums
(numpy), in every one of scipy's rotations of the cube. Cut: gaps between polygons by shapely, their
uncertainty by drawing every number anew."""

import numpy as np
import shapely
from scipy.spatial.transform import Rotation
from shapely import affinity

GRID_MM = 50
NONE = np.nan


def run(answers):
    return "\n".join([_fit(answers), _fit_u(answers), _cut(answers), _cut_u(answers)])


# Fit

PORT_WAYS = [(0, 0, -1), (1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1)]
OUTLET_WAYS = [(1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1)]


def _rotations():
    """The rotations of the cube, ordered by where the port (−z) points, then the outlet (x)."""
    found = []
    for turn in Rotation.create_group("O"):
        m = np.rint(turn.as_matrix()).astype(int)
        port, outlet = tuple(-m[:, 2]), tuple(m[:, 0])
        found.append((PORT_WAYS.index(port), OUTLET_WAYS.index(outlet), m))
    return [m for _, _, m in sorted(found, key=lambda f: f[:2])]


def _locker(rng):
    """Whole numbers of grid steps."""
    inner = rng.integers(6, 14, 3)
    heater = rng.integers(1, 7, 3)
    clear = rng.integers(0, 3, 6)
    boxes = []
    for _ in range(rng.integers(0, 5)):
        low = rng.integers(-1, inner)
        boxes.append((low, rng.integers(1, 7, 3)))
    return inner, heater, clear, boxes


def _numbers(locker, orientation):
    inner, heater, clear, boxes = locker
    rows = [n for low, size in boxes for n in (*low, *size)]
    return [GRID_MM * float(n) for n in (*inner, *heater, *clear)] + [orientation] + [GRID_MM * float(n) for n in rows]


def _needs(rotation, heater, clear):
    """Extent of heater, what is clear before and behind it, along the compartment's axes."""
    outlet, intake, top, bottom, left, right = clear
    low = rotation @ np.array([-intake, -right, -bottom])
    high = rotation @ np.array([outlet, left, top])
    return abs(rotation) @ heater, -np.minimum(low, high), np.maximum(low, high)


def _fits(taken, size):
    """Whether a box of so many steps finds an empty place: sums over every place at once."""
    if (size > np.array(taken.shape) - 1).any():
        return False
    a, b, c = size
    s = taken
    s = s[a:] - s[:-a]
    s = s[:, b:] - s[:, :-b]
    s = s[:, :, c:] - s[:, :, :-c]
    return bool((s == 0).any())


def _room_by_trying(locker, total):
    """Twice the room in steps, as the largest growth of `total` that still fits; None where even a
    box of one step in some direction doesn't."""
    inner, _, _, boxes = locker
    solid = np.zeros(inner, int)
    for low, size in boxes:
        where = tuple(slice(max(l, 0), max(l + s, 0)) for l, s in zip(low, size, strict=True))
        solid[where] = 1
    taken = np.zeros(inner + 1, int)
    taken[1:, 1:, 1:] = solid.cumsum(0).cumsum(1).cumsum(2)
    for growth in range(int(max(inner)), -int(min(total)), -1):
        if _fits(taken, total + growth):
            return growth
    return None


def _fit(answers, lockers=10_000):
    rng = np.random.default_rng(5)
    rotations = _rotations()
    cases = [(_locker(rng), int(rng.integers(24))) for _ in range(lockers)]
    told = answers("fit", [(_numbers(*case), [0.0] * 200) for case in cases])
    fitting = compared = 0
    for (locker, which), (values, us) in zip(cases, told, strict=True):
        assert not np.nan_to_num(us).any()
        inner, heater, clear, boxes = locker
        rooms = {}
        for place, rotation in enumerate(rotations):
            axis = abs(rotation)
            length, height = axis[:, 0].argmax(), axis[:, 2].argmax()
            lay = 2 * length + [a for a in range(3) if a != length].index(height)
            needs = _needs(rotation, heater, clear)
            if lay not in rooms:
                rooms[lay] = _room_by_trying(locker, sum(needs))
                _same_room(values[lay], rooms[lay], sum(needs))
                compared += 1
            if place == which:
                assert values[7] == values[lay], "the chosen one's room is that of its lay"
                if rooms[lay] is not None and rooms[lay] >= 0:
                    fitting += 1
                    _well_placed(locker, needs, values)
        _best(rotations, rooms, values)
    return (
        f"fit: {len(cases)} lockers, {compared} lays agree with trying every place, "
        f"{fitting} places looked over"
    )


def _same_room(room_mm, growth, total):
    if growth is None:
        assert 2 * room_mm / GRID_MM < 1 - min(total), (room_mm, total)
    else:
        assert room_mm == growth * GRID_MM / 2, (room_mm, growth)


def _well_placed(locker, needs, values):
    """The heater where core puts it, with clearances and room all round, meets nothing."""
    inner, _, _, boxes = locker
    extent, before, behind = needs
    at, size = values[11:14], values[14:17]
    assert np.allclose(size, GRID_MM * extent)
    low = at - GRID_MM * before - values[7]
    high = at + size + GRID_MM * behind + values[7]
    assert (low > -1e-9).all() and (high < GRID_MM * inner + 1e-9).all()
    for corner, sides in boxes:
        apart = (high <= GRID_MM * corner + 1e-9) | (low >= GRID_MM * (corner + sides) - 1e-9)
        assert apart.any()


def _best(rotations, rooms, values):
    """An allowed orientation, and none that is allowed has more room."""
    best = rotations[int(values[6])]
    allowed = [m for m in rotations if m[2, 0] < 1 and -m[2, 2] < 1]
    assert len(allowed) == 16
    assert any((best == m).all() for m in allowed)
    length = abs(best)[:, 0].argmax()
    lay = 2 * length + [a for a in range(3) if a != length].index(abs(best)[:, 2].argmax())
    assert values[lay] == max(values[:6]), "every lay has an allowed orientation"


def _fit_u(answers, lockers=150, draws=200):
    """The interval holds what lockers drawn from the half-widths give, 95 times in 100 or more."""
    rng = np.random.default_rng(6)
    cases = []
    for _ in range(lockers):
        x = np.array(_numbers(_locker(rng), NONE))
        x[3:6] += GRID_MM  # room to draw in above the smallest heater that makes sense
        for corner in (13, 14, 15):
            x[corner::6] += 10  # a tape tells nothing below a millimetre
        half = rng.uniform(1, 6, len(x))
        half[6:13] = 0
        cases.append((x, half))
    told = answers("fit", cases)
    inside = total = 0
    for (x, half), (values, us) in zip(cases, told, strict=True):
        moved = x + half * rng.uniform(-1, 1, (draws, len(x)))
        drawn = answers("fit", [(row, [0.0] * len(row)) for row in moved])
        rooms = np.array([v[:6] for v, _ in drawn])
        inside += (abs(rooms - values[:6]) <= us[:6]).sum()
        total += rooms.size
    assert inside >= 0.95 * total, inside / total
    return f"fit: {inside / total:.1%} of {total} drawn rooms lie in their interval"


# Cut

FIXED = 27
LIMIT_MM = 0.02  # core's sine is single precision; shapely's round corners are 64 chords a quarter


def _maybe(rng, share, numbers):
    return list(numbers) if rng.random() < share else [NONE] * len(numbers)


def _plan(rng):
    wander = rng.uniform(-1, 3)
    fixed = [rng.uniform(0.5, 60), *rng.uniform(-0.2, 0.2, 2), wander]
    fixed += [*rng.uniform(-150, 150, 2), rng.uniform(-180, 180)]
    sides = rng.uniform(30, 300, 2)
    rectangle = [*sides, rng.choice([NONE, rng.uniform(0, min(sides) / 2)])]
    holes = [_maybe(rng, 0.4, [rng.uniform(8, 120), *rng.uniform(-200, 200, 2)]) for _ in range(4)]
    if all(np.isnan(h[0]) for h in holes) or rng.random() < 0.5:
        fixed += rectangle
    else:
        fixed += [NONE] * 3
    for hole in holes:
        fixed += hole
    fixed += _maybe(rng, 0.6, [*rng.uniform(60, 600, 2), *rng.uniform(-30, 30, 2), rng.uniform(0, 40)])
    return fixed + [n for _ in range(4) for n in _obstacle(rng)]


def _obstacle(rng):
    face = float(rng.integers(2))
    kind = rng.integers(6)
    x, y, x2, y2 = rng.uniform(-500, 500, 4).round()  # a tape tells whole millimetres
    square = [[x, y, NONE, NONE], [x, y, x2, y2], [x, NONE, x2, NONE], [NONE, y, NONE, NONE]]
    if kind < 4:
        return [face, *square[kind], NONE, NONE]
    direction = rng.uniform(-360, 360) if kind == 4 else NONE
    return [face, *[NONE] * 4, float(rng.integers(501)), direction]


def _cut_shape(x):
    """The cut and the plate before the turn, as shapely's shapes."""
    wander = x[3]
    parts = []
    if not np.isnan(x[7]):
        w, h = x[7] / 2 + wander, x[8] / 2 + wander
        r = min(0.0 if np.isnan(x[9]) else x[9], w, h)
        core = shapely.box(r - w, r - h, w - r, h - r)
        if w - r <= 0 or h - r <= 0:
            core = shapely.LineString([(r - w, r - h), (w - r, h - r)])
        parts.append(core.buffer(r, quad_segs=64) if r > 0 else core)
    for first in (10, 13, 16, 19):
        if not np.isnan(x[first]):
            parts.append(shapely.Point(x[first + 1], x[first + 2]).buffer(x[first] / 2 + wander, quad_segs=64))
    plate = None
    if not np.isnan(x[22]):
        w, h, px, py = x[22] / 2, x[23] / 2, x[24], x[25]
        plate = shapely.box(px - w, py - h, px + w, py + h)
    return parts, plate


def _lay(shape, x):
    return affinity.translate(affinity.rotate(shape, x[6], origin=(0, 0)), x[4], x[5])


def _thing(row, x):
    """The obstacle as seen from the near face; for a distance alone, where from and how far."""
    face, rx, ry, rx2, ry2, distance, direction = row
    sx, sy = (-1, 1) if face else (1, 1)
    ox, oy = (x[1] * x[0], x[2] * x[0]) if face else (0.0, 0.0)
    if not np.isnan(distance):
        if np.isnan(direction):
            return (ox, oy), distance
        t = np.radians(direction)
        return shapely.Point(ox + sx * distance * np.cos(t), oy + sy * distance * np.sin(t)), None
    xs = [rx, rx if np.isnan(rx2) else rx2] if not np.isnan(rx) else [-9e3, 9e3]
    ys = [ry, ry if np.isnan(ry2) else ry2] if not np.isnan(ry) else [-9e3, 9e3]
    corners = shapely.MultiPoint([(ox + sx * a, oy + b) for a in xs for b in ys])
    return corners.envelope, None


def _farthest(shape, origin):
    return max(np.hypot(*(np.array(p) - origin)) for p in shapely.get_coordinates(shape))


def _gap(parts, thing, ring):
    """From edge to edge; None where they overlap."""
    if ring is not None:
        return ring - max(_farthest(p, thing) for p in parts)
    if any(p.intersects(thing) for p in parts):
        return None
    return min(p.distance(thing) for p in parts)


def _cut(answers, plans=1000):
    rng = np.random.default_rng(7)
    cases = [_plan(rng) for _ in range(plans)]
    told = answers("cut_plan", [(x, [0.0] * len(x)) for x in cases])
    gaps = overlaps = plates = 0
    for x, (values, _) in zip(cases, told, strict=True):
        flat, plate = _cut_shape(x)
        parts = [_lay(p, x) for p in flat]
        _near(values[0], max(_farthest(p, (0, 0)) for p in parts))
        if plate is None:
            assert np.isnan(values[1])
        else:
            (a, b, c, d), (e, f, g, h) = plate.bounds, shapely.union_all(flat).bounds
            _near(values[1], min(e - a, f - b, c - g, d - h) - x[26])
        for i in range(4):
            row, given = x[FIXED + 7 * i :][:7], values[2 + 10 * i :][:10]
            thing, ring = _thing(row, x)
            gap = _gap(parts, thing, ring)
            if gap is None:
                overlaps += 1
                assert np.isnan(given[6:]).all()
                _near(given[0], -_depth(parts, thing))
            else:
                gaps += 1
                _near(given[0], gap)
                if ring is None and gap > 1:
                    _ends(parts, thing, given)
            if plate is None or row[0]:
                assert np.isnan(given[1])
                continue
            plates += 1
            gap = _gap([_lay(plate, x)], thing, ring)
            _near(given[1], -_depth([_lay(plate, x)], thing) if gap is None else gap)
    return f"cut: {gaps} gaps, {overlaps} overlaps and {plates} plates of {plans} plans agree with shapely"


def _near(a, b):
    assert abs(a - b) < LIMIT_MM, (a, b)


def _depth(parts, thing):
    """The least move that parts them, of the deepest piece: the way from no move at all to the edge
    of those moves that leave an overlap, which are the differences of the two shapes."""
    there = shapely.get_coordinates(thing)
    deepest = 0.0
    for part in parts:
        own = shapely.get_coordinates(part)
        moves = shapely.MultiPoint((there[:, None] - own[None]).reshape(-1, 2)).convex_hull
        if moves.contains(shapely.Point(0, 0)):
            deepest = max(deepest, moves.exterior.distance(shapely.Point(0, 0)))
    return deepest


def _ends(parts, thing, given):
    """The two nearest points lie on the edges and are a gap apart."""
    start, end = shapely.Point(given[6:8]), shapely.Point(given[8:10])
    _near(min(p.distance(start) for p in parts), 0)
    _near(thing.distance(end), 0)
    _near(start.distance(end), given[0])


def _cut_u(answers, plans=60, draws=100):
    """The interval holds what plans drawn from the half-widths give, 95 times in 100 or more; and
    where the gap is a smooth one, it is as wide as twice their spread."""
    rng = np.random.default_rng(8)
    cases = []
    for _ in range(plans):
        x = np.array(_plan(rng))
        half = rng.uniform(0.5, 3, len(x))
        half[[1, 2]] = 0.05
        half[9] = 0  # a corner may be as round as the rectangle allows
        cases.append((x, half))
    told = answers("cut_plan", cases)
    inside = total = 0
    ratios = []
    for (x, half), (values, us) in zip(cases, told, strict=True):
        places = 2 + 10 * np.arange(4)
        free = values[places] > 20
        drawn = x + half * rng.uniform(-1, 1, (draws, len(x)))
        drawn[:, FIXED::7] = x[FIXED::7]
        gaps = np.array([_gaps(row) for row in drawn], float)[:, free]
        inside += (abs(gaps - values[places][free]) <= us[places][free]).sum()
        total += gaps.size
        ratios += list(us[places][free] / (2 * gaps.std(axis=0)))
    assert inside >= 0.95 * total, inside / total
    middle = np.median(ratios)
    assert 0.98 < middle < 1.1, middle
    return (
        f"cut: {inside / total:.1%} of {total} drawn gaps lie in their interval, "
        f"U is {middle:.3f} of twice their spread (median)"
    )


def _gaps(x):
    parts = [_lay(p, x) for p in _cut_shape(x)[0]]
    things = [_thing(x[FIXED + 7 * i :][:7], x) for i in range(4)]
    return [NONE if (g := _gap(parts, *t)) is None else g for t in things]
