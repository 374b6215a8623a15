"""Roots by scipy.optimize.brentq, a root finder of others, for the utilisations that brent.test.ts writes again."""
import json
from math import exp, sqrt
from pathlib import Path

import scipy
from scipy.optimize import brentq

functions = {
    "residual depth": (lambda t: 0.4 / (1 - t / 240) ** 2, 0, 239.9),
    "line": (lambda q: 0.13 + 0.51 * q, 0, 10),
    "hyperbola": (lambda l: 61 / (l + 30), 0, 400),
    "root": (lambda x: sqrt(x / 7), 1, 50),
    "steep": (lambda x: exp(3 * (x - 2)), 0, 9),
    "flat": (lambda x: 1 + (x - 1.7) ** 3, 0, 4),
    "falling": (lambda x: 5 * exp(-x), 0, 20),
}
roots = {name: brentq(lambda x: f(x) - 1, low, high, xtol=1e-13, rtol=1e-13) for name, (f, low, high) in functions.items()}
found = {"made by": f"scipy {scipy.__version__} optimize.brentq, tests/certainty/oracle/brentq.py", "roots": roots}
Path(__file__).with_suffix(".json").write_text(json.dumps(found, indent=2) + "\n")
