"""The first start a second way. The test for carbon monoxide: random spaces filled by scipy's
solve_ivp, with a leak that either power or both let in; a meter with a zero and a share of its own,
shared by all its readings, that rounds or cuts off. U must hold the true rise 95 times in 100; the
leak that core calls unseen must reach the meter's error by the same integration, the thresholds
stand where scipy's constants put them. What is measured: differences and Ohm's law, U by draws."""

import math

import numpy as np
from scipy import constants
from scipy.integrate import solve_ivp

NONE = math.nan
SQRT3 = math.sqrt(3)


def filled(leaks, switch_h, air, volume, times):
    """ppm at `times` in hours in a mixed space: leaks in L/h at full and, from the switch on, at low
    power; two pieces, since the leak jumps."""
    told, c, start = {}, 0.0, 0.0
    for leak, end in ((leaks[0], switch_h), (leaks[1], max(times[-1], switch_h + 1e-9))):
        wanted = [t for t in times if start < t <= end]
        rate = 1000 * leak / volume
        piece = solve_ivp(lambda _, y, r=rate: r - air * y, (start, end), [c], rtol=1e-8, atol=1e-8, t_eval=sorted({*wanted, end}))
        told |= dict(zip(wanted, piece.y[0], strict=False))
        c, start = piece.y[0, -1], end
    return [told[t] for t in times]


class Space:
    """A space with a leak, a meter, and the times at which it is read."""

    def __init__(self, rng):
        self.least = 10 ** rng.uniform(-0.5, 0.8)
        self.most = self.least * rng.uniform(1, 4)
        self.volume = 10 ** rng.uniform(0.3, 1.5)
        self.meter, self.share = rng.uniform(0, 6), rng.uniform(0, 0.15)
        self.step = rng.choice([0.1, 1, 1, 5])
        self.outdoor = rng.uniform(0, 12) if rng.random() < 0.3 else 0.0
        hours = 3 / self.least * rng.uniform(0.6, 1.6)
        self.switch = hours * rng.uniform(0.2, 0.8)
        early = np.sort(rng.uniform(0, self.switch, rng.integers(1, 4)))
        late = np.sort(rng.uniform(self.switch, hours, rng.integers(1, 4)))
        self.times = [(t, 0) for t in early] + [(t, 1) for t in late]
        self.leaks = rng.uniform(0, 1, 2) * rng.choice([0, 0, 0.2, 3], 2) * self.volume
        air = rng.uniform(self.least, self.most)
        self.true = filled(self.leaks, self.switch, air, self.volume, [t for t, _ in self.times])

    def shown(self, rng):
        """Readings of a meter with errors of its own: outdoors, then inside. The zero was taken
        outdoors, so all of its absolute error may come with the warm air."""
        zero, share = rng.uniform(-self.meter, self.meter), rng.uniform(-self.share, self.share)
        cut = rng.random() < 0.5

        def show(true, drift):
            value = true * (1 + share) + drift
            steps = math.floor(value / self.step) if cut else round(value / self.step)
            return steps * self.step

        if rng.random() < 0.5:
            # The same zero throughout: it cancels.
            return show(self.outdoor, zero), [show(self.outdoor + c, zero) for c in self.true]
        return show(self.outdoor, 0), [show(self.outdoor + c, zero) for c in self.true]

    def numbers(self, outdoor, inside):
        own = [0, self.meter, self.share, self.step, NONE, outdoor, self.volume, self.least, self.most, 0, 0, 0, 0]
        rows = [[i % 6, 60 * t, power, ppm, 0] for i, ((t, power), ppm) in enumerate(zip(self.times, inside, strict=True))]
        return own + [n for row in rows for n in row]


def tested(answers, rng, n=2400):
    spaces = [Space(rng) for _ in range(n)]
    shown = [s.shown(rng) for s in spaces]
    cases = [(s.numbers(*r), []) for s, r in zip(spaces, shown, strict=True)]
    covered = whole = beyond = 0
    for s, (outdoor, inside), (values, us) in zip(spaces, shown, answers("co_check", cases), strict=True):
        full = max(60 * t for t, power in s.times if power == 0)
        low = max(60 * t for t, power in s.times if power == 1)
        assert np.isclose(values[4], low - 180 / s.least)
        more = max(inside) - outdoor > max(s.step, 1)
        place = 1 if more else 0 if values[4] >= 0 else 2
        whole += values[4] >= 0
        assert [math.isnan(v) for v in values[:4]] == [k != place for k in range(4)]
        assert np.isclose(values[place], max(inside) - outdoor)
        assert np.allclose(values[11:], np.array(inside) - outdoor)
        assert np.allclose(values[5:8], [180 / s.least, full, low - full])
        covered += abs(max(s.true) - values[place]) <= us[place]
        beyond += values[place] > us[place]
        assert us[place] >= 2 * s.meter / SQRT3 - 1e-12, "the meter's own error, and no less"
        unseen(s, values[8], full)
        unseen(s, values[9], low - full)
    assert covered >= 0.95 * n, covered / n
    assert 0.1 * n < beyond < 0.9 * n and 0.1 * n < whole < 0.9 * n, "every kind of case"
    return f"co_check: {n} spaces agree, {covered / n:.3f} of their rises inside"


def unseen(space, leak, minutes):
    """That leak, let in at the most air change, reaches what the meter tells from its error."""
    hours = minutes / 60
    [reached] = filled([leak, leak], hours, space.most, space.volume, [hours])
    error = 2 * math.sqrt((space.meter**2 + 2 * (space.step / 2) ** 2 + (space.share * reached) ** 2) / 3)
    assert np.isclose(reached, error, rtol=1e-5), (reached, error)


def timed(answers, rng, n=300, draws=4000):
    """Time beyond 3/n: the least air change and the minute of the last reading by draws."""
    cases, held = [], 0
    for _ in range(n):
        least = 10 ** rng.uniform(-0.5, 0.8)
        minutes = 180 / least * rng.uniform(0.7, 1.5)
        share = rng.uniform(0.05, 0.3)
        x = [0, 3, 0.05, 1, NONE, 0, 9, least, 3 * least, 0, 0, 0, 0, 0, minutes / 2, 0, 0, 0, 0, minutes, 1, 0, 0]
        half = [NONE] * len(x)
        half[7] = share * least
        cases.append((x, half))
    for (x, half), (values, us) in zip(cases, answers("co_check", cases), strict=True):
        air = x[7] + rng.uniform(-half[7], half[7], draws)
        spare = x[19] + rng.uniform(-1, 1, draws) - 180 / air
        held += np.sum(np.abs(spare - values[4]) <= us[4])
    assert held >= 0.95 * n * draws, held / (n * draws)
    return f"co_check: {n} times, {held / (n * draws):.3f} of {n * draws} draws inside"


def urgent(answers):
    """Thresholds: moles of an ideal gas at 25 °C and 1 atm, by scipy's constants."""
    per_m3 = constants.atm / (constants.R * (25 + constants.zero_Celsius))

    def ppm(mg):
        return mg / 1000 / 28.0101 / per_m3 * 1e6

    levels = sorted([ppm(4), ppm(10), ppm(30), ppm(35), ppm(60), ppm(100), 35, 50, 200])
    shown = [v + d for v in levels for d in (-0.01, 0.01)]
    cases = [([0, 0, 0, 1, NONE, 0, NONE, NONE, NONE, 0, 0, 0, 0, 0, 5, 0, v, 0], []) for v in shown]
    told = [values[10] for values, _ in answers("co_check", cases)]
    assert told == [k // 2 + k % 2 for k in range(len(shown))], told
    return f"co_check: {len(shown)} readings beside 9 thresholds"


def measured(answers, rng, n=500, draws=400):
    cases = []
    for _ in range(n):
        battery = rng.uniform(11, 29, 2)
        drop, amps = rng.uniform(0.1, 1.5, 2), rng.uniform(3, 20)
        air = rng.uniform(-20, 30)
        x = [battery[0], battery[0] - drop[0], amps, battery[1], battery[1] - drop[1], 2, 1]
        cases.append((x + [air, air + rng.uniform(20, 90), NONE, rng.uniform(0.5, 5), rng.integers(1, 4), 3], []))
    held = total = 0
    for (x, _), (values, us) in zip(cases, answers("started", cases), strict=True):
        want = [x[1], x[4], x[0] - x[1], x[3] - x[4], (x[0] - x[1]) / x[2] * 1000, x[8], NONE, x[8] - x[7], *x[10:], x[0], x[2], x[3], x[5], x[6], x[7]]
        assert np.allclose(values, want, equal_nan=True)
        volts = [v + rng.uniform(-1, 1, draws) * (0.02 + 0.005 * v) for v in (x[0], x[1])]
        amps = x[2] + rng.uniform(-1, 1, draws) * (0.1 + 0.03 * x[2])
        ohms = (volts[0] - volts[1]) / amps * 1000
        rise = x[8] - x[7] + rng.uniform(-2, 2, draws) - rng.uniform(-2, 2, draws)
        held += np.sum(np.abs(ohms - values[4]) <= us[4]) + np.sum(np.abs(rise - values[7]) <= us[7])
        held += np.sum(np.abs(volts[0] - volts[1] - values[2]) <= us[2])
        total += 3 * draws
    assert held >= 0.95 * total, held / total
    return f"started: {n} readings agree, {held / total:.3f} of {total} draws inside"


def run(answers):
    rng = np.random.default_rng(8)
    return "\n".join([tested(answers, rng), timed(answers, rng), urgent(answers), measured(answers, rng)])
