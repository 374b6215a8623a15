/**
 * Members of leaves against an element model on SciPy that shares nothing with ours, and against EN 1995-1-1 Annex B.
 * leaves.py wrote leaves.json; where Python has SciPy it is run again.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { ActionState, MemberActions } from '../../server/src/analysis/actions.js';
import { shapeAt, placeAt } from '../../server/src/analysis/effects.js';
import { build, solveUnitCases } from '../../server/src/analysis/history.js';
import { effectiveSpan, layeredStiffness } from '../../server/src/analysis/layered.js';
import { lineOn } from '../../server/src/analysis/loading.js';
import { meshOf } from '../../server/src/analysis/mesh.js';
import type { Piece, Strand } from '../../server/src/analysis/piece.js';
import { kitOf } from '../../server/src/analysis/structure.js';
import { stateOf } from '../../server/src/analysis/unit-solutions.js';
import { elastic, member, single } from './fixture.js';
import { unfactored } from './figures.js';
import { between } from './retrofit.js';

type SetName = 'instant' | 'final' | 'ultimate' | 'ultimate final';
interface Reading { readonly x: number; readonly N: number; readonly V: number; readonly M: number; readonly w: number }
interface Solved {
    readonly reactions: readonly number[];
    readonly leaves: readonly (readonly Reading[])[];
    readonly bolts: readonly { readonly x: number; readonly height: number; readonly plane: number; readonly along: number; readonly across: number }[];
}
interface Case {
    readonly name: string; readonly length: number; readonly b: number; readonly h: number;
    readonly E: number; readonly G: number; readonly kdef: number; readonly K: number; readonly count: number;
    readonly butts: readonly [number, number][]; readonly bolts: readonly [number, number][];
    readonly supports: readonly (readonly [number, number?])[];
    readonly lines: readonly [number, number, number][]; readonly points: readonly [number, number, number | null][];
    readonly sets: Readonly<Record<SetName, Solved>>;
}

const cases = JSON.parse(readFileSync(new URL('leaves.json', import.meta.url), 'utf8')) as Case[];

/** 0.1 % of the value, and a twenty-thousandth of the greatest of its kind where it is nearly nought. */
function agrees(actual: number, wanted: number, greatest: number, what: string): void {
    expect(Math.abs(actual - wanted), `${what}: ${actual} for ${wanted}`).toBeLessThanOrEqual(1e-3 * Math.abs(wanted) + 5e-5 * greatest);
}

/** The label of the only combination on each stiffness. */
const labels = { ultimate: '1.0 G', 'ultimate final': '1.0 G, after creep' } as const;

describe.each(cases)('$name', (sketch) => {
    const actions: MemberActions = single({
        length: sketch.length, b: sketch.b, h: sketch.h,
        supports: sketch.supports.map(([at, leaf]) => ({ at, ...(leaf ? { leaves: [leaf] } : {}) })),
        plies: { count: sketch.count, butts: sketch.butts, bolts: sketch.bolts }
    }, [
        ...sketch.lines.map(([from, to, q], i) => ({ name: `line ${i}`, from, to, q })),
        ...sketch.points.map(([at, F, leaf], i) => ({ name: `point ${i}`, at, F, ...(leaf ? { leaf } : {}) }))
    ], elastic(sketch.E, { G: sketch.G, kdef: sketch.kdef, slip: () => sketch.K }), unfactored);

    test.each(['ultimate', 'ultimate final'] as const)('forces, %s', (set) => {
        const { leaves, bolts, reactions } = sketch.sets[set];
        const state = (states: readonly ActionState[]): ActionState => states.find(({ combination }) => combination.label === labels[set])!;
        leaves.forEach((readings, i) => {
            const stations = actions.stations.filter(({ leaf }) => leaf === i + 1);
            for (const kind of ['N', 'V', 'M'] as const) {
                const greatest = Math.max(...leaves.flat().map((reading) => Math.abs(kind === 'M' ? reading.M : reading.V)));
                const points = stations.map(({ x, states }) => ({ x, value: state(states)[kind] }));
                for (const reading of readings) agrees(between(points, reading.x), reading[kind], greatest, `${kind} of leaf ${i + 1} at ${reading.x}`);
            }
        });
        const greatest = Math.max(...bolts.map(({ along, across }) => Math.hypot(along, across)));
        expect(actions.bolts).toHaveLength(bolts.length);
        for (const bolt of bolts) {
            const own = actions.bolts!.find(({ x, plane }) => x === bolt.x && plane === bolt.plane)!;
            const { along, across } = own.states.find(({ combination }) => combination.label === labels[set])!;
            agrees(along, bolt.along, greatest, `along at ${bolt.x}, plane ${bolt.plane}`);
            agrees(across, bolt.across, greatest, `across at ${bolt.x}, plane ${bolt.plane}`);
        }
        actions.supports.forEach(({ states }, i) => {
            agrees(states.find(({ combination }) => combination.label === labels[set])!.R, reactions[i]!, Math.max(...reactions), `reaction ${i}`);
        });
    });
    test.each(['instant', 'final'] as const)('deflection, %s', (set) => {
        const { leaves } = sketch.sets[set];
        const greatest = Math.max(...leaves.flat().map(({ w }) => Math.abs(w)));
        leaves.forEach((readings, i) => {
            const points = actions.leaves![i]!.diagrams[set].map(({ x, max }) => ({ x, value: max }));
            for (const { x, w } of readings) agrees(between(points, x), w, 4 * greatest, `w of leaf ${i + 1} at ${x}`);
        });
    });
});

const python = spawnSync('python3', ['-c', 'import scipy']);
test.skipIf(python.status !== 0)('leaves.json is what SciPy says now', () => {
    const script = fileURLToPath(new URL('leaves.py', import.meta.url));
    expect(execFileSync('python3', [script, '--check'], { encoding: 'utf8' })).toContain('leaves.json is what SciPy says');
}, 60_000);

describe('one layer above another, as EN 1995-1-1 Annex B has it', () => {
    const [length, b, h, E, pitch] = [4000, 80, 100, 11000, 50];
    const strand = (shiftUp: number): Strand => ({
        leaf: shiftUp > 0 ? 1 : 2, share: 0.5, butts: [], splices: [], loose: [],
        segments: [{ from: 0, to: length, b, h, shiftUp, shiftRight: 0, weakened: false }]
    });
    const sag = (K: number): number => {
        const of = member({ length, supports: [{ at: 0 }, { at: length }], plies: { count: 2 } });
        const piece: Piece = {
            member: of, elastic: elastic(E, { G: 1e9 }), strands: [strand(h / 2), strand(-h / 2)], loads: [], places: [], levels: [], bearers: [],
            bolts: Array.from({ length: length / pitch }, (_, i) => ({ row: 0, place: i, x: pitch / 2 + i * pitch, height: 0, slip: K }))
        };
        const kit = kitOf(meshOf({ pieces: [piece], hangers: [], props: [] }, 'instant'));
        const standing = { pieces: Uint8Array.of(1), hangers: new Uint8Array(), props: new Uint8Array() };
        const built = build(kit, [{ name: null, last: true, steps: [{ standing, tightened: new Map(), lifted: new Map() }] }]);
        const mesh = kit.mesh.pieces[0]!;
        const part = { kind: 'load', unit: 0, piece: 0, stages: 'on', ...lineOn(mesh, 0, length, { along: 0, down: 1 }) } as const;
        const unit = { id: 0, name: 'q', load: 'q', action: 'G', permanent: true, duration: 'permanent', psi: [1, 1, 1] } as const;
        const solution = solveUnitCases(kit, built, { cases: [unit], parts: [part] })[0]!.ofCases[0]!;
        const place = placeAt(mesh, length / 2);
        const element = mesh.strands[0]!.elements[place.element]!;
        return -shapeAt(element, stateOf(solution, element.id), place.into).v;
    };
    test.each([0.01, 50, 200, 1000, 5000, 50_000, 1e6])('K = %f N/mm', (K) => {
        const layer = { b, h, E };
        const found = layeredStiffness({ layers: [layer, layer], joints: [{ K, s: pitch }], span: effectiveSpan(length, 'simple') });
        if ('problem' in found) throw new Error(found.problem);
        // The γ-method is exact for a sine of load; for an even one it differs by less than 1 %.
        expect(sag(K) / (5 * length ** 4 / (384 * found.EIef))).toBeCloseTo(1, 2);
    });
});
