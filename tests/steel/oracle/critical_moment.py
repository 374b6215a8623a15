#!/usr/bin/env python3
"""Critical moments of simply supported I beams by a Ritz solution that knows nothing of C1 and C2.

Twist = sine series, held at both ends and free to warp; the sideways deflection follows from it
(E Iz v'' = -M phi). Energy: 1/2 int (E Iw phi''^2 + G It phi'^2 - M^2 phi^2 / E Iz) - 1/2 zg sum(load phi^2).
The load factor is the least positive root of the quadratic eigenproblem (SciPy).

Run with no argument to print the fixture critical-moment.json; with --check to compare with the committed one.
"""
import json
import sys
from pathlib import Path

import numpy as np
from scipy.linalg import eig

E, G = 210000.0, 81000.0
TERMS, POINTS = 24, 4001

# h, Iz, It, Iw: mm, from the outline (shared tables, computed_from_geometry).
SECTIONS = {
    'IPE 200': dict(Iz=1.4237e6, It=6.98e4, Iw=1.2988e10, h=200.0),
    'IPE 300': dict(Iz=6.0378e6, It=2.0118e5, Iw=1.2593e11, h=300.0),
    'HEA 140': dict(Iz=3.8932e6, It=8.13e4, Iw=1.506e10, h=133.0),
}


def diagram(kind, x, L):
    """Moment shape (greatest 1), line load and point loads that go with it (per unit of greatest moment)."""
    s = x / L
    none = np.zeros_like(x)
    if kind == 'uniform moment':
        return np.ones_like(x), none, []
    if kind.startswith('end moments'):
        psi = float(kind.split()[-1])
        return 1 + (psi - 1) * s, none, []
    if kind == 'uniform load':
        return 4 * s * (1 - s), np.full_like(x, 8 / L**2), []
    if kind == 'middle load':
        return 2 * np.minimum(s, 1 - s), none, [(L / 2, 4 / L)]
    if kind == 'third-point loads':
        return np.minimum(np.minimum(3 * s, 3 * (1 - s)), 1), none, [(L / 3, 3 / L), (2 * L / 3, 3 / L)]
    if kind == 'quarter load':
        return np.minimum(s / 0.25, (1 - s) / 0.75), none, [(L / 4, 1 / (L * 0.25 * 0.75))]
    raise ValueError(kind)


def critical(section, L, kind, zg):
    p = SECTIONS[section]
    x = np.linspace(0, L, POINTS)
    m, q, points = diagram(kind, x, L)
    k = np.arange(1, TERMS + 1) * np.pi / L
    phi = np.sin(np.outer(k, x))
    K = np.diag(L / 2 * (E * p['Iw'] * k**4 + G * p['It'] * k**2))
    A = np.trapezoid(phi[:, None, :] * phi[None, :, :] * m**2, x, axis=2) / (E * p['Iz'])
    B = zg * np.trapezoid(phi[:, None, :] * phi[None, :, :] * q, x, axis=2)
    for at, force in points:
        f = np.sin(k * at)
        B = B + zg * force * np.outer(f, f)
    scale = 1e7  # N mm: keeps the companion matrices well scaled
    K, A, B = K, A * scale**2, B * scale
    n, zero, one = TERMS, np.zeros((TERMS, TERMS)), np.eye(TERMS)
    values = eig(np.block([[zero, one], [K, -B]]), np.block([[one, zero], [zero, A]]), right=False)
    real = values[np.isfinite(values)]
    real = real[abs(real.imag) < 1e-6 * abs(real)].real
    return min(real[real > 1e-9]) * scale / 1e6


def cases():
    out = []
    for section, L in (('IPE 200', 4000.0), ('IPE 300', 5000.0), ('IPE 300', 3000.0), ('HEA 140', 4700.0)):
        h = SECTIONS[section]['h']
        for kind in ('uniform moment', 'end moments 0.5', 'end moments 0', 'end moments -0.5', 'end moments -1', 'uniform load', 'middle load', 'third-point loads', 'quarter load'):
            loaded = 'load' in kind
            for zg in ((0.0, h / 2) if loaded else (0.0,)):
                out.append(dict(section=section, L=L, kind=kind, zg=zg, Mcr=round(critical(section, L, kind, zg), 3)))
    return out


if __name__ == '__main__':
    fixture = Path(__file__).with_name('critical-moment.json')
    if '--check' in sys.argv:
        old = json.loads(fixture.read_text())
        new = cases()
        assert len(old) == len(new)
        for a, b in zip(old, new):
            assert a['kind'] == b['kind'] and abs(a['Mcr'] / b['Mcr'] - 1) < 1e-4, (a, b)
        print(f'{len(new)} critical moments agree')
    else:
        print('[\n' + ',\n'.join('  ' + json.dumps(c) for c in cases()) + '\n]')
