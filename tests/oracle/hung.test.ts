/**
 * An old beam hung from a new one through all stages, against a model on SciPy that shares nothing with ours, not even
 * the way through the stages. hung.py wrote hung.json; where Python has SciPy it is run again.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { StageStep } from '../../language/src/model.js';
import { elastic, given, member, source } from './fixture.js';
import { unfactored } from './figures.js';
import { add, between, inStage, prop, release, solveRetrofit, stage, tighten } from './retrofit.js';

interface Reading {
    readonly hangers: readonly number[];
    readonly prop: number | null;
    readonly beams: Readonly<Partial<Record<'old' | 'new', readonly { readonly x: number; readonly V: number; readonly M: number; readonly w: number }[]>>>;
}
interface Solved { readonly stages: readonly (Reading & { readonly stage: string })[]; readonly later: Reading }
interface Beam {
    readonly length: number; readonly b?: number; readonly h?: number; readonly E?: number; readonly G?: number; readonly kdef?: number;
    readonly EA?: number; readonly EI?: number; readonly GA?: number;
    readonly supports: readonly number[]; readonly loss?: readonly [number, number, number];
}
interface Case {
    readonly name: string; readonly old: Beam; readonly new: Beam;
    readonly hangers: readonly [number, number, number][]; readonly dead: readonly ['old' | 'new', number][]; readonly later: number;
    readonly steps: readonly (readonly [string, ...(string | number)[]])[];
    readonly initial: Solved; readonly crept: Solved;
}

const cases = JSON.parse(readFileSync(new URL('hung.json', import.meta.url), 'utf8')) as Case[];

/** 0.1 % of the value, or a ten-thousandth of the greatest of its kind where it is nearly nought. */
function agrees(actual: number, wanted: number, greatest: number, what: string): void {
    expect(Math.abs(actual - wanted), `${what}: ${actual} for ${wanted}`).toBeLessThanOrEqual(1e-3 * Math.abs(wanted) + 1e-4 * greatest);
}

function beam(name: string, { length, b = 100, h = 100, supports, loss, EI }: Beam) {
    const plain = member({
        name, length, b, h, supports: supports.map((at) => ({ at })),
        ...(loss ? { losses: [{ from: loss[0], to: loss[1], top: loss[2], bottom: loss[2] }] } : {})
    });
    return EI === undefined ? plain : { ...plain, section: { shape: 'rolled' as const, designation: 'I', given: given('I'), source } };
}

function stagesOf(steps: Case['steps'], hangers: readonly string[]): ReturnType<typeof stage>[] {
    const stages: ReturnType<typeof stage>[] = [];
    let doing: StageStep[] = [add('old')];
    for (const [step, ...about] of steps) {
        const [a, b] = about as [number, number];
        if (step === 'stage') {
            stages.push(stage(String(a), ...doing));
            doing = [];
        } else doing.push(step === 'prop' ? prop('old', a, b) : step === 'add' ? add('new', ...hangers) : step === 'tighten' ? tighten(a, ...hangers) : release);
    }
    return stages;
}

describe.each(cases)('$name', (sketch) => {
    const hangers = sketch.hangers.map(([x, k, final], i) => ({ name: `H${i + 1}`, carries: 'old', at: x, from: 'new', fromAt: x, k, final }));
    const actions = solveRetrofit({
        members: [beam('old', sketch.old), beam('new', sketch.new)], hangers,
        loads: [...sketch.dead.map(([on, q]) => ({ name: `dead ${on}`, on, q })), { name: 'later', on: 'old', q: sketch.later, action: { kind: 'snow' as const } }],
        stages: stagesOf(sketch.steps, hangers.map(({ name }) => name)),
        properties: ({ name }) => {
            const { E = 210_000, G = 81_000, kdef = 0, EA, EI, GA } = sketch[name as 'old' | 'new'];
            if (EA === undefined || EI === undefined || GA === undefined) return elastic(E, { G, kdef });
            const section = { EA, EI, GA };
            return elastic(E, { G, kdef, section: { instant: section, final: section, mass: 0.02, breadth: 100, depth: 200 } });
        },
        parameters: { ...unfactored, gammaQ: 1 }
    });
    const last = sketch.initial.stages.at(-1)!.stage;

    test.each(['initial', 'crept'] as const)('%s stiffness', (stiffness) => {
        const suffix = stiffness === 'crept' ? ', after creep' : '';
        const readings = [
            ...sketch[stiffness].stages.map((reading) => ({ ...reading, of: reading.stage, with: '' })),
            { ...sketch[stiffness].later, of: last, with: ' + 1.0 later' }
        ];
        for (const reading of readings) {
            const matches = ({ combination: { label } }: { readonly combination: { readonly label: string } }): boolean =>
                label.endsWith(`${reading.with}${suffix}`) && label.includes('later') === (reading.with !== '') && label.includes('after creep') === (suffix !== '');
            const forces = actions.hangers!.filter((one) => one.stage === reading.of);
            forces.forEach(({ hanger: name, states }) => {
                agrees(states.find(matches)!.N, reading.hangers[Number(name.slice(1)) - 1]!, 5000, `${name} in ${reading.of}`);
            });
            const props = actions.props!.filter((one) => one.stage === reading.of);
            expect(props).toHaveLength(reading.prop === null ? 0 : 1);
            for (const { states } of props) agrees(states.find(matches)!.R, reading.prop!, 3000, `prop in ${reading.of}`);
            for (const name of ['old', 'new'] as const) {
                const beams = reading.beams[name];
                if (!beams) continue;
                const { stations } = inStage(actions, name, reading.of);
                for (const kind of ['V', 'M'] as const) {
                    const points = stations.map(({ x, states }) => ({ x, value: states.find(matches)![kind] }));
                    const greatest = Math.max(...beams.map((one) => Math.abs(one[kind])));
                    for (const one of beams) agrees(between(points, one.x), one[kind], greatest, `${kind} of ${name} at ${one.x} in ${reading.of}`);
                }
            }
        }
    });
    test('deflections of each stage, instant and final', () => {
        for (const [stiffness, kind] of [['initial', 'instant'], ['crept', 'final']] as const) {
            for (const reading of sketch[stiffness].stages.slice(0, -1)) {
                for (const name of ['old', 'new'] as const) {
                    const beams = reading.beams[name] ?? [];
                    const greatest = Math.max(...beams.map(({ w }) => Math.abs(w)));
                    const [from, to] = sketch[name].supports as [number, number];
                    for (const { x, w } of beams.filter((one) => one.x > from && one.x < to)) {
                        const points = inStage(actions, name, reading.stage).diagrams[kind].map((point) => ({ x: point.x, value: point.max }));
                        agrees(between(points, x), w, 3 * greatest, `w of ${name} at ${x} in ${reading.stage}`);
                    }
                }
            }
        }
    });
});

const python = spawnSync('python3', ['-c', 'import scipy']);
test.skipIf(python.status !== 0)('hung.json is what SciPy says now', () => {
    const script = fileURLToPath(new URL('hung.py', import.meta.url));
    expect(execFileSync('python3', [script, '--check'], { encoding: 'utf8' })).toContain('hung.json is what SciPy says');
}, 60_000);
