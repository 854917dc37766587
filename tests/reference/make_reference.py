"""Makes the tables of this folder from general-purpose libraries; nothing of the core is used.

python3 -m venv v && v/bin/pip install -r requirements.txt && v/bin/python make_reference.py
Run again it writes the same bytes.
"""

import math
from pathlib import Path

import ahrs
import GTC
import numpy as np
import scipy
from scipy import integrate, optimize, stats
from scipy.spatial.transform import Rotation

HERE = Path(__file__).parent
DEG = 180 / math.pi


def write(name, comments, names, rows):
    lines = [f"# {c}" for c in comments] + [",".join(names)]
    lines += [",".join(r if isinstance(r, str) else repr(float(r)) for r in row) for row in rows]
    (HERE / name).write_text("\n".join(lines) + "\n", encoding="utf-8")
    print(name, len(rows))


def up_vectors(rng):
    """Third row of the W3C rotation Z-X'-Y''; gimbal cases and wrapped edges first."""
    poses = [(a, b, g) for a in (0, 360) for b in (-180, -90, 0, 90, 180) for g in (-90, 0, 89.9)]
    poses += [(40, 30, 20), (0, 5, 5), (0, 10, 10), (0, 30, 20), (0, 0, 0), (0, 90, 0)]
    poses += list(zip(rng.uniform(0, 360, 204), rng.uniform(-180, 180, 204), rng.uniform(-90, 90, 204)))
    rows = []
    for pose in poses:
        pose = [float(np.float32(v)) for v in pose]
        up = Rotation.from_euler("ZXY", pose, degrees=True).as_matrix()[2]
        rows.append([*pose, *up])
    write(
        "up_vectors.csv",
        [
            "Earth-up in the device frame from W3C angles (Device Orientation and Motion, rotation Z-X'-Y'').",
            f"scipy {scipy.__version__}: Rotation.from_euler('ZXY', [alpha, beta, gamma], degrees=True), bottom row.",
        ],
        ["alpha_deg", "beta_deg", "gamma_deg", "ux", "uy", "uz"],
        rows,
    )


def tilt_notes(rng):
    """Roll, pitch and inclination as two component makers' notes give them, and as ahrs does."""
    a = np.vstack([[1, 2, 9.5], rng.normal(0, 6, (219, 3))])
    a = a[np.linalg.norm(a, axis=1) > 1].astype(np.float32).astype(float)
    rows = []
    for x, y, z in a:
        roll = math.atan2(y, z) * DEG
        pitch = math.atan2(-x, math.hypot(y, z)) * DEG
        inclination = math.atan2(math.hypot(x, y), z) * DEG
        t = ahrs.filters.Tilt()
        # ahrs wants the reading that gravity gives; its angles are roll, pitch, yaw in radians.
        r, p, _ = t.estimate(np.array([x, y, z]), representation="angles")
        rows.append([x, y, z, roll, pitch, inclination, r * DEG, p * DEG])
    write(
        "tilt.csv",
        [
            "Roll and pitch as in application note AN3461, inclination as in AN-1057; degrees; a in m/s2.",
            f"Last two columns: ahrs {ahrs.__version__ if hasattr(ahrs, '__version__') else '0.4.0'}, Tilt().estimate(a, representation='angles').",
        ],
        ["ax", "ay", "az", "roll", "pitch", "inclination", "ahrs_roll", "ahrs_pitch"],
        rows,
    )


def angles(rng):
    """Angle of two directions by Kahan's 2 atan2(|p-q|, |p+q|): well conditioned, and not the
    formula that is tested. Small angles and near plumb on purpose."""
    rows = []
    for i in range(600):
        p = rng.normal(size=3)
        p /= np.linalg.norm(p)
        q = rng.normal(size=3)
        if i % 3 == 1:
            q = p + 10 ** rng.uniform(-4, -1) * q
        if i % 3 == 2:
            q = -p + 10 ** rng.uniform(-4, -1) * q
        q /= np.linalg.norm(q)
        p, q = (v.astype(np.float32).astype(float) for v in (p, q))
        pu, qu = p / np.linalg.norm(p), q / np.linalg.norm(q)
        angle = 2 * math.atan2(np.linalg.norm(pu - qu), np.linalg.norm(pu + qu)) * DEG
        rows.append([*p, *q, angle, 90 - angle])
    write(
        "angles.csv",
        [f"Angle between p and q and elevation of p against up q, degrees, by Kahan's formula; numpy {np.__version__}."],
        ["px", "py", "pz", "qx", "qy", "qz", "angle", "elevation"],
        rows,
    )


def convolved_cdf(x, sigma, a):
    """Normal and rectangle together, by numerical integration of the definition."""
    if a == 0:
        return stats.norm.cdf(x / sigma)
    if sigma == 0:
        return min(1, max(0, 0.5 + x / (2 * a)))
    # Cut where the normal steps, so that the integrator sees it.
    points = sorted({max(-a, min(a, x + s * sigma)) for s in (-8, -3, 0, 3, 8)})
    edges = [-a, *points, a]
    total = sum(
        integrate.quad(lambda t: stats.norm.cdf((x - t) / sigma), lo, hi, epsabs=1e-12)[0]
        for lo, hi in zip(edges, edges[1:])
        if hi > lo
    )
    return total / (2 * a)


def coverage_factor():
    rows = []
    for f in np.linspace(0, 1, 101):
        a = f * math.sqrt(3)  # combined standard uncertainty 1
        sigma = math.sqrt(max(0, 1 - f * f))
        if f == 1:
            k = 0.95 * math.sqrt(3)
        else:
            k = optimize.brentq(lambda x: convolved_cdf(x, sigma, a) - 0.975, 1.2, 2.2, xtol=1e-10)
        rows.append([a, 1.0, k])
    write(
        "coverage_factor.csv",
        [f"Two-sided 95 % factor of a normal convolved with one rectangle (JCGM 101 5.3.4), scipy {scipy.__version__}, numerical."],
        ["rectangle", "combined", "k"],
        rows,
    )


def probability(rng):
    rows = [
        # JCGM 106 examples, from memory, arithmetic checked with scipy.
        [-5.47, 0.05, 0.0, -1000.0, -5.40],
        [509.7, 8.6, 0.0, 490.0, 10000.0],
        [13.6, 1.8, 0.0, 12.5, 16.3],
    ]
    for _ in range(297):
        combined = rng.uniform(0.05, 1.5)
        rect = combined * math.sqrt(3) * rng.choice([0, 0.03, rng.uniform(0, 0.999)])
        low = rng.uniform(-20, 20)
        high = low + rng.uniform(0.2, 30)
        value = rng.choice([low, high]) + rng.normal() * combined * 2
        rows.append([value, combined, rect, low, high])
    rows = [[float(np.float32(v)) for v in r] for r in rows]
    for r in rows:
        value, combined, rect, low, high = r
        sigma = math.sqrt(max(0, combined**2 - rect**2 / 3))
        r.append(convolved_cdf(high - value, sigma, rect) - convolved_cdf(low - value, sigma, rect))
    write(
        "probability.csv",
        [
            f"Conformance probability (JCGM 106 clause 7) for a normal convolved with a rectangle, scipy {scipy.__version__}, numerical.",
            "First three rows: examples of JCGM 106 from memory.",
        ],
        ["value", "combined", "rectangle", "low", "high", "p"],
        rows,
    )


def budget(rng):
    """Standard uncertainty of elevation and roll by GTC: every influence an uncertain number in
    the measurement model, sensitivities by automatic differentiation."""
    rows = []
    names = ["noise", "step", "zero", "scale", "hold", "align"]
    for i in range(600):
        up = rng.normal(size=3)
        up /= np.linalg.norm(up)
        up = up.astype(np.float32).astype(float)
        up /= np.linalg.norm(up)
        axis = np.zeros(3)
        axis[rng.integers(3)] = rng.choice([-1, 1])
        if np.linalg.norm(np.cross(axis, up)) < 0.25 or math.hypot(up[1], up[2]) < 0.25:
            continue  # near plumb the linear budget is not what is claimed
        noise = rng.uniform(0, 0.01, 3)
        half = rng.uniform(0, 0.006, 3)
        zero = math.hypot(0.008, 0.002)
        hold, align = rng.uniform(0, 0.02, 2)
        normal = np.zeros(3)
        normal[rng.integers(3)] = rng.choice([-1, 1])
        # One influence at a time, and all together.
        for roll in (0, 1):
            parts = []
            for only in [*names, "all"]:
                on = lambda n: only in (n, "all")
                u = []
                for k in range(3):
                    c = GTC.ureal(up[k], 0 if not on("noise") else noise[k])
                    c = c + GTC.ureal(0, 0 if not on("step") else half[k] / math.sqrt(3))
                    c = c + GTC.ureal(0, 0 if not on("zero") else zero)
                    c = c * GTC.ureal(1, 0 if not on("scale") else 0.005)
                    c = c + GTC.ureal(0, 0 if not on("hold") else hold)
                    u.append(c)
                turn = GTC.ureal(0, 0 if not on("align") else align)
                n = normal
                u = [
                    u[0] + turn * (n[1] * u[2] - n[2] * u[1]),
                    u[1] + turn * (n[2] * u[0] - n[0] * u[2]),
                    u[2] + turn * (n[0] * u[1] - n[1] * u[0]),
                ]
                if roll:
                    value = GTC.atan2(u[1], u[2])
                else:
                    a = axis
                    along = a[0] * u[0] + a[1] * u[1] + a[2] * u[2]
                    x = [a[1] * u[2] - a[2] * u[1], a[2] * u[0] - a[0] * u[2], a[0] * u[1] - a[1] * u[0]]
                    value = GTC.atan2(along, GTC.sqrt(x[0] * x[0] + x[1] * x[1] + x[2] * x[2]))
                parts.append(GTC.uncertainty(value) * DEG)
            rows.append([float(roll), *up, *axis, *noise, *half, hold * DEG, align * DEG, *normal, *parts])
    write(
        "budget.csv",
        [
            f"Standard uncertainties of elevation (roll = 0) and of roll about x (roll = 1), degrees, by GTC {GTC.__version__ if hasattr(GTC, '__version__') else '1.5.1'}:",
            "each influence an uncertain number in the model, sensitivities by automatic differentiation (GUM 5.1.2).",
            "zero: hypot(8 mg, 2 mg) an axis; scale 0.5 % an axis; noise and step (half-width) an axis in units of g.",
        ],
        ["roll", "ux", "uy", "uz", "ax", "ay", "az", "nx", "ny", "nz", "hx", "hy", "hz", "hold_deg", "align_deg",
         "mx", "my", "mz", *names, "all"],
        rows,
    )


def factors():
    rows = [
        ["student_t12_975", stats.t.ppf(0.975, 12)],
        ["normal_975", stats.norm.ppf(0.975)],
        ["normal_95", stats.norm.ppf(0.95)],
        ["rayleigh_95", stats.rayleigh.ppf(0.95)],
        ["gum_g41_combined", math.sqrt(0.25**2 + 0.57**2 + 0.82**2)],
        ["offset_8mg_deg", math.atan(0.008) * DEG],
        ["step_level_deg", math.atan(0.1 / 9.80665) * DEG],
        ["rock_half_mm_140_deg", math.atan(0.5 / 140) * DEG],
    ]
    write(
        "factors.csv",
        [f"Single values: scipy {scipy.__version__}; GUM G.4.1's three components combined (0.25, 0.57, 0.82 %)."],
        ["name", "value"],
        rows,
    )


if __name__ == "__main__":
    up_vectors(np.random.default_rng(1))
    tilt_notes(np.random.default_rng(2))
    angles(np.random.default_rng(3))
    coverage_factor()
    probability(np.random.default_rng(4))
    budget(np.random.default_rng(5))
    factors()
