"""Upper 95 % values of lognormal distributions by their mean and 5 % value, with SciPy's distribution and root finder.

    python3 lognormal.py > lognormal.json
"""
import json
from math import exp
from scipy.optimize import brentq
from scipy.stats import lognorm


def upper(mean, low):
    """Scale so that the mean is right, then the shape so that the 5 % value is."""
    scale = lambda s: mean / exp(s * s / 2)
    s = brentq(lambda s: lognorm.ppf(0.05, s, scale=scale(s)) - low, 1e-6, 1.0, xtol=1e-14)
    assert abs(lognorm.mean(s, scale=scale(s)) - mean) < 1e-6
    return {"mean": mean, "low": low, "high": lognorm.ppf(0.95, s, scale=scale(s))}


print(json.dumps([upper(m, l) for m, l in [(11000, 7400), (9000, 6000), (12000, 10100), (11500, 9600)]], indent=1))
