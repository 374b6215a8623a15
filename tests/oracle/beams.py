#!/usr/bin/env python3
"""Writes beams.json: beams solved by general-purpose libraries, for the analysis to be compared with.

- `exact`: Euler-Bernoulli beams by sympy.physics.continuum_mechanics.beam, in rational numbers.
- `fine`: straight members with shear deformation and loss zones whose axis is shifted, by a model that shares
  nothing with the program's: 2-node linear elements with one-point integration (so thousands of them), each on its own
  axis, rigid links to the member's axis as Lagrange multipliers, solved by SciPy's sparse LU.

Units mm, N, N mm. Signs as in server/src/analysis/actions.ts. `beams.py --check` recomputes and compares with the file.
"""
import math
from pathlib import Path

import numpy as np
import scipy.sparse as sparse
import scipy.sparse.linalg as linalg
from sympy import Rational, Symbol, symbols
from sympy.physics.continuum_mechanics.beam import Beam

from stored import rounded, store

FIXTURE = Path(__file__).with_name('beams.json')


# ---- exact: SymPy ---------------------------------------------------------------------------------------------------

EXACT = [
    {'name': 'two overhangs, partial line load and points', 'length': 6000, 'EI': 2_000_000_000_000,
     'supports': [[1000, 'pin'], [5000, 'pin']],
     'lines': [[0, 3000, 4]], 'points': [[4000, 6000], [6000, 1500]]},
    {'name': 'two spans, uneven', 'length': 7000, 'EI': 1_500_000_000_000,
     'supports': [[0, 'pin'], [3000, 'pin'], [7000, 'pin']],
     'lines': [[0, 7000, 3], [3000, 5000, 2]], 'points': [[2000, 5000]]},
    {'name': 'fixed at both ends', 'length': 4000, 'EI': 1_000_000_000_000,
     'supports': [[0, 'fixed'], [4000, 'fixed']],
     'lines': [[1000, 4000, 5]], 'points': [[1000, 8000]]},
    {'name': 'propped cantilever with overhang', 'length': 5000, 'EI': 800_000_000_000,
     'supports': [[0, 'fixed'], [4000, 'pin']],
     'lines': [[2000, 5000, 2]], 'points': [[1000, 3000], [5000, 1000]]},
    {'name': 'three spans', 'length': 9000, 'EI': 1_200_000_000_000,
     'supports': [[0, 'pin'], [3000, 'pin'], [6000, 'pin'], [9000, 'pin']],
     'lines': [[0, 3000, 4], [6000, 9000, 4]], 'points': [[4000, 2000]]},
]


def solve_exact(case):
    beam = Beam(case['length'], 1, case['EI'])
    unknowns, upward = [], []
    for i, (at, kind) in enumerate(case['supports']):
        force = Symbol(f'R{i}')
        beam.apply_load(force, at, -1)
        beam.bc_deflection.append((at, 0))
        unknowns.append(force)
        upward.append(force)
        if kind == 'fixed':
            moment = Symbol(f'M{i}')
            beam.apply_load(moment, at, -2)
            beam.bc_slope.append((at, 0))
            unknowns.append(moment)
    for start, end, q in case['lines']:
        beam.apply_load(-q, start, 0, end=end)
    for at, force in case['points']:
        beam.apply_load(-force, at, -1)
    beam.solve_for_reaction_loads(*unknowns)
    x = symbols('x')
    moment, shear, deflection = beam.bending_moment(), beam.shear_force(), beam.deflection()
    reactions = [float(beam.reaction_loads[symbol]) for symbol in upward]
    total = sum(q * (end - start) for start, end, q in case['lines']) + sum(force for _, force in case['points'])
    assert abs(sum(reactions) - total) < 1e-6 * total
    # Half way into every stretch between things that happen: there nothing jumps.
    ends = sorted({0, case['length'], *(at for at, _ in case['supports']), *(at for at, _ in case['points']),
                   *(x for start, end, _ in case['lines'] for x in (start, end))})
    stations = []
    for a, b in zip(ends, ends[1:]):
        for tenth in (3, 5, 8):
            at = Rational(a) + Rational(b - a) * tenth / 10
            values = [float(f.subs(x, at).doit()) for f in (moment, shear, deflection)]
            stations.append({'x': float(at), 'M': values[0], 'V': values[1], 'w': -values[2]})
    return {'reactions': reactions, 'stations': stations}


def sympy_signs():
    """+1 where SymPy's sagging moment and its shear left of it are positive as ours are."""
    beam = Beam(2, 1, 1)
    r, s = symbols('r s')
    beam.apply_load(r, 0, -1)
    beam.apply_load(s, 2, -1)
    beam.bc_deflection = [(0, 0), (2, 0)]
    beam.apply_load(-2, 1, -1)
    beam.solve_for_reaction_loads(r, s)
    x = symbols('x')
    half = Rational(1, 2)
    return (float(np.sign(float(beam.bending_moment().subs(x, half).doit()))),
            float(np.sign(float(beam.shear_force().subs(x, half).doit()))))


# ---- fine: NumPy and SciPy ------------------------------------------------------------------------------------------

# `holds`: station, what is held there (u along the horizontal, v vertically), and what the program calls it.

FINE = [
    {'name': 'post with one side lost, load on its head', 'kind': 'post', 'slope': math.pi / 2,
     'length': 2400, 'b': 140, 'h': 160, 'E': 9000, 'G': 560,
     'holds': [[0, 'uv', 'wall'], [2400, 'u', 'wall']],
     'losses': [[800, 1600, 50, 0]], 'vertical': [], 'points': [[2400, 30000]],
     'at': [400, 880, 1200, 1520, 2000]},
    {'name': 'beam pinned at both ends, lost from below', 'kind': 'beam', 'slope': 0,
     'length': 4000, 'b': 120, 'h': 220, 'E': 11000, 'G': 690,
     'holds': [[0, 'uv', 'pinned'], [4000, 'uv', 'pinned']],
     'losses': [[1000, 2500, 0, 60]], 'vertical': [[0, 4000, 3.0]], 'points': [],
     'at': [500, 1150, 1750, 2350, 3250]},
    {'name': 'rafter, pinned at its foot, lost on top and below', 'kind': 'beam', 'slope': math.radians(35),
     'length': 5000, 'b': 80, 'h': 180, 'E': 10000, 'G': 630,
     'holds': [[0, 'uv', 'wall'], [4500, 'v', 'wall']],
     'losses': [[0, 600, 0, 40], [2000, 3000, 45, 0]], 'vertical': [[0, 5000, 1.2]], 'points': [[3000, 2500]],
     'at': [300, 1300, 2500, 3750, 4750]},
    {'name': 'short deep beam, weak ends', 'kind': 'beam', 'slope': 0,
     'length': 2000, 'b': 100, 'h': 300, 'E': 11000, 'G': 690,
     'holds': [[200, 'uv', 'wall'], [1800, 'v', 'wall']],
     'losses': [[0, 500, 0, 120], [1500, 2000, 100, 0]], 'vertical': [[0, 2000, 12.0]], 'points': [[800, 9000]],
     'at': [100, 350, 650, 1150, 1650, 1900]},
]

ELEMENTS = 6000


def solve_fine(case):
    """Unknowns per member node: U, V, r on the member's axis. Per element: its own two nodes on its own axis, tied by
    multipliers to the member's: what the axis does not see must come out of the constraint."""
    n, length = ELEMENTS, case['length']
    xs = np.linspace(0, length, n + 1)
    size = length / n
    cos, sin = math.cos(case['slope']), math.sin(case['slope'])
    rows, cols, vals = [], [], []
    master = 3 * (n + 1)
    own = 6 * n
    ties = 6 * n
    force = np.zeros(master + own + ties)

    def add(r, c, value):
        rows.append(r)
        cols.append(c)
        vals.append(value)

    stiff = []
    for e in range(n):
        middle = (xs[e] + xs[e + 1]) / 2
        top = max([t for a, b, t, _ in case['losses'] if a <= middle <= b], default=0)
        low = max([t for a, b, _, t in case['losses'] if a <= middle <= b], default=0)
        b, h = case['b'], case['h'] - top - low
        axial, bend, shear = case['E'] * b * h, case['E'] * b * h ** 3 / 12, case['G'] * b * h * 5 / 6
        offset = (low - top) / 2
        stiff.append((axial, bend, shear))
        base = master + 6 * e
        # Strains at the middle: (u2-u1)/l, (r2-r1)/l, (v2-v1)/l - (r1+r2)/2.
        strains = [
            (axial, [-1 / size, 0, 0, 1 / size, 0, 0]),
            (bend, [0, 0, -1 / size, 0, 0, 1 / size]),
            (shear, [0, -1 / size, -0.5, 0, 1 / size, -0.5]),
        ]
        for modulus, row in strains:
            for i in range(6):
                for j in range(6):
                    if row[i] and row[j]:
                        add(base + i, base + j, modulus * size * row[i] * row[j])
        # Local loads of a vertical line load on this element's axis.
        q = sum(amount for a, b_, amount in case['vertical'] if a <= middle <= b_)
        for node in (0, 3):
            force[base + node] += -q * sin * size / 2
            force[base + node + 1] += -q * cos * size / 2
        # Ties: u = cU + sV - offset r ; v = -sU + cV ; r = r.
        for node in (0, 1):
            m = 3 * (e + node)
            for component, row in enumerate([[cos, sin, -offset], [-sin, cos, 0], [0, 0, 1]]):
                t = master + own + 6 * e + 3 * node + component
                pairs = [(base + 3 * node + component, -1.0)] + [(m + k, row[k]) for k in range(3) if row[k]]
                for index, value in pairs:
                    add(t, index, value)
                    add(index, t, value)
    for at, amount in case['points']:
        force[3 * int(round(at / size)) + 1] -= amount
    held = []
    for at, components, _ in case['holds']:
        node = int(round(at / size))
        held += [3 * node + 'uv'.index(component) for component in components]
    matrix = sparse.csc_matrix((vals, (rows, cols)), shape=(len(force), len(force)))
    free = np.setdiff1d(np.arange(len(force)), held)
    solution = np.zeros(len(force))
    solution[free] = linalg.spsolve(matrix[free][:, free].tocsc(), force[free])
    reactions = matrix @ solution - force

    def forces(e):
        u1, v1, r1, u2, v2, r2 = solution[master + 6 * e: master + 6 * e + 6]
        axial, bend, shear = stiff[e]
        return np.array([axial * (u2 - u1) / size, -shear * ((v2 - v1) / size - (r1 + r2) / 2), bend * (r2 - r1) / size])

    ends = [case['holds'][0][0], case['holds'][-1][0]]
    normal = -sin * solution[0:master:3] + cos * solution[1:master:3]
    at_ends = [normal[int(round(x / size))] for x in ends]
    stations = []
    for x in case['at']:
        node = int(round(x / size))
        N, V, M = (forces(node - 1) + forces(node)) / 2
        if x < ends[0] or x > ends[1]:
            chord = at_ends[0] if x < ends[0] else at_ends[1]
        else:
            chord = at_ends[0] + (at_ends[1] - at_ends[0]) * (x - ends[0]) / (ends[1] - ends[0])
        stations.append({'x': x, 'N': N, 'V': V, 'M': M, 'w': chord - normal[node]})
    vertical = [reactions[3 * int(round(at / size)) + 1] if 'v' in c else 0.0 for at, c, _ in case['holds']]
    return {'reactions': vertical, 'stations': stations}


def compute():
    moment_sign, shear_sign = sympy_signs()
    exact = []
    for case in EXACT:
        answer = solve_exact(case)
        for station in answer['stations']:
            station['M'] *= moment_sign
            station['V'] *= shear_sign
        exact.append({**case, **answer})
    return rounded({'exact': exact, 'fine': [{**case, **solve_fine(case)} for case in FINE]}, 9)


if __name__ == '__main__':
    store(compute(), FIXTURE, 'the libraries say', relative=1e-5, absolute=1e-5, indent=1)
