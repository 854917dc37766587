"""The supply a second way. Cable: the circuit as a graph of conductances, node voltages by numpy's
linear solver, units by Pint, gauges as the geometric progression between 0.005 in and 0.46 in that
the standard defines, copper by its conductivity. U by `uncertainties` (partial derivatives) and
whether draws of every number (JCGM 101) lie in the interval. Battery: charge drawn phase by phase
until it is empty (scipy's root of the balance)."""

import math

import numpy as np
import pint
from scipy import optimize
from uncertainties import ufloat

NONE = math.nan
UNITS = pint.UnitRegistry()
# IEC 60228 class 5, Ω/km at 20 °C, plain; then gauges.
AREAS = {0.75: 26.0, 1: 19.5, 1.5: 13.3, 2.5: 7.98, 4: 4.95, 6: 3.30, 10: 1.91, 16: 1.21}
GAUGES = [18, 16, 14, 12, 10, 8, 6]
CONDUCTIVITY = 58.0 * UNITS("megasiemens/m")
BOAT_LAW = {18: 20, 16: 25, 14: 35, 12: 45, 10: 60, 8: 80}
METER, CLAMP = (0.02, 0.005), (0.1, 0.03)


def gauge_ohm_per_m(gauge):
    step = (0.46 / 0.005) ** (1 / 39)
    d = 0.005 * step ** (36 - gauge) * UNITS.inch
    return (1 / (CONDUCTIVITY * math.pi * (d / 2) ** 2)).to("ohm/m").magnitude


OHM_PER_M = [UNITS.Quantity(r, "ohm/km").to("ohm/m").magnitude for r in AREAS.values()]
OHM_PER_M += [gauge_ohm_per_m(g) for g in GAUGES]


def nodes(supply, amperes, resistances):
    """Voltages of a ring: battery, the resistances in order, the heater's current between two of
    them. `resistances`: before and after the heater. Node 0 is the battery's minus."""
    before, after = ([r for r in part if r > 0] for part in resistances)
    n = len(before) + len(after) + 1
    matrix, right = np.zeros((n, n)), np.zeros(n)
    # Node k hangs on k - 1 by its resistance; the first is held at the battery's voltage.
    edges = [(k, k + 1, r) for k, r in enumerate(before)]
    first = len(before) + 1
    edges += [(first + k, first + k + 1, r) for k, r in enumerate(after)]
    ground = n
    for a, b, r in edges:
        for i, j in ((a, b), (b, a)):
            if i < n:
                matrix[i, i] += 1 / r
                if j < n:
                    matrix[i, j] -= 1 / r
    heater, back = len(before), first if after else ground
    right[heater] -= amperes
    if back < n:
        right[back] += amperes
    matrix[0], right[0] = np.eye(n)[0], supply
    if not after:
        matrix, right = matrix[: n - 1, : n - 1], right[: n - 1]
    return np.linalg.solve(matrix, right), heater, back, ground


def cable_values(x, ohm_per_m):
    out, body, back, body_r, *_, celsius, joints, v1, i1, v2, i2, _ = x
    per_m = ohm_per_m * (1 + 0.00393 * (UNITS.Quantity(celsius, "degC") - UNITS.Quantity(20, "degC")).magnitude)
    milli = UNITS("mohm").to("ohm").magnitude
    parts = [[joints * milli, per_m * out], [per_m * back, 0 if math.isnan(body_r) else body_r * milli]]
    loop = sum(map(sum, parts)) / milli

    def side(volts, amperes):
        u, heater, low, ground = nodes(volts, amperes, parts)
        minus = u[low] if low < ground else 0.0
        lost_joints = volts - u[1] if joints > 0 else 0.0
        return lost_joints, volts - u[heater] - lost_joints, minus, u[heater] - minus

    known1, known2 = not math.isnan(i1), not math.isnan(i2)
    joints1, out1, back1, heater1 = side(v1 if not math.isnan(v1) else 12.0, i1) if known1 else [NONE] * 4
    *lost2, heater2 = side(v2 if not math.isnan(v2) else 12.0, i2) if known2 else [NONE] * 4
    drop1, drop2 = out1 + joints1 + back1, sum(lost2)
    if math.isnan(v1):
        heater1 = NONE
    if math.isnan(v2):
        heater2 = NONE
    return np.array([loop, out1, joints1, back1, drop1, 100 * drop1 / v1, drop2, 100 * drop2 / v2, heater1, heater2])


def cable_case(rng):
    body = rng.random() < 0.25
    conductor = int(rng.integers(15))
    paper = rng.choice([NONE, OHM_PER_M[conductor] * 1e3 * rng.uniform(0.9, 1.1)], p=[0.8, 0.2])
    some = lambda v: rng.choice([v, NONE], p=[0.95, 0.05])
    return [
        rng.uniform(0.3, 15), float(body), rng.uniform(0.1, 15), rng.uniform(0.5, 20) if body else NONE, float(conductor), paper,
        rng.uniform(-20, 100), rng.choice([0.0, rng.uniform(1, 40)]), some(rng.uniform(9, 28)), some(rng.uniform(2, 30)),
        some(rng.uniform(10, 29)), some(rng.uniform(0.5, 8)), 0.0,
    ]


def cable_half(x):
    told = [(0.05, 0.02), 0, (0.05, 0.02), (1, 0.5), 0, (0, 0.02), (10, 0), (1, 0.5), METER, CLAMP, METER, CLAMP, (1, 0)]
    return [t[0] + t[1] * abs(v) if t and not math.isnan(v) else 0.0 for v, t in zip(x, told, strict=True)]


def cable_uncertain(x, half, base):
    """U of each by partial derivatives."""
    q = [ufloat(v, h / math.sqrt(3)) if h else v for v, h in zip(x, half, strict=True)]
    out, _, back, body, code, paper, celsius, joints, v1, i1, v2, i2, spread = q
    r20 = base * 1e3 * (1 + 0.12 * spread) if math.isnan(x[5]) else paper
    per_m = r20 * (1 + 0.00393 * (celsius - 20))
    way = per_m * back + (0 if math.isnan(x[3]) else body)
    loop = per_m * out + joints + way
    lost = [i1 * r / 1000 for r in (per_m * out, joints, way, loop)] + [i2 * loop / 1000]
    d1, d2 = lost[3], lost[4]
    results = [loop, *lost[:3], d1, 100 * d1 / v1, d2, 100 * d2 / v2, v1 - d1, v2 - d2]
    return np.array([2 * getattr(r, "std_dev", 0.0) for r in results])


def cable_drawn(x, half, base, rng, n=400):
    """Results of draws of every number, by Ohm's law over arrays."""
    draw = np.array(x)[:, None] + rng.uniform(-1, 1, (len(x), n)) * np.array(half)[:, None]
    out, _, back, body, _, paper, celsius, joints, v1, i1, v2, i2, spread = draw
    r20 = base * 1e3 * (1 + 0.12 * spread) if math.isnan(x[5]) else paper
    loop = r20 * (1 + 0.00393 * (celsius - 20)) * (out + back) + joints + (0 if math.isnan(x[3]) else body)
    d1, d2 = i1 * loop / 1000, i2 * loop / 1000
    return {4: d1, 6: d2, 8: v1 - d1, 9: v2 - d2}


def cable(answers, rng, n=2500):
    fixed = [[float(v) for v in cable_case(rng)] for _ in range(n)]
    sizes = [rng.permutation(15)[: rng.integers(0, 16)] for _ in fixed]
    told = answers("cable", [(x + [float(s) for s in size], []) for x, size in zip(fixed, sizes, strict=True)])
    inside = total = 0
    for k, (x, size, (values, us)) in enumerate(zip(fixed, sizes, told, strict=True)):
        assert not isinstance(values, int), (x, values, us)
        base = OHM_PER_M[int(x[4])]
        per_m = base if math.isnan(x[5]) else x[5] / 1000
        expected = cable_values(x, per_m)
        assert np.allclose(values[:10], expected, rtol=2e-6, atol=1e-4, equal_nan=True), (x, values, expected)
        u = cable_uncertain(x, cable_half(x), base)
        known = ~np.isnan(expected)
        linear = [0, 1, 2, 3, 4, 6, 8, 9]
        good = np.isclose(us[:10], u, rtol=1e-5, atol=1e-9) | ~known
        assert good[linear].all(), (x, us, u)
        # Of a quotient the larger side counts: never less than the derivative says, hardly more.
        for i in (5, 7):
            assert not known[i] or u[i] * (1 - 1e-5) <= us[i] <= 1.02 * u[i], (x, us[i], u[i])
        for j, s in enumerate(size):
            row = values[10 + 3 * j : 13 + 3 * j]
            other = cable_values(x, OHM_PER_M[s])[[4, 6, 8]]
            assert np.allclose(row, other, rtol=2e-6, atol=1e-4, equal_nan=True), (x, s, row, other)
        if k % 5 == 0:
            for i, drawn in cable_drawn(x, cable_half(x), base, rng).items():
                if known[i]:
                    inside += np.sum(np.abs(drawn - values[i]) <= us[i])
                    total += len(drawn)
    assert inside >= 0.95 * total, inside / total
    return f"cable: {n} circuits agree, with {sum(map(len, sizes))} other sizes; {inside / total:.3f} of {total} draws inside"


def refused(answers):
    case = [5, 0, 5, NONE, 3, NONE, 20, 5, 12, 10, 12, 2, 0]
    change = lambda **at: [at.get(f"i{i}", v) for i, v in enumerate(case)]
    told = answers("cable", [(change(i1=1), []), (change(i3=2), []), (change(i6=NONE), []), (change(i2=NONE), [])])
    assert told == [(3, "missing"), (3, "contradiction"), (6, "missing"), (2, "missing")], told


def fuse(answers, rng, n=600):
    cases = []
    for _ in range(n):
        some = lambda v: float(rng.choice([v, NONE], p=[0.9, 0.1]))
        x = [rng.choice([5, 7.5, 10, 15, 20, 25, 30]), rng.uniform(0, 900), rng.integers(15), rng.uniform(8, 120)]
        cases.append([some(v) for v in [*x, rng.uniform(0.4, 1), rng.uniform(0.4, 1)]])
    inside = total = 0
    for x, (values, us) in zip(cases, answers("fuse", [(x, []) for x in cases]), strict=True):
        carries = ufloat(x[3], 0.05 * np.nan_to_num(x[3], nan=1) / math.sqrt(3)) * x[4] * x[5]
        law = NONE if math.isnan(x[2]) or x[2] < 8 else BOAT_LAW.get(GAUGES[int(x[2]) - 8], NONE)
        spare = carries - x[0]
        expected = [x[0], carries.nominal_value, spare.nominal_value, x[1], law]
        assert np.allclose(values, expected, rtol=1e-12, atol=1e-12, equal_nan=True), (x, values, expected)
        if not math.isnan(values[2]):
            assert np.allclose(us[1:3], 2 * spare.std_dev, rtol=1e-9)
            drawn = x[3] * rng.uniform(0.95, 1.05, 100) * x[4] * x[5] - x[0]
            inside += np.sum(np.abs(drawn - values[2]) <= us[2])
            total += 100
    assert inside >= 0.95 * total
    return f"fuse: {n} cases agree, {inside / total:.3f} of {total} draws inside"


def bank(answers, rng, n=600):
    """Series of cells; the take-off at the end or between. One at the end is found off by no more
    readings than U leaves out; a centre tap by all."""
    ends = flagged = 0
    cases = []
    for _ in range(n):
        batteries = int(rng.integers(1, 3))
        volts = rng.uniform(11.8, 13.0, batteries)
        tapped = batteries == 2 and rng.random() < 0.5
        whole, taken = volts.sum(), volts[0] if tapped else volts.sum()
        read = [v + rng.uniform(-1, 1) * (METER[0] + METER[1] * v) for v in (whole, taken)]
        cases.append(([float(batteries - 1), *read], tapped))
    for (x, tapped), (values, us) in zip(cases, answers("bank", [(x, []) for x, _ in cases]), strict=True):
        a, b = (ufloat(v, (METER[0] + METER[1] * v) / math.sqrt(3)) for v in x[1:])
        gap = a - b
        expected = [x[1], x[2], gap.nominal_value, 100 * x[2] / x[1], 100 * x[2] / (12 * (1 + x[0]))]
        assert np.allclose(values, expected, rtol=1e-12, atol=1e-12)
        assert math.isclose(us[2], 2 * gap.std_dev, rel_tol=1e-9)
        found = abs(values[2]) > us[2]
        if tapped:
            assert found and abs(values[3] - 50) < 4, (x, values)
        else:
            ends += 1
            flagged += found
    assert flagged <= 0.05 * ends, (flagged, ends)
    return f"bank: {n} banks agree; every centre tap found, {flagged} of {ends} others"


def whole_h(amperes, capacity, hours, exponent):
    """Time to empty at a constant current: Peukert above the label's current, its charge below."""
    i = amperes * UNITS.ampere
    c, h = capacity * UNITS.ampere_hour, hours * UNITS.hour
    share = (c / (i * h)).to_base_units().magnitude
    return ((c / i) if share >= 1 else h * share**exponent).to("hour").magnitude


def battery_values(x):
    capacity, rated, usable, cold, running, standby, starts, i1, t1, i2, t2, exponent, wanted = x
    k = 1.0 if math.isnan(exponent) else exponent
    left = usable * cold
    charge = [0.0, 0.0]
    for j, (amperes, minutes) in enumerate([(i1, t1), (i2, t2)]):
        for _ in range(int(starts)):
            hours = (minutes * UNITS.minute).to("hour").magnitude
            charge[j] += amperes * hours
            left -= hours / whole_h(amperes, capacity, rated, k)
    one = whole_h(running + standby, capacity, rated, k)
    lasts = optimize.brentq(lambda t: left - t / one, -1e5, 1e5, xtol=1e-10)
    bounded = math.isnan(exponent) and running + standby > capacity / rated
    kept = [NONE, lasts] if bounded else [lasts, NONE]
    return np.array([capacity * usable * cold, *charge, capacity / rated, *kept, *(h - wanted for h in kept)])


def battery_half(x):
    told = [(0, 0.1), 0, (0.05, 0), (0.05, 0), CLAMP, (0.02, 0.1), 0, CLAMP, (0, 0.1), CLAMP, (0, 0.1), (0.05, 0), 0]
    return [t[0] + t[1] * abs(v) if t and not math.isnan(v) else 0.0 for v, t in zip(x, told, strict=True)]


def battery_case(rng):
    starts = int(rng.integers(0, 6))
    phase = [rng.uniform(4, 20), rng.uniform(1, 5), rng.uniform(1, 6), rng.uniform(1, 6)] if starts else [NONE] * 4
    exponent = float(rng.choice([NONE, rng.uniform(1.02, 1.4)]))
    return [
        rng.uniform(30, 250), float(rng.choice([5, 10, 20, 100])), rng.uniform(0.3, 0.95), rng.uniform(0.4, 1), rng.uniform(0.6, 9),
        rng.uniform(0, 0.6), float(starts), *phase, exponent, float(rng.choice([NONE, rng.uniform(2, 40)])),
    ]


def battery_u(x, half, told):
    """U of the hours by the larger change of both sides; a side on which they are no longer told so
    does not count."""
    base, total = battery_values(x)[told], 0.0
    for i, h in enumerate(half):
        if h:
            moved = [battery_values([*x[:i], x[i] + s * h / math.sqrt(3), *x[i + 1 :]])[told] for s in (1, -1)]
            total += np.fmax(*(abs(m - base) for m in moved)) ** 2
    return 2 * math.sqrt(total)


def battery_drawn(x, half, rng, n=1000):
    """Hours of draws, by the closed form over arrays."""
    draw = np.array(x)[:, None] + rng.uniform(-1, 1, (len(x), n)) * np.array(half)[:, None]
    capacity, rated, usable, cold, running, standby, starts, i1, t1, i2, t2, k, _ = draw
    k = np.ones(n) if math.isnan(x[11]) else k

    def whole(amperes):
        share = capacity / (amperes * rated)
        return np.where(share >= 1, capacity / amperes, rated * share**k)

    used = 0.0 if x[6] == 0 else starts * (t1 / 60 / whole(i1) + t2 / 60 / whole(i2))
    return (usable * cold - used) * whole(running + standby)


def battery(answers, rng, n=1500):
    cases = [[float(v) for v in battery_case(rng)] for _ in range(n)]
    inside = total = 0
    for k, (x, (values, us)) in enumerate(zip(cases, answers("battery", [(x, []) for x in cases]), strict=True)):
        expected = battery_values(x)
        assert np.allclose(values, expected, rtol=1e-9, atol=1e-7, equal_nan=True), (x, values, expected)
        if k % 5 == 0:
            half = battery_half(x)
            told = 5 if math.isnan(values[4]) else 4
            assert math.isclose(us[told], battery_u(x, half, told), rel_tol=1e-6, abs_tol=1e-7), (x, us)
            inside += np.sum(np.abs(battery_drawn(x, half, rng) - values[told]) <= us[told])
            total += 1000
    assert inside >= 0.95 * total, inside / total
    return f"battery: {n} cases agree, {inside / total:.3f} of {total} draws inside"


def run(answers):
    rng = np.random.default_rng(6)
    refused(answers)
    return "\n".join(sheet(answers, rng) for sheet in (cable, fuse, bank, battery))
