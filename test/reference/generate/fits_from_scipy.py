"""Contrast-time laws fitted by scipy, for comparison with our own least squares. Writes ../data/scipy-fits.json."""
import json
import random
from pathlib import Path

import numpy as np
from scipy import __version__
from scipy.optimize import curve_fit

# scipy's three stopping tolerances, all of them tight.
TIGHT = {name + "tol": 1e-14 for name in ("x", "f", "g")}

random.seed(20264)


def law(t, most, rate, start):
    return most * (1 - np.exp(-rate * (t - start)))


def slopes(t, most, rate, start):
    left = np.exp(-rate * (t - start))
    return np.stack([1 - left, most * (t - start) * left, -most * rate * left], axis=1)


families = []
while len(families) < 12:
    most, rate, start = random.uniform(0.7, 1.6), random.uniform(0.0015, 0.005), random.uniform(15, 60)
    times = sorted(random.sample(range(180, 1500, 15), random.choice([4, 5, 7])))
    contrasts = [round(law(t, most, rate, start) + random.gauss(0, 0.01), 4) for t in times]
    errors = [round(random.uniform(0.002, 0.01), 4) for _ in times]
    sigma = [(0.02**2 + e**2) ** 0.5 for e in errors]
    value, _ = curve_fit(law, np.array(times, float), contrasts, p0=[most, rate, start], sigma=sigma, absolute_sigma=True, jac=slopes,
                         **TIGHT, maxfev=20000)
    # A start before 0, or no slowing down, is another case with us.
    if value[2] <= 1 or value[0] > 3:
        continue
    families.append({"times": times, "contrasts": contrasts, "errors": errors, "most": float(value[0]),
                     "rate": float(value[1]), "start": float(value[2])})

out = {
    "origin": f"scipy {__version__}: optimize.curve_fit with sigma; made by generate/fits_from_scipy.py, fixed seed",
    "tolerance": {"fit": {"value": 1e-6, "reason": "both searches end within a millionth of the bottom; as parts of the values"}},
    "scatter": 0.02,
    "families": families,
}
Path(__file__).with_name("..").joinpath("data/scipy-fits.json").resolve().write_text(json.dumps(out, indent=1) + "\n")
