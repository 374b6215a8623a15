#!/usr/bin/env python3
"""Writes hung.json: an old beam hung from a new one in stages, for the analysis to be compared with.

What differs from the program: 2-node linear elements with one-point integration, thousands of them; and no increments. Each
moment is solved as a whole: every part pulls by what it differs from the shape in which it was built in (a beam's own
shape, a rod's own length), which is remembered. A rod that is tightened gets the length at which it pulls just so.

Units mm, N, N mm; signs as in server/src/analysis/actions.ts. `hung.py --check` recomputes and compares with the file.
"""
from pathlib import Path

import numpy as np
import scipy.sparse as sparse
import scipy.sparse.linalg as linalg

from stored import rounded, store

FIXTURE = Path(__file__).with_name('hung.json')
STEP = 5

# A loss is symmetrical, top and bottom, so that the axis stays. Steps in the order of doing; a stage ends with `stage`.
CASES = [
    {'name': 'an old tie hung from a new beam, propped and lifted, tightened, relieved',
     'old': {'length': 4900, 'b': 190, 'h': 240, 'E': 9000, 'G': 560, 'kdef': 0.8, 'supports': [100, 4800], 'loss': [1600, 2700, 40]},
     'new': {'length': 4900, 'b': 126, 'h': 200, 'E': 11000, 'G': 690, 'kdef': 0.8, 'supports': [100, 4800]},
     'hangers': [[1500, 12000, 9000], [2800, 12000, 9000]], 'dead': [['old', 1.54], ['new', 0.25]], 'later': 1.65,
     'steps': [['stage', 'found'], ['prop', 2150, 3], ['stage', 'propped'], ['add'], ['tighten', 2500], ['stage', 'hung'], ['release'], ['stage', 'relieved']]},
    {'name': 'hung snug from a steel beam on other walls, tightened when it is used',
     'old': {'length': 5200, 'b': 150, 'h': 220, 'E': 8000, 'G': 500, 'kdef': 0.6, 'supports': [0, 5200], 'loss': [3000, 3500, 30]},
     'new': {'length': 6000, 'EA': 6.6e8, 'EI': 2.1692e12, 'GA': 8.19e7, 'supports': [300, 5700]},
     'hangers': [[1000, 20000, 15000], [2600, 20000, 15000], [4200, 20000, 15000]], 'dead': [['old', 2.2], ['new', 0.3]], 'later': 2.5,
     'steps': [['stage', 'found'], ['add'], ['stage', 'hung'], ['tighten', 4000], ['stage', 'used']]},
]


class Beam:
    def __init__(self, about, first, crept):
        self.about, self.first, self.n = about, first, about['length'] // STEP
        soft = 1 + (about.get('kdef', 0) if crept else 0)
        self.parts = []
        for e in range(self.n):
            middle = (e + 0.5) * STEP
            if 'EI' in about:
                self.parts.append((about['EA'], about['EI'], about['GA']))
                continue
            start, end, depth = about.get('loss', [0, 0, 0])
            h = about['h'] - (2 * depth if start < middle < end else 0)
            E, G, b = about['E'] / soft, about['G'] / soft, about['b']
            self.parts.append((E * b * h, E * b * h ** 3 / 12, G * b * h * 5 / 6))

    def v(self, x):
        return self.first + 2 * (x // STEP)

    def matrix(self, size):
        rows, cols, vals = [], [], []
        for e, (_, bend, shear) in enumerate(self.parts):
            dofs = [self.first + 2 * e + k for k in range(4)]
            for modulus, strain in ((bend, [0, -1, 0, 1]), (shear, [-1, -STEP / 2, 1, -STEP / 2])):
                for a in range(4):
                    for c in range(4):
                        rows.append(dofs[a])
                        cols.append(dofs[c])
                        vals.append(modulus / STEP * strain[a] * strain[c])
        return sparse.csc_matrix((vals, (rows, cols)), shape=(size, size))

    def load(self, size, q):
        force = np.zeros(size)
        for e in range(self.n):
            force[self.first + 2 * e] -= q * STEP / 2
            force[self.first + 2 * e + 2] -= q * STEP / 2
        return force

    def forces(self, u, x):
        """V and M at a node: means of the elements beside it."""
        found = []
        for e in (x // STEP - 1, x // STEP):
            _, bend, shear = self.parts[e]
            v1, r1, v2, r2 = u[self.first + 2 * e: self.first + 2 * e + 4]
            found.append([-shear * ((v2 - v1) / STEP - (r1 + r2) / 2), bend * (r2 - r1) / STEP])
        return [float(value) for value in np.mean(found, axis=0)]


def solve(case, crept):
    old = Beam(case['old'], 0, crept)
    new = Beam(case['new'], 2 * (old.n + 1), crept)
    size = 2 * (old.n + 1) + 2 * (new.n + 1)
    stiff = [old.matrix(size), new.matrix(size)]
    springs = [final if crept else initial for _, initial, final in case['hangers']]
    ends = [(old.v(x), new.v(x)) for x, _, _ in case['hangers']]
    dead = {'old': old, 'new': new}
    loads = {name: dead[name].load(size, q) for name, q in case['dead']}
    walls = {'old': [old.v(x) for x in case['old']['supports']], 'new': [new.v(x) for x in case['new']['supports']]}
    there = {'old'}
    own_shape = {'old': np.zeros(size), 'new': None}
    own_length = [None] * len(ends)
    prop = None
    u = np.zeros(size)

    def settle(given=None, extra=None):
        """The whole in balance: `given` are forces of rods that are not springs just now."""
        matrix = sparse.csc_matrix((size, size))
        force = np.zeros(size) if extra is None else extra.copy()
        fixed = {}
        for name, k in zip(('old', 'new'), stiff):
            if name in there:
                matrix = matrix + k
                force += loads.get(name, 0) + k @ own_shape[name]
                fixed.update({dof: 0.0 for dof in walls[name]})
        for i, (low, high) in enumerate(ends):
            if own_length[i] is None and not given:
                continue
            pull = np.zeros(size)
            pull[low], pull[high] = -1, 1
            if given:
                force -= given[i] * pull
            else:
                matrix = matrix + rank_one(low, high, springs[i])
                force += springs[i] * own_length[i] * pull
        if 'new' not in there:
            fixed.update({dof: 0.0 for dof in range(new.first, size)})
        if prop:
            fixed[prop[0]] = prop[1]
        held = np.array(sorted(fixed))
        free = np.setdiff1d(np.arange(size), held)
        result = np.zeros(size)
        result[held] = [fixed[dof] for dof in held]
        matrix = matrix.tocsc()
        result[free] = linalg.spsolve(matrix[free][:, free], force[free] - matrix[free][:, held] @ result[held])
        balance = matrix @ result - force
        return result, balance

    def rank_one(low, high, k):
        return sparse.csc_matrix(([k, -k, -k, k], ([low, low, high, high], [low, high, low, high])), shape=(size, size))

    def pulls(shape):
        return [0.0 if own_length[i] is None else float(springs[i] * (shape[high] - shape[low] - own_length[i])) for i, (low, high) in enumerate(ends)]

    def reading(shape, balance):
        stations = {}
        for name, beam in dead.items():
            if name not in there:
                continue
            own = shape - own_shape[name]
            at = [x for x in range(300, beam.about['length'] - 200, 400) if all(abs(x - place) > 50 for place in [*beam.about['supports'], *(x for x, *_ in case['hangers']), *beam.about.get('loss', []), 2150])]
            stations[name] = [{'x': x, 'V': beam.forces(own, x)[0], 'M': beam.forces(own, x)[1], 'w': float(-own[beam.v(x)])} for x in at]
        return {'hangers': pulls(shape), 'prop': float(balance[prop[0]]) if prop else None, 'beams': stations}

    stages = []
    u, balance = settle()
    for step, *about in case['steps']:
        if step == 'prop':
            dof = old.v(about[0])
            prop = (dof, float(u[dof] + about[1]))
        elif step == 'add':
            there.add('new')
            # The new beam comes straight and level, and bends under its own load; then the rods are cut to length.
            own_shape['new'] = np.zeros(size)
            u, balance = settle()
            own_length = [float(u[high] - u[low]) for low, high in ends]
        elif step == 'tighten':
            u, balance = settle(given=[about[0]] * len(ends))
            own_length = [float(u[high] - u[low]) - about[0] / springs[i] for i, (low, high) in enumerate(ends)]
        elif step == 'release':
            prop = None
        else:
            stages.append({'stage': about[0], **reading(u, balance)})
        if step != 'stage':
            u, balance = settle()
    # What comes when all is done.
    with_later, balance = settle(extra=old.load(size, case['later']))
    later = reading(with_later, balance)
    return {'stages': stages, 'later': later}


def compute():
    return rounded([{**case, 'initial': solve(case, False), 'crept': solve(case, True)} for case in CASES], 8)


if __name__ == '__main__':
    store(compute(), FIXTURE, 'SciPy says', relative=1e-4, absolute=1e-1, separators=(',', ':'))
