#!/usr/bin/env python3
"""Writes leaves.json: members of leaves joined by bolts that slip, for the analysis to be compared with.

Written from the text of the method (each leaf a beam of its own, broken where it is butted; each bolt two springs in
each plane, across the grain and along it at its height), not from the program. What differs from the program: 2-node linear
elements with one-point integration, thousands of them, instead of exact ones; bolts as equations with Lagrange multipliers
for their forces; supports as multipliers too; one sparse LU of the whole by SciPy.

Units mm, N, N mm; signs as in server/src/analysis/actions.ts. `leaves.py --check` recomputes and compares with the file.
"""
import math
from pathlib import Path

import numpy as np
import scipy.sparse as sparse
import scipy.sparse.linalg as linalg

from stored import rounded, store

FIXTURE = Path(__file__).with_name('leaves.json')
STEP = 2.5


def pattern(length, pitch, ends, zigzag):
    count = math.ceil((length - 2 * ends) / pitch)
    cycle = [zigzag, 0, -zigzag, 0]
    # On the grid of elements.
    return [[round((ends + (length - 2 * ends) * i / count) / STEP) * STEP, cycle[i % 4]] for i in range(count + 1)]


CASES = [
    {'name': 'three leaves, the outer two broken at one place and the middle one at another', 'length': 4700, 'b': 63, 'h': 200,
     'E': 11000, 'G': 690, 'kdef': 0.8, 'K': 4490, 'count': 3, 'butts': [[1, 1800], [3, 1800], [2, 2900]],
     'bolts': pattern(4700, 350, 100, 50), 'supports': [[0], [4700]], 'lines': [[0, 4700, 4.0]], 'points': []},
    {'name': 'three leaves, each broken at its own place, zigzag wide and bolts close', 'length': 5000, 'b': 50, 'h': 225,
     'E': 9000, 'G': 560, 'kdef': 0.6, 'K': 5200, 'count': 3, 'butts': [[1, 1500], [2, 2500], [3, 3500]],
     'bolts': pattern(5000, 200, 125, 70), 'supports': [[100], [4900]], 'lines': [[0, 5000, 3.0]], 'points': [[2500, 6000, None]]},
    {'name': 'two leaves, one broken, on three supports', 'length': 6000, 'b': 75, 'h': 175,
     'E': 11000, 'G': 690, 'kdef': 0.8, 'K': 3500, 'count': 2, 'butts': [[1, 2500]],
     'bolts': pattern(6000, 400, 100, 40), 'supports': [[0], [3000], [6000]], 'lines': [[0, 6000, 3.0], [1000, 2000, 2.0]], 'points': []},
    {'name': 'two leaves, the load and one support on the first alone', 'length': 4000, 'b': 60, 'h': 180,
     'E': 10000, 'G': 630, 'kdef': 0.8, 'K': 4000, 'count': 2, 'butts': [],
     'bolts': pattern(4000, 500, 150, 30), 'supports': [[0, 1], [4000]], 'lines': [], 'points': [[1500, 8000, 1]]},
]

# Factor on K, divisor of E and G, divisor of K.
SETS = {'instant': (1, 0, 0), 'final': (1, 1, 2), 'ultimate': (2 / 3, 0, 0), 'ultimate final': (2 / 3, 1, 2)}


def solve(case, name):
    factor, on_timber, on_bolts = SETS[name]
    soft = 1 + on_timber * case['kdef']
    E, G = case['E'] / soft, case['G'] / soft
    K = factor * case['K'] / (1 + on_bolts * case['kdef'])
    b, h, n = case['b'], case['h'], round(case['length'] / STEP)
    axial, bend, shear = E * b * h, E * b * h ** 3 / 12, G * b * h * 5 / 6
    # Nodes of a leaf run on from left to right; a butt repeats its station.
    numbers, total = [], 0
    for leaf in range(1, case['count'] + 1):
        broken = {round(at / STEP) for which, at in case['butts'] if which == leaf}
        ends = []
        for e in range(n):
            if e == 0 or e in broken:
                total += 1
            ends.append((total - 1, total))
            total += 1
        numbers.append(ends)
    rows, cols, vals = [], [], []
    force = np.zeros(3 * total)

    def add(r, c, value):
        rows.append(r)
        cols.append(c)
        vals.append(value)

    for leaf, ends in enumerate(numbers, start=1):
        for e, (i, j) in enumerate(ends):
            dofs = [3 * i, 3 * i + 1, 3 * i + 2, 3 * j, 3 * j + 1, 3 * j + 2]
            for modulus, strain in ((axial, [-1, 0, 0, 1, 0, 0]), (bend, [0, 0, -1, 0, 0, 1]), (shear, [0, -1, -STEP / 2, 0, 1, -STEP / 2])):
                for a in range(6):
                    for c in range(6):
                        if strain[a] and strain[c]:
                            add(dofs[a], dofs[c], modulus / STEP * strain[a] * strain[c])
            middle = (e + 0.5) * STEP
            q = sum(amount for start, end, amount in case['lines'] if start < middle < end) / case['count']
            force[3 * i + 1] -= q * STEP / 2
            force[3 * j + 1] -= q * STEP / 2

    def nodes(leaf, at):
        e = round(at / STEP)
        ends = numbers[leaf - 1]
        return sorted({ends[min(e, n - 1)][0] if e < n else ends[-1][1], ends[e - 1][1] if e > 0 else ends[0][0]})

    for at, amount, which in case['points']:
        leaves = [which] if which else range(1, case['count'] + 1)
        for leaf in leaves:
            for node in nodes(leaf, at):
                force[3 * node + 1] -= amount / len(leaves) / len(nodes(leaf, at))
    # Extra unknowns: a bolt's force F with its equation movement - F / K = 0; a support's with movement = 0.
    extra = 0
    bolts, holds = [], []

    def tie(row, flexibility):
        nonlocal extra
        unknown = 3 * total + extra
        extra += 1
        for dof, value in row.items():
            add(unknown, dof, value)
            add(dof, unknown, value)
        if flexibility:
            add(unknown, unknown, -flexibility)
        return unknown

    for x, z in case['bolts']:
        for plane in range(1, case['count']):
            left, right = nodes(plane, x), nodes(plane + 1, x)
            if len(left) > 1 or len(right) > 1:
                continue
            i, j = left[0], right[0]
            along = tie({3 * j: 1, 3 * j + 2: -z, 3 * i: -1, 3 * i + 2: z}, 1 / K)
            across = tie({3 * j + 1: 1, 3 * i + 1: -1}, 1 / K)
            bolts.append((x, z, plane, along, across))
    for at, *which in case['supports']:
        leaves = which or range(1, case['count'] + 1)
        holds.append([tie({3 * node + 1: 1}, 0) for leaf in leaves for node in nodes(leaf, at)])
    # One point along the horizontal; no leaf drifts, each has bolts.
    tie({3 * nodes(1, case['supports'][0][0])[0]: 1}, 0)
    size = 3 * total + extra
    matrix = sparse.csc_matrix((vals, (rows, cols)), shape=(size, size))
    solution = linalg.spsolve(matrix, np.concatenate([force, np.zeros(extra)]))

    leaves = []
    for leaf, ends in enumerate(numbers, start=1):
        stations = []
        for x in sample(case, leaf):
            values = []
            for i, j in (ends[round(x / STEP) - 1], ends[round(x / STEP)]):
                u1, v1, r1, u2, v2, r2 = [solution[3 * node + k] for node in (i, j) for k in range(3)]
                values.append([axial * (u2 - u1) / STEP, -shear * ((v2 - v1) / STEP - (r1 + r2) / 2), bend * (r2 - r1) / STEP])
            N, V, M = np.mean(values, axis=0)
            stations.append({'x': x, 'N': N, 'V': V, 'M': M, 'w': -solution[3 * ends[round(x / STEP)][0] + 1]})
        leaves.append(stations)
    return {
        'reactions': [-sum(solution[unknown] for unknown in unknowns) for unknowns in holds],
        'leaves': leaves,
        'bolts': [{'x': x, 'height': z, 'plane': plane, 'along': solution[along], 'across': solution[across]} for x, z, plane, along, across in bolts]
    }


def sample(case, leaf):
    """Half way between bolts, butts, supports and loads, on the grid."""
    ends = sorted({0, case['length'], *(x for x, _ in case['bolts']), *(at for _, at in case['butts']), *(s[0] for s in case['supports']),
                   *(p[0] for p in case['points']), *(x for start, end, _ in case['lines'] for x in (start, end))})
    return [round((a + b) / 2 / STEP) * STEP for a, b in zip(ends, ends[1:]) if b - a > 20 * STEP]


def compute():
    return rounded([{**case, 'sets': {name: solve(case, name) for name in SETS}} for case in CASES], 7)


if __name__ == '__main__':
    store(compute(), FIXTURE, 'SciPy says', relative=1e-4, absolute=1e-1, separators=(',', ':'))
