/**
 * Against beams that general-purpose libraries solved: SymPy's continuum-mechanics beam, and an element model on
 * NumPy and SciPy that shares nothing with ours. beams.py wrote beams.json; where Python has them it is run again.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { DiagramPoint, MemberActions } from '../../server/src/analysis/actions.js';
import { elastic, member, model, single, solve, type SupportSketch } from './fixture.js';
import { slender, unfactored } from './figures.js';

interface Reading { readonly x: number; readonly N?: number; readonly V: number; readonly M: number; readonly w: number }
interface Exact {
    readonly name: string; readonly length: number; readonly EI: number;
    readonly supports: readonly [number, 'pin' | 'fixed'][];
    readonly lines: readonly [number, number, number][]; readonly points: readonly [number, number][];
    readonly reactions: readonly number[]; readonly stations: readonly Reading[];
}
interface Fine {
    readonly name: string; readonly kind: 'beam' | 'post'; readonly slope: number;
    readonly length: number; readonly b: number; readonly h: number; readonly E: number; readonly G: number;
    readonly holds: readonly [number, 'uv' | 'u' | 'v', 'wall' | 'pinned'][];
    readonly losses: readonly [number, number, number, number][];
    readonly vertical: readonly [number, number, number][]; readonly points: readonly [number, number][];
    readonly at: readonly number[]; readonly reactions: readonly number[]; readonly stations: readonly Reading[];
}

const fixture = JSON.parse(readFileSync(new URL('beams.json', import.meta.url), 'utf8')) as { exact: Exact[]; fine: Fine[] };

/** 0.1 % of the value, or a millionth of the greatest of its kind where it is nearly nought. */
function agrees(actual: number, wanted: number, greatest: number, what: string): void {
    expect(Math.abs(actual - wanted), `${what}: ${actual} for ${wanted}`).toBeLessThanOrEqual(1e-3 * Math.abs(wanted) + 1e-6 * greatest);
}

function compare(actions: MemberActions, stations: readonly Reading[]): void {
    const diagrams = { N: actions.diagrams.N, V: actions.diagrams.V, M: actions.diagrams.M, w: actions.diagrams.instant };
    for (const kind of ['N', 'V', 'M', 'w'] as const) {
        const together = kind === 'N' || kind === 'V' ? ['N', 'V'] as const : [kind];
        const greatest = Math.max(...stations.flatMap((station) => together.map((one) => Math.abs(station[one] ?? 0))));
        for (const station of stations) {
            const wanted = station[kind];
            if (wanted !== undefined) agrees(between(diagrams[kind], station.x), wanted, greatest, `${kind} at ${station.x}`);
        }
    }
}

/** The stations lie at tenths of each element, and so do the readings. */
function between(points: readonly DiagramPoint[], x: number): number {
    const found = points.find((point) => Math.abs(point.x - x) < 1e-6);
    expect(found, `a station at ${x}`).toBeDefined();
    return found!.max;
}

describe('SymPy, Euler-Bernoulli beams in rational numbers', () => {
    for (const beam of fixture.exact) {
        test(beam.name, () => {
            const supports = beam.supports.map(([at, kind]): SupportSketch => ({ at, kind: kind === 'fixed' ? 'fixed' : 'wall' }));
            const loads = [...beam.lines.map(([from, to, q]) => ({ from, to, q })), ...beam.points.map(([at, F]) => ({ at, F }))];
            const actions = slender(beam.EI, beam.length, supports, loads);
            beam.reactions.forEach((R, i) => agrees(actions.supports[i]!.design.max, R, R, `reaction ${i}`));
            compare(actions, beam.stations);
        });
    }
});

describe('NumPy and SciPy, shear deformation and axes shifted by losses', () => {
    for (const fine of fixture.fine) {
        test(fine.name, () => {
            const { kind, slope, length, b, h } = fine;
            const supports = fine.holds.map(([at, , held]): SupportSketch => ({ at, kind: held }));
            const losses = fine.losses.map(([from, to, top, bottom]) => ({ from, to, top, bottom }));
            const loads = [...fine.vertical.map(([from, to, q]) => ({ from, to, q })), ...fine.points.map(([at, F]) => ({ at, F }))];
            const actions = solve(
                model([member({ kind, slope, length, b, h, supports, losses })], loads),
                elastic(fine.E, { G: fine.G }), unfactored
            ).members[0]!;
            const greatest = Math.max(...fine.reactions.map(Math.abs));
            fine.reactions.forEach((R, i) => agrees(actions.supports[i]!.design.max, R, greatest, `reaction ${i}`));
            compare(actions, fine.stations);
        });
    }
    test('the axial force of a one-sided loss bends: without the shift there would be nothing', () => {
        const shifted = fixture.fine[0]!.stations.find(({ x }) => x === 1200)!;
        expect(shifted.M).toBeCloseTo(30000 * 25, 0);
        const [post] = fixture.fine;
        const actions = single({ kind: 'post', length: post!.length, b: post!.b, h: post!.h, supports: [{ at: 0 }, { at: post!.length }] },
            [{ F: 30000, at: post!.length }], elastic(9000), unfactored);
        expect(between(actions.diagrams.M, 1200)).toBe(0);
    });
});

const python = spawnSync('python3', ['-c', 'import numpy, scipy, sympy']).status === 0;
test.runIf(python)('beams.json is what the libraries say now', () => {
    const said = execFileSync('python3', [fileURLToPath(new URL('beams.py', import.meta.url)), '--check'], { encoding: 'utf8' });
    expect(said).toContain('beams.json is what the libraries say');
});
