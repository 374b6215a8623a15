"""Back-figures E from made-up readings with SciPy's curve_fit: an outside least squares, with its own standard error.

The beam is Timoshenko's with a force anywhere between two supports (closed form), G held; run with
    python3 curve_fit.py > curve-fit.json
"""
import json
import numpy as np
from scipy.optimize import curve_fit

g = 9.80665
b, h, L, G = 75.0, 200.0, 3600.0, 690.0
I, As = b * h**3 / 12, 5 / 6 * b * h


def flexibility(x, E):
    """Deflection under a unit force at x of a simple beam: bending and shear, mm/N."""
    return x**2 * (L - x)**2 / (3 * E * I * L) + x * (L - x) / (G * As * L)


def fit(E_true, noise, rows, seed):
    rng = np.random.default_rng(seed)
    mass = np.array([m for m, _ in rows])
    at = np.array([x for _, x in rows])
    read = mass * g * flexibility(at, E_true) + rng.normal(0, noise, len(rows))
    popt, pcov = curve_fit(lambda i, E: mass * g * flexibility(at, E), np.arange(len(rows)), read, p0=[11000], xtol=1e-14, ftol=1e-14)
    return {"E_true": E_true, "noise": noise, "rows": rows, "read": list(read), "E": float(popt[0]), "scatter": float(np.sqrt(pcov[0, 0]))}


middle = [[100 * i, 1800.0] for i in range(1, 9)]
apart = [[100, 1800.0], [200, 1800.0], [300, 1800.0], [150, 900.0], [250, 900.0], [300, 2600.0]]
print(json.dumps({
    "b": b, "h": h, "L": L, "G": G,
    "cases": [fit(12345.0, 0.1, middle, 1), fit(8200.0, 0.2, middle, 2), fit(9900.0, 0.05, apart, 3), fit(14000.0, 0.0, middle[:2], 4)],
}, indent=1))
