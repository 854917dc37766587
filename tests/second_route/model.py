"""The measurement equations, as the instrument's description says them: what a phone feels, how it
lies, what is asked for. Every function takes influences of either engine (inputs.py) and returns
values of the same kind. No sensitivity stands here: the engines find them.

Device frame: x right, y to the top edge, z out of the screen. Body frame: x along the part, z out
of the surface that the phone lies on. Up is opposite to gravity."""

import math

import numpy as np

RAD = math.pi / 180
# Share of gravity along one axis that another one feels, standard uncertainty: the prior's.
CROSS_AXIS = 0.002

# Body x and z in the device frame, from the words that describe the holds.
HOLDS = {
    "back": ((0, 1, 0), (0, 0, 1)),  # on its back, top edge ahead
    "long_edge": ((0, 1, 0), (-1, 0, 0)),  # on its right edge, top edge ahead
    "short_edge": ((1, 0, 0), (0, 1, 0)),  # on its bottom edge, right side ahead
}


def plane_turn(m, v, axis, angle):
    """`v` turned about a coordinate axis, right-handed."""
    if isinstance(angle, float) and angle == 0:
        return v
    i, j = (axis + 1) % 3, (axis + 2) % 3
    s, c = m.sin(angle), m.cos(angle)
    out = list(v)
    out[i] = c * v[i] - s * v[j]
    out[j] = s * v[i] + c * v[j]
    return out


def wobble(m, v, source, key, u_deg):
    """`v` after a small turn of unknown direction, `u_deg` about each axis."""
    for axis in range(3):
        v = plane_turn(m, v, axis, m.normal(source, (*key, axis), u_deg * RAD))
    return v


def told(m, case, p, name, i):
    """What the device felt along axis `i`, without noise and rounding. Both are told for a direction,
    that is for a felt length of 1."""
    half, felt = case[p + "half"], case[p + "felt"]
    length = math.hypot(*felt)
    x = felt[i] - length * m.normal("noise", (name, "noise", i), case[p + "noise"][i])
    for k in range(6):
        if half[3 * k + i]:
            x = x - length * half[3 * k + i] * m.rectangle("step", (name, "step", k))
    return x


def cross_axis(m, i, v, without=None):
    """What axis `i` feels of `v` by cross-axis error: the same matrix in every reading of a phone."""
    entries = [j for j in range(3) if v[j] and not i == j == without]
    return sum(v[j] * m.normal("zero", ("cross", i, j), CROSS_AXIS) for j in entries)


def freed(m, case, p, name, found_at, without=None):
    """Up of the device from what it felt: without noise, rounding, zero, scale and settling, what
    the side adds, cross-axis error but for what was found with the zero at `found_at`."""
    up = []
    at = [(f - z) / s for f, z, s in zip(case[p + "felt"], case[p + "zero"], case[p + "scale"])]
    apart = [a - f for a, f in zip(at, found_at)]
    for i in range(3):
        x = told(m, case, p, name, i) - cross_axis(m, i, apart, without)
        if case[p + "u_side"][i]:
            x = x - case[p + "u_side"][i] * m.normal("zero", ("side", case[p + "side"][0], i), 1.0)
        by = case[p + "zero_from"][i]
        x = x - case[p + "zero"][i] - m.normal("zero", ("zero", by, i), case[p + "u_zero"][i])
        by = case[p + "scale_from"][0]
        up.append(x / (case[p + "scale"][i] + m.normal("scale", ("scale", by, i), case[p + "u_scale"][i])))
    return wobble(m, up, "settle", (name, "settle"), case[p + "settle_deg"][0])


def placed(m, case, p, name, v):
    """A device vector as if the phone lay on its part as drawn: freed of hold and alignment."""
    normal = HOLDS[case[p + "hold"]][1]
    axis = int(np.argmax(np.abs(normal)))
    v = plane_turn(m, v, axis, m.normal("align", (name, "align"), case[p + "align_deg"][0] * RAD))
    return wobble(m, v, "hold", (name, "hold"), case[p + "hold_deg"][0])


def to_body(hold, v):
    """A device vector in the body frame."""
    x, z = HOLDS[hold]
    axes = (x, np.cross(z, x), z)
    return [sum(int(a) * c for a, c in zip(axis, v) if a) for axis in axes]


def reading(m, case, p="", name="part"):
    """Up in the body frame, from one placement."""
    return to_body(case[p + "hold"], placed(m, case, p, name, freed(m, case, p, name, case[p + "found_at"])))


def turned_reading(m, case):
    """Up in the body frame, from two placements of a phone turned by half about its normal: the
    mean of both, the second one turned back. What lies under the phone stays where it is, so its
    tilt is that of both."""
    normal = HOLDS[case["hold"]][1]
    axis = int(np.argmax(np.abs(normal)))
    nothing = [0.0, 0.0, 0.0]
    one = freed(m, case, "", "one", nothing, axis)
    two = plane_turn(m, freed(m, case, "second_", "two", nothing, axis), axis, math.pi)
    mean = [0.5 * (a + b) for a, b in zip(one, two)]
    # Along the normal the turn leaves its own part of the matrix, which is the scale's, and takes
    # what the slope makes. Core keeps the slope's, to the safe side, and leaves the scale to the scale.
    at = [(f - z) / s for f, z, s in zip(case["felt"], case["zero"], case["scale"])]
    slope = math.hypot(*(a for i, a in enumerate(at) if i != axis))
    mean[axis] = mean[axis] + slope * m.normal("zero", ("cross along the normal",), CROSS_AXIS)
    return to_body(case["hold"], placed(m, case, "", "part", mean))


def zero_on_table(m, case):
    """Zero of each axis across the normal, from directions alone: opposite placements have the same
    part along the normal, which makes them as long as they were; then half their sum is the zero,
    and half their difference the table's slope. Every placement has its own hold and alignment."""
    count = int(case["count"][0])
    hold = case["p0_hold"]
    normal = HOLDS[hold][1]
    axis = int(np.argmax(np.abs(normal)))
    sign = int(sum(normal))
    felt = []
    for k in range(count):
        p, name = f"p{k}_", f"p{k}"
        lies = plane_turn(m, list(case["device"]), axis, sign * k * 2 * math.pi / count)
        # The contact is the first placement's: one table.
        here = {**case, p + "hold_deg": case["p0_hold_deg"], p + "align_deg": case["p0_align_deg"]}
        up = placed(m, here, p, name, lies)
        up = wobble(m, up, "settle", (name, "settle"), case[p + "settle_deg"][0])
        x = [told(m, case, p, name, i) + up[i] - lies[i] for i in range(3)]
        felt.append([c / x[axis] for c in x])
    zeros = [0.0] * 3
    for one, two in zip(felt[: count // 2], felt[count // 2 :]):
        half = [0.5 * (a - b) for a, b in zip(one, two)]
        along = 1 / m.sqrt(1 + sum(h * h for i, h in enumerate(half) if i != axis))
        along = along if case["device"][axis] > 0 else -along
        zeros = [z + along * (a + b) / count for z, a, b in zip(zeros, one, two)]
    return [z if i != axis else None for i, z in enumerate(zeros)]


def attitude(m, up, heading):
    """Turn of a body on the earth from its up and its heading: yaw, pitch, roll."""
    pitch = m.atan2(-up[0], m.sqrt(up[1] * up[1] + up[2] * up[2]))
    roll = m.atan2(up[1], up[2])
    return heading, pitch, roll


def to_earth(m, attitude, v):
    """A body vector on the earth: Z(yaw)·Y(pitch)·X(roll)."""
    for axis, angle in zip((0, 1, 2), reversed(attitude)):
        v = plane_turn(m, v, axis, angle)
    return v


def from_earth(m, attitude, v):
    """An earth vector in the body frame."""
    for axis, angle in zip((2, 1, 0), attitude):
        v = plane_turn(m, v, axis, -angle)
    return v


class Renamed:
    """Influences of the rail's reading: all but the phone's own count as the level's."""

    def __init__(self, m):
        self.m, self.sin, self.cos, self.sqrt, self.atan2 = m, m.sin, m.cos, m.sqrt, m.atan2

    def source(self, source):
        return source if source in ("zero", "scale") else "datum"

    def normal(self, source, key, u):
        return self.m.normal(self.source(source), key, u)

    def rectangle(self, source, key):
        return self.m.rectangle(self.source(source), key)


def in_vehicle(m, case):
    """Up in the part's body frame once the vehicle stands level. Rail and part stand on the yard
    as their readings say, their headings as told; the vehicle's level direction is that of the
    rail's frame, carried over the earth into the part's."""
    rail = reading(Renamed(m), case, "rail_", "rail")
    part = reading(m, case)
    turn = case["turn_deg"][0] * RAD + m.normal("heading", ("heading",), case["heading_deg"][0] * RAD)
    x, y = (math.sin(lean * RAD) for lean in case["lean_deg"])
    level = wobble(m, [x, y, math.sqrt(1 - x * x - y * y)], "rake", ("rake",), case["rake_deg"][0])
    on_yard = to_earth(m, attitude(m, rail, 0.0), level)
    return from_earth(m, attitude(m, part, turn), on_yard)


AXES = {"heater_port": (0, 0, -1)}


def angle(m, check, up):
    """The angle that a check asks for, degrees."""
    if check == "pump_roll":
        return m.atan2(up[1], up[2]) * (1 / RAD)
    along = sum(a * c for a, c in zip(AXES.get(check, (1, 0, 0)), up) if a)
    i = 2 if check == "heater_port" else 0
    others = [up[j] for j in range(3) if j != i]
    elevation = m.atan2(along, m.sqrt(others[0] * others[0] + others[1] * others[1])) * (1 / RAD)
    return 90.0 - elevation if check == "filter_upright" else elevation
