"""Evaluates the cases of `route_cases` from the measurement equations, and compares core's results
with them. Reads standard input; fails on the first kind of result that is not as it should be.

GTC evaluates every case; Monte Carlo a share of them, to see what the linear budget leaves out."""

import math
import sys
import time

import GTC
import numpy as np

import fits
import model
from compare import Report
from decision import factor, verdict
from inputs import Drawn, Uncertain

SOURCES = ["noise", "step", "settle", "zero", "scale", "hold", "align", "datum", "heading", "rake"]
MODELS = {"single": model.reading, "turned": model.turned_reading, "vehicle": model.in_vehicle}
# Every so many cases by Monte Carlo, with so many draws.
MONTE_CARLO_EVERY, DRAWS = 40, 20_000
PLUMB_FACTOR = 2.448  # Rayleigh, 95 %: sqrt(-2 ln 0.05)
ROLL_LOST_DEG = 6.0  # combined; no roll beyond it
BAD_HEADING_DEG = 10
NO_DIRECTION = 0.1  # degrees from plumb; core goes over to any direction at 0.06
NEAR_PLUMB = 2.5  # combined uncertainties from plumb, the larger direction's
HIDES_DEG = 59.0  # a surface steeper than this hides a zero from a turn
STEEP_DEG = 30.0  # off plumb; nearer, the error across the slope counts


def parse(line):
    kind, *cells = line.strip().split(",")
    case = {"kind": kind}
    for cell in cells:
        name, _, text = cell.partition("=")
        try:
            case[name] = [float(t) for t in text.split(" ")]
        except ValueError:
            case[name] = text
    return case


def across(a, b):
    """Difference of two angles, round the circle."""
    return (a - b + 180) % 360 - 180


def known(case, end):
    """What was drawn of zeros, or of scales, of all readings of a case."""
    named = [v for n, v in case.items() if n.endswith(end) and not n.endswith("u_" + end) and "core" not in n]
    return [v for v in named if isinstance(v, list)]


def left_out(case):
    """Sizes that core's linear correction leaves products of: a zero, an unlike scale."""
    zero = max(math.hypot(*v) for v in known(case, "zero"))
    return zero, max(abs(s - 1) for v in known(case, "scale") for s in v)


def steepness(case):
    """Slope of the surface that a turned phone lies on, degrees."""
    at = [(f - z) / s for f, z, s in zip(case["felt"], case["zero"], case["scale"])]
    return math.degrees(math.acos(min(abs(np.dot(at, model.HOLDS[case["hold"]][1])), 1)))


def plumb_distance(check, value):
    if check == "pump_roll":
        return math.inf
    return min(value, 180 - value) if check == "filter_upright" else 90 - abs(value)


def sideways(check, up):
    """The angle across the slope of the check's axis, degrees, zero where it is: an uncertain
    number from the same up vector."""
    at = np.array([GTC.value(c) for c in up])
    side = np.cross(at, np.array(model.AXES.get(check, (1, 0, 0)), float))
    side *= 180 / math.pi / np.linalg.norm(side) / np.linalg.norm(at)
    return sum(float(s) * c for s, c in zip(side, up))


def checked(case, report):
    """One check of one reading, by GTC."""
    kind, check = case["kind"], case["check"]
    m = Uncertain()
    up = MODELS[kind](m, case)
    y = model.angle(m, check, up)
    value, parts = GTC.value(y), m.parts(y)
    rectangle = m.largest_rectangle(y)
    combined = math.hypot(*parts.values())
    lost = check == "pump_roll" and combined > ROLL_LOST_DEG
    if abs(combined / ROLL_LOST_DEG - 1) < 0.1 and check == "pump_roll":
        return report.skip(kind, "roll at the edge of being lost")
    if lost or "core_value" not in case:
        return report.same(kind, "roll is lost", lost, "core_value" not in case, case)
    # Core's sensitivities are those of a felt length of 1: what it leaves out is zero and scale, as
    # a share. Nothing where nothing is corrected.
    zero, scale = left_out(case)
    if zero:
        kind += ", corrected"
    steep = 1.0
    if check == "pump_roll" or "turn_deg" in case:
        steep = 1 / max(math.hypot(GTC.value(up[1]), GTC.value(up[2])), 0.02)
    share = 1e-3 + zero + 2 * scale
    # Two directions hide how much of a zero lies along a steep slope: its square is left.
    hidden = 60 * zero * zero if kind.startswith("turned") and steepness(case) > HIDES_DEG else 0.0
    value_deg = (1e-4 + hidden) * steep
    report.close(kind, "value, °", across(case["core_value"][0], value), value_deg, case)
    distance = plumb_distance(check, value)
    if distance < NO_DIRECTION:
        return report.skip(kind, "on plumb, where the direction of the slope is lost")
    # The rule near plumb is the instrument's, not the GUM's: the larger lateral direction, source
    # by source; farther off what the error across bends, with its largest source. The other
    # direction comes from the same uncertain vector.
    plumb = False
    if abs(distance - STEEP_DEG) < 0.01:
        return report.skip(kind, "at the edge of being steep")
    if distance < STEEP_DEG:
        lateral = sideways(check, up)
        other = m.parts(lateral)
        lateral_deg = math.hypot(*other.values())
        ends = NEAR_PLUMB * max(combined, lateral_deg)
        if abs(distance / ends - 1) < 0.05:
            return report.skip(kind, "at the edge of near plumb")
        plumb = distance < ends
        if plumb:
            kind += ", near plumb"
            parts = {s: max(parts.get(s, 0), other.get(s, 0)) for s in {*parts, *other}}
            rectangle = max(rectangle, m.largest_rectangle(lateral))
        else:
            kind += ", steep"
            bend = math.sqrt(3) / 2 * math.radians(lateral_deg) * lateral_deg / math.tan(math.radians(distance))
            second, largest = sorted(other, key=other.get)[-2:]
            if other[second] > (1 - 2 * share) * other[largest]:
                return report.skip(kind, "two sources of what bends, as large")
            parts[largest] = math.hypot(parts.get(largest, 0), bend)
        combined = math.hypot(*parts.values())
    for i, source in enumerate(SOURCES):
        got, want = case["core_budget"][i], parts.get(source, 0.0)
        allowed = 1e-3 + (share - 1e-3) * want / combined
        report.close(kind, f"{source}, share of combined", (got - want) / combined, allowed, case)
    report.close(kind, "combined, share", case["core_combined"][0] / combined - 1, share, case)
    core_rectangle = case["core_rectangle"][0]
    report.close(kind, "rectangle, share of combined", (core_rectangle - rectangle) / combined, share, case)
    # The factor for core's own shares, so that it is the fit alone that is compared.
    exact = factor(core_rectangle, case["core_combined"][0])
    exact = max(exact, PLUMB_FACTOR) if plumb else exact
    k = case["core_u"][0] / case["core_combined"][0]
    report.between(kind, "k above the exact one", k - exact, -1e-4, 0.0085, case)
    u = exact * combined
    want, near = verdict(check, value, u, case["low"][0], case["high"][0])
    if near < (0.009 + share) * u + value_deg:
        report.skip(kind, "limit at an edge of the interval: no verdict compared")
    else:
        report.same(kind, "verdict " + want, want, case["core_verdict"], case)
    return y, up


def has_heading(case):
    """Whether x of rail and part is at most 70° from level; None at the edge of it."""
    m = Uncertain()
    ups = [model.reading(m, case), model.reading(m, case, "rail_", "rail")]
    steepest = max(abs(GTC.value(model.angle(m, "pipe_fall", up))) for up in ups)
    return None if abs(steepest - 70) < 0.2 else steepest < 70


def drawn(case, y, up, rng, report):
    """The same by Monte Carlo. Near plumb, where no linear budget holds, it is the share inside the
    interval that counts."""
    kind, check, value = case["kind"] + ", Monte Carlo", case["check"], GTC.value(y)
    if check == "pump_roll" and GTC.uncertainty(y) > 3:
        return report.skip(kind, "roll beyond what is linear")
    n = Drawn(rng, DRAWS)
    values = across(model.angle(n, check, MODELS[case["kind"]](n, case)), value)
    inside = float(np.mean(np.abs(values) <= case["core_u"][0]))
    bends = max(GTC.uncertainty(y), GTC.uncertainty(sideways(check, up)))
    # A heading that is told badly bends the angle too; core is linear in it.
    least = 0.945 if case.get("heading_deg", [0])[0] < BAD_HEADING_DEG else 0.92
    if plumb_distance(check, value) < 6 * bends:
        return report.between(kind + ", near plumb", "draws inside U", inside, least, 1.0, case)
    report.close(kind, "combined, share", case["core_combined"][0] / np.std(values) - 1, 0.06, case)
    report.between(kind, "draws inside U", inside, least, 0.975, case)


def table(case, report):
    """Zero of a phone on a table."""
    m = Uncertain()
    zeros = model.zero_on_table(m, case)
    wide = core = 0.0
    zero = left_out(case)[0]
    axis = zeros.index(None)
    # Cross-axis error that the zero contains is that of what all placements have in common.
    common = [0.0] * 3
    common[axis] = case["device"][axis]
    apart = max(abs(a - b) for a, b in zip(case["core_found_at"], common))
    report.close("table", "up at which it was found", apart, 0.002 + 1.5 * zero, case)
    for i, z in enumerate(zeros):
        if z is None:
            report.close("table", "zero along the normal", case["core_zero"][i], 0, case)
            report.close("table", "u along the normal", case["core_u_zero"][i], 0, case)
            continue
        report.close("table", "zero, share of gravity", case["core_zero"][i] - GTC.value(z), 2e-6, case)
        wide, core = wide + GTC.variance(z), core + case["core_u_zero"][i] ** 2
    # Alignment on a slope counts in both directions: core may be above by that, never below.
    most = math.sqrt(2) if case["p0_align_deg"][0] else 1.0
    report.between("table", "u, share", math.sqrt(core / wide), 0.999 - 1.1 * zero, most * (1.001 + 1.1 * zero), case)


def summed(case, report):
    """A weighted sum of elevations, by GTC."""
    m = Uncertain()
    total = 0.0
    for k in range(int(case["count"][0])):
        up = model.reading(m, case, f"r{k}_", f"r{k}")
        total = total + case[f"r{k}_weight"][0] * model.angle(m, "pipe_fall", up)
    deviation = case["core_combined"][0] / GTC.uncertainty(total) - 1
    zero, scale = left_out(case)
    report.close("sum", "combined, share", deviation, 1e-3 + zero + 2 * scale, case)


def main():
    report, rng, began = Report(), np.random.default_rng(7), time.process_time()
    for i, line in enumerate(sys.stdin):
        case = parse(line)
        kind = case["kind"]
        report.seen(kind)
        if kind == "fit":
            fits.fit(case, report)
        elif kind == "sum":
            summed(case, report)
        elif kind == "vehicle" and (heading := has_heading(case)) is not True:
            if heading is None:
                report.skip(kind, "x at the edge of having a heading")
            else:
                report.same(kind, "no heading", "no_heading", case.get("core_refusal"), case)
        elif "core_refusal" in case:
            report.refused(case)
        elif kind == "table":
            table(case, report)
        else:
            evaluated = checked(case, report)
            if evaluated and rng.uniform() < 1 / MONTE_CARLO_EVERY:
                drawn(case, *evaluated, rng, report)
    report.end(time.process_time() - began)


if __name__ == "__main__":
    main()
