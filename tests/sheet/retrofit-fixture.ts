/**
 * An old tie under a loft hung from a new beam of three leaves, in four stages; a rolled beam and a flitch beam.
 * The diagrams are those of simply supported beams under a uniform load, so that their peaks are known; the bolts'
 * forces are made up.
 */
import type { SourceRef } from '../../language/src/model.js';
import type { Diagrams } from '../../server/src/analysis/actions.js';
import type { BoltResult, CheckResult, HangerResult, LeafResult, MemberResult, Results } from '../../server/src/results.js';
import { at, bending, beam, results as granary } from './fixture.js';

const length = 4900;
const [a, b] = [100, 4800];
const span = b - a;
const xs = Array.from({ length: 99 }, (_, i) => i * 50);
const kNm = (value: number) => ({ value, unit: 'kNm' });
const kN = (value: number) => ({ value, unit: 'kN' });
const mm = (value: number) => ({ value, unit: 'mm' });

/** N/mm on a simple span; sag is mm at its middle. */
function uniform(load: number, sag: number): Diagrams {
    const inside = (x: number): number => Math.min(Math.max(x - a, 0), span);
    const M = (x: number): number => load * inside(x) * (span - inside(x)) / 2;
    const w = (x: number): number => sag * Math.sin(Math.PI * inside(x) / span);
    const envelope = (value: (x: number) => number, least: number) => xs.map(x => ({ x, min: Math.min(value(x), least * value(x)), max: Math.max(value(x), least * value(x)) }));
    return {
        N: xs.map(x => ({ x, min: 0, max: 0 })), M: envelope(M, 0.4),
        V: envelope(x => x < a || x > b ? 0 : load * (span / 2 - inside(x)), 0.4), instant: envelope(x => 0.6 * w(x), 0.5), final: envelope(w, 0.5)
    };
}

const greatestMoment = (load: number): number => load * span ** 2 / 8 / 1e6;
const greatestShear = (load: number): number => load * span / 2 / 1e3;

function member(name: string, stage: string | null, load: number, sag: number, line: number, more: Partial<MemberResult>): MemberResult {
    return {
        ...beam, name, title: undefined, stage, length, losses: [], segments: [{ from: 0, to: length, b: more.breadth ?? 190, h: more.depth ?? 240, shiftUp: 0, shiftRight: 0, weakened: false }],
        spans: [{ from: 0, to: a, overhang: true }, { from: a, to: b, overhang: false }, { from: b, to: length, overhang: true }],
        supportSketches: ['north', 'south'].map((wall, i) => ({ name: wall, kind: 'wall', at: i === 0 ? a : b, bearing: 150, tied: false, source: at(line + 2 + i) })),
        loadSketches: [], diagrams: uniform(load, sag),
        reactions: ['north', 'south'].map((support, i) => ({ support, at: { value: (i === 0 ? a : b) / 1000, unit: 'm' }, min: kN(0.4 * greatestShear(load)), max: kN(greatestShear(load)) })),
        moment: { min: kNm(0), max: kNm(greatestMoment(load)) }, shear: { min: kN(-greatestShear(load)), max: kN(greatestShear(load)) },
        deflection: { instant: mm(0.6 * sag), final: mm(sag), total: mm(1.1 * sag), ratio: span / sag },
        worst: `${name}.bending`, source: at(line), nameSource: at(line), ...more
    };
}

const stageNames = ['found', 'propped', 'hung', 'relieved'] as const;
type Stage = (typeof stageNames)[number];
const oldLoads: Readonly<Record<Stage, readonly [load: number, sag: number]>> = { found: [3.9, 14], propped: [1.2, 3], hung: [1.1, 3.2], relieved: [2.4, 9] };

const hangers = [{ name: 'H1', at: 1500 }, { name: 'H2', at: 2800 }];
const sketches = (other: string, above: boolean) => hangers.map(({ name, at: station }) => ({ name, at: station, other, above, source: at(60) }));

const oldTie = stageNames.map(stage => member('T2', stage, ...oldLoads[stage], 30, {
    title: 'tie over the loft ceiling',
    losses: beam.losses, segments: beam.segments.map(segment => ({ ...segment, to: segment.to === beam.length ? length : segment.to })),
    loadSketches: [
        { name: 'ceiling', action: 'permanent', line: { perLength: 1.1, from: 0, to: length }, source: at(70) },
        { name: 'storage', action: 'imposed E', line: { perLength: 1.65, from: 0, to: length }, source: at(71) },
        { name: 'valley', action: 'snow', point: { force: 3200, at: 2200 }, source: at(72) }
    ],
    crossingSketches: [{ name: 'J4', at: 3400, bearing: 75, source: at(44) }],
    hangerSketches: stage === 'hung' || stage === 'relieved' ? sketches('R1', true) : [],
    propSketches: stage === 'propped' || stage === 'hung' ? [{ at: 2150, lift: 3, source: at(81) }] : []
}));

/** M12 every 350 mm or so, their heights in a zigzag of 50 mm. */
export const bolts: readonly BoltResult[] = Array.from({ length: 14 }, (_, i) => ({
    x: 84 + i * (length - 168) / 13, height: [50, 0, -50, 0][i % 4]!, size: 'M12', grade: '8.8',
    planes: [1, 2].map(plane => ({ plane, force: kN(0.4 + 0.31 * ((i * 7 + plane) % 5)), angle: 90 - 6 * (i % 5) })), source: at(54)
}));

const piecesOf = (butt: number) => [{ from: 0, to: butt }, { from: butt, to: length }];
const leaf = (number: number, butt: number, load: number): LeafResult => ({
    leaf: number, breadth: 63, pieces: piecesOf(butt), moment: { min: kNm(0), max: kNm(greatestMoment(load)) },
    shear: { min: kN(-greatestShear(load)), max: kN(greatestShear(load)) }, deflection: { instant: mm(5), final: mm(8) }, diagrams: uniform(load, 8)
});

export const builtUp = (['hung', 'relieved'] as const).map(stage => member('R1', stage, stage === 'hung' ? 0.9 : 2.2, stage === 'hung' ? 4 : 8, 48, {
    title: 'relief beam over the ceiling', shape: 'plies', material: 'C24', description: '3 leaves 63 × 200 mm C24', breadth: 189, depth: 200,
    leaves: [leaf(1, 1900, 0.5), leaf(2, 3000, 1.2), leaf(3, 1900, 0.5)],
    butts: [{ leaf: 1, at: 1900, source: at(52) }, { leaf: 3, at: 1900, source: at(52) }, { leaf: 2, at: 3000, source: at(53) }],
    bolts, stiffnessRatio: 1.427, hangerSketches: sketches('T2', false)
}));

export const rolled = member('S1', null, 3, 7, 90, {
    title: 'one rolled beam', shape: 'rolled', material: 'S275', description: 'HEA 140 S275', breadth: 140, depth: 133,
    rolled: { designation: 'HEA 140', form: 'I', h: 133, b: 140, tw: 5.5, tf: 8.5, r: 12 }
});
export const channel: MemberResult = {
    ...rolled, name: 'S2', description: 'UPN 160 S235', breadth: 65, depth: 160, rolled: { designation: 'UPN 160', form: 'channel', h: 160, b: 65, tw: 7.5, tf: 10.5, r: 10.5 }
};
export const flitch = member('F1', null, 3, 7, 95, {
    title: 'two planks and a plate', shape: 'flitch', material: 'C24', description: 'flitch 2 of 63 × 200 mm C24 with 1 plate 180 × 10 mm S275', breadth: 136, depth: 200,
    plates: { leaves: 2, leafBreadth: 63, count: 1, thickness: 10, depth: 180, steel: 'S275' }, bolts: bolts.map(bolt => ({ ...bolt, planes: [] }))
});

const places: Readonly<Record<Stage, SourceRef>> = { found: at(80), propped: at(81), hung: at(82), relieved: at(83) };

function check(id: string, stage: string | null, utilisation: number, more: Partial<CheckResult> = {}): CheckResult {
    const [subject = '', name = ''] = id.split('.');
    return { ...bending, id, subject, check: name, stage, utilisation, pass: utilisation <= 1, demand: { value: 11 * utilisation, unit: 'MPa' }, capacity: { value: 11, unit: 'MPa' }, ...more };
}

const longLabel = '1.35 G + 1.5 storage + 0.75 valley + 1.05 (bench + chests + trunks + tools + sails + ropes)';
export const checks: readonly CheckResult[] = [
    ...stageNames.map((stage, i) => check('T2.bending', stage, [1.31, 0.52, 0.5, 0.83][i]!, { at: { value: 2.212, unit: 'm' } })),
    ...stageNames.map((stage, i) => check('T2.final', stage, [0.9, 0.2, 0.21, 0.6][i]!, { at: { value: 2.45, unit: 'm' }, clause: 'EN 1995-1-1 7.2' })),
    ...['hung', 'relieved'].flatMap((stage, i) => [
        check('R1.bending', stage, [0.3, 0.71][i]!, { combination: longLabel }), check('R1.final', stage, [0.4, 0.92][i]!), check('R1.plies', stage, [0.2, 0.55][i]!, { clause: 'EN 1995-1-1 8.2.2' })
    ]),
    ...['H1', 'H2'].flatMap(name => ['hung', 'relieved'].flatMap((stage, i) => [
        check(`${name}.rods`, stage, [0.15, 0.24][i]!, { clause: 'EN 1993-1-8 Table 3.4', duration: '' }), check(`${name}.grain`, stage, [0.4, 0.62][i]!, { clause: 'EN 1995-1-1 6.1.5' })
    ])),
    check('S1.bending', null, 0.4, { clause: 'EN 1993-1-1 6.2.5' }), check('S2.bending', null, 0.5, { clause: 'EN 1993-1-1 6.2.5' }), check('F1.bending', null, 0.6)
];

const hangerResult = (name: string, station: number, stage: Stage, min: number, max: number, tightening?: number): HangerResult => ({
    name, stage, carries: 'T2', carriesAt: station, from: 'R1', fromAt: station, force: { min: kN(min), max: kN(max) },
    tightening: tightening === undefined ? undefined : kN(tightening), description: '2 rods M12 grade 4.6, plates 70 × 10 × 300 mm S275, washers 40 × 6 mm',
    worst: `${name}.grain`, source: { ...at(2), file: 'jobs/details/hangers.padstone' }, usedAt: at(60)
});

export const retrofit: Results = {
    ...granary,
    job: { ...granary.job!, title: 'Sail loft, relief of tie T2' },
    verdict: 'fail', verdictReason: 'T2.bending does not hold in stage found',
    members: [...oldTie, ...builtUp, rolled, channel, flitch],
    hangers: hangers.flatMap(({ name, at: station }) => [hangerResult(name, station, 'hung', 2.5, 2.5, 2.5), hangerResult(name, station, 'relieved', 3.1, 6.2)]),
    stages: [
        { name: 'found', lines: ['T2 stands as it was found'], source: places.found },
        { name: 'propped', lines: ['prop T2 at 2.15 m, lift 3 mm'], source: places.propped },
        { name: 'hung', title: 'beam and rods', lines: ['add R1, H1, H2', 'tighten H1, H2 to 2.5 kN'], source: places.hung },
        { name: 'relieved', lines: ['release all props'], source: places.relieved }
    ],
    checks, missing: [], requirements: [], hazards: []
};
