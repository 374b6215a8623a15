"""Rigid-plastic capacity of a bolt through leaves, by a linear programme (SciPy, HiGHS).

Independent of the closed formulas of EN 1995-1-1 8.2 and of the readings in server/src: the bolt is cut into
cells, each with a bearing force q between -fh d and +fh d per mm of its leaf; its moment stays between -My and
+My at every cell edge; the leaves take forces in a given proportion; their common factor is made greatest
(lower-bound theorem of plasticity, exact as the cells shrink). A steel leaf bears without limit.
Prints the fixture `rigid-plastic.json`; run it again with `python3 rigid_plastic.py > rigid-plastic.json`.
"""
import json
import random
import sys

import numpy as np
from scipy.optimize import linprog

CELLS = 80


def capacity(leaves, My, planes):
    """Greatest factor on the plane forces. leaves: (thickness, N/mm bearing or None for steel); planes: force i on leaf i + 1."""
    pattern = np.zeros(len(leaves))
    for i, force in enumerate(planes):
        pattern[i] -= force
        pattern[i + 1] += force
    limit = max(bearing for _, bearing in leaves if bearing) * 1e3
    width, bound, leaf = [], [], []
    for index, (thickness, bearing) in enumerate(leaves):
        width += [thickness / CELLS] * CELLS
        bound += [bearing or limit] * CELLS
        leaf += [index] * CELLS
    width, leaf = np.array(width), np.array(leaf)
    n = len(width)
    edges = np.concatenate([[0], np.cumsum(width)])
    centre = (edges[:-1] + edges[1:]) / 2
    equal, right = [], []
    for index in range(len(leaves)):
        equal.append(np.append(np.where(leaf == index, width, 0), -pattern[index]))
        right.append(0)
    equal.append(np.append(width * centre, 0))
    right.append(0)
    moment = np.array([np.where(centre < edge, width * (edge - centre), 0) for edge in edges[1:-1]])
    moment = np.hstack([moment, np.zeros((n - 1, 1))])
    found = linprog(
        np.append(np.zeros(n), -1), A_ub=np.vstack([moment, -moment]), b_ub=np.full(2 * (n - 1), My),
        A_eq=np.array(equal), b_eq=np.array(right), bounds=[(-b, b) for b in bound] + [(0, None)], method='highs')
    if not found.success:
        sys.exit(found.message)
    return found.x[-1]


def embedment(d, rho):
    return 0.082 * (1 - 0.01 * d) * rho


CASES = [
    # name, leaves (thickness or ('steel', thickness)), plane forces
    ('two leaves 50 + 100', [50, 100], [1]),
    ('two leaves 40 + 40', [40, 40], [1]),
    ('two stout leaves 120 + 120', [120, 120], [1]),
    ('two leaves 90 + 25', [90, 25], [1]),
    ('three leaves 63, to and fro alike', [63, 63, 63], [1, -1]),
    ('three leaves 45, to and fro alike', [45, 45, 45], [1, -1]),
    ('three leaves 45, one plane', [45, 45, 45], [1, 0]),
    ('three leaves 45, to and fro half', [45, 45, 45], [1, -0.5]),
    ('three leaves 45, the same way', [45, 45, 45], [1, 1]),
    ('three leaves 45, the same way half', [45, 45, 45], [1, 0.5]),
    ('three leaves 63, to and fro nearly', [63, 63, 63], [1, -0.8]),
    ('three leaves 40, 80, 60 unlike', [40, 80, 60], [1, -0.7]),
    ('four leaves 45, to and fro', [45, 45, 45, 45], [1, -1, 1]),
    ('four leaves 45, mixed', [45, 45, 45, 45], [1, 0.6, -0.8]),
    ('plate 12 on timber 75', [('steel', 12), 75], [1]),
    ('plate 10 between timbers 60, to and fro', [60, ('steel', 10), 60], [1, -1]),
    ('plate 10 between timbers 60, the same way', [60, ('steel', 10), 60], [1, 1]),
]


def random_cases(count):
    """Leaves, plates and plane forces of every kind, the same ones at every run."""
    chance = random.Random(7)
    for index in range(count):
        leaves = []
        for _ in range(chance.choice([2, 3, 3, 3, 4, 5])):
            after_steel = not leaves or isinstance(leaves[-1], tuple)
            steel = chance.random() < 0.15 and not after_steel
            leaves.append(('steel', chance.choice([5, 8, 12, 20])) if steel else chance.choice([30, 45, 63, 75, 100, 150]))
        planes = [1] + [chance.choice([-1.2, -1, -0.8, -0.5, -0.2, 0, 0.3, 0.7, 1]) for _ in leaves[2:]]
        yield chance.choice([8, 12, 16, 20, 24]), chance.choice([400, 800]), chance.choice([290, 350, 420]), (f'random {index + 1}', leaves, planes)


def cases():
    for d, fu, rho in [(12, 400, 350), (16, 800, 350), (20, 400, 420)]:
        for case in CASES:
            yield d, fu, rho, case
    yield from random_cases(40)


def main():
    rows = []
    for d, fu, rho, (name, leaves, planes) in cases():
        bearing = embedment(d, rho) * d
        thick = [(leaf[1], None) if isinstance(leaf, tuple) else (leaf, bearing) for leaf in leaves]
        rows.append({
            'name': f'M{d}, fu {fu} MPa, {rho} kg/m3: {name}', 'd': d, 'fu': fu, 'rho': rho,
            'leaves': [{'steel': leaf[1]} if isinstance(leaf, tuple) else {'timber': leaf} for leaf in leaves],
            'planes': planes, 'capacity': round(capacity(thick, 0.3 * fu * d ** 2.6, planes), 3)})
    json.dump({'cells': CELLS, 'rows': rows}, sys.stdout, indent=1)
    print()


if __name__ == '__main__':
    main()
