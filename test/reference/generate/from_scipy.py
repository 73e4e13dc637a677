"""Makes ../data/scipy.json. Run once by hand with scipy 1.10.1 (Debian 12, python3-scipy): python3 from_scipy.py"""
import json, random
from pathlib import Path
from scipy import __version__
from scipy.interpolate import PchipInterpolator
from scipy.stats import t

random.seed(20261)

def curve(xs, ys):
    spline = PchipInterpolator(xs, ys)
    at = [xs[0] + (xs[-1] - xs[0]) * i / 24 for i in range(25)]
    return {"x": xs, "y": ys, "at": at, "value": [float(spline(x)) for x in at], "slope": [float(spline(x, 1)) for x in at]}

def random_curve(count, falling):
    xs, x = [], 0.0
    for _ in range(count):
        xs.append(round(x, 3)); x += random.uniform(0.2, 4)
    ys = [round(random.uniform(1, 7), 4) for _ in range(count)]
    return curve(xs, sorted(ys, reverse=True) if falling else ys)

curves = [random_curve(count, falling) for count in (3, 4, 7, 12) for falling in (True, False)]
curves.append(curve([0, 1, 2, 3.5, 4], [5, 5, 3, 3, 1]))
curves.append(curve([0, 1, 1.2], [0, 10, 10.1]))
degrees = [*range(1, 41), 60, 120, 1000]
out = {
    "origin": f"scipy {__version__}: PchipInterpolator, stats.t.ppf(0.975); made by generate/from_scipy.py, fixed seed",
    "tolerance": {
        "curve": {"value": 1e-10, "reason": "same definition, so only the order of the arithmetic differs"},
        "student": {"value": 6e-5, "reason": "the table has four decimals (5e-5); the expansion past 30 degrees is good to 1e-5"},
    },
    "curves": curves,
    "student": [[n, float(t.ppf(0.975, n))] for n in degrees],
}
Path(__file__).with_name("..").joinpath("data/scipy.json").resolve().write_text(json.dumps(out, indent=1) + "\n")
