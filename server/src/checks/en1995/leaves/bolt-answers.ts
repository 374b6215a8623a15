/** What 8.2 says of bolts between leaves, one by one and in their rows along the grain. */
import type { Combination } from '../../../analysis/actions.js';
import type { MemberContext } from '../../check.js';
import type { Answer } from '../../judged.js';
import { isProblem, type Problem, type Verdict } from '../../verdict.js';
import { boltShear, type BoltThroughLeaves } from '../fasteners/bolt-through-leaves.js';
import { rowAlongGrain } from '../fasteners/effective-number.js';
import type { Leaf } from '../fasteners/leaf.js';
import { spacingAcross } from '../fasteners/spacing.js';
import { connectionFactors, type BoltCase, type ThroughBolt } from './through-bolts.js';

/** No washers are given for these bolts: no rope effect is counted. */
const through = ({ fastener }: ThroughBolt, leaves: readonly Leaf[]): BoltThroughLeaves => ({ fastener, leaves, Fax_Rk: 0 });

/** Each bolt in each combination: every plane's force at its angle to the grain. */
export function shearAnswers(context: MemberContext, bolts: readonly ThroughBolt[], leaves: readonly Leaf[]): readonly Answer[] {
    const known = shears.get(context) ?? new Map<BoltCase, Verdict | Problem>();
    shears.set(context, known);
    return bolts.flatMap(bolt => bolt.cases.map(one => {
        const { combination, forces } = one;
        const said = known.get(one) ?? named(bolt.name, boltShear(through(bolt, leaves), forces, connectionFactors(context, combination)));
        known.set(one, said);
        return { said, where: { combination, at: bolt.x } };
    }));
}

/** The bolts at a butt are looked at once more, as a group. */
const shears = new WeakMap<MemberContext, Map<BoltCase, Verdict | Problem>>();

/** Bolts one behind another that push the same way, 8.1.2(4) and (5). */
export function rowAnswers(context: MemberContext, bolts: readonly ThroughBolt[], leaves: readonly Leaf[]): readonly Answer[] {
    const combinations = new Set(bolts.flatMap(({ cases }) => cases.map(({ combination }) => combination)));
    const known = new Map(bolts.map(bolt => [bolt, new Map(bolt.cases.map(one => [one.combination, one]))]));
    const caseOf = (bolt: ThroughBolt, combination: Combination): BoltCase | undefined => known.get(bolt)?.get(combination);
    return linesOf(bolts).flatMap(line => Array.from({ length: leaves.length - 1 }, (_, plane) =>
        greatestOf([...combinations].flatMap(combination => runsIn(line, bolt => caseOf(bolt, combination), plane)))
            .flatMap(run => answerOf(context, run, plane, leaves))).flat());
}

/** Of all combinations of one duration that push the same bolts, with the same one most: what they hold is the same. */
function greatestOf(runs: readonly (readonly Loaded[])[]): readonly (readonly Loaded[])[] {
    const greatest = new Map<string, { readonly run: readonly Loaded[]; readonly force: number }>();
    for (const run of runs) {
        const key = [run[0]!.loaded.combination.duration, run[0]!.bolt.x, run.length, mostOf(run).bolt.x, Math.sign(run[0]!.along)].join(' ');
        const force = forceOf(run);
        if (!((greatest.get(key)?.force ?? -1) >= force)) greatest.set(key, { run, force });
    }
    return [...greatest.values()].map(({ run }) => run);
}

const mostOf = (run: readonly Loaded[]): Loaded => run.reduce((a, b) => Math.abs(b.along) > Math.abs(a.along) ? b : a);
const forceOf = (run: readonly Loaded[]): number => run.reduce((sum, { along }) => sum + Math.abs(along), 0);

interface Loaded { readonly bolt: ThroughBolt; readonly loaded: BoltCase; readonly along: number }

/** Bolts at one height; those nearer than a2 across the grain count as one line, on the safe side. */
function linesOf(bolts: readonly ThroughBolt[]): readonly (readonly ThroughBolt[])[] {
    const lines: ThroughBolt[][] = [];
    for (const bolt of [...bolts].sort((a, b) => a.height - b.height)) {
        const last = lines.at(-1);
        if (last && bolt.height - last.at(-1)!.height < spacingAcross(bolt.d) - 1e-6) {
            last.push(bolt);
        } else {
            lines.push([bolt]);
        }
    }
    return lines.map(line => line.sort((a, b) => a.x - b.x));
}

/** Stretches of a line that push one way along the grain, two bolts at least. */
function runsIn(line: readonly ThroughBolt[], caseOf: (bolt: ThroughBolt) => BoltCase | undefined, plane: number): readonly (readonly Loaded[])[] {
    const runs: Loaded[][] = [];
    for (const bolt of line) {
        const loaded = caseOf(bolt);
        const along = loaded?.forces[plane]?.x ?? 0;
        const last = runs.at(-1);
        if (!loaded || along === 0) {
            runs.push([]);
        } else if (last?.[0] && Math.sign(last[0].along) === Math.sign(along)) {
            last.push({ bolt, loaded, along });
        } else {
            runs.push([{ bolt, loaded, along }]);
        }
    }
    return runs.filter(run => run.length > 1);
}

function answerOf(context: MemberContext, run: readonly Loaded[], plane: number, leaves: readonly Leaf[]): readonly Answer[] {
    const most = mostOf(run);
    const { combination } = most.loaded;
    const factors = connectionFactors(context, combination);
    const one = boltShear(through(most.bolt, leaves), most.loaded.forces.map(({ x }, i) => ({ x: i === plane ? x : 0, z: 0 })), factors);
    if (isProblem(one)) {
        return [];
    }
    const stations = run.map(({ bolt }) => bolt.x);
    const a1 = Math.min(...stations.slice(1).map((x, i) => x - stations[i]!));
    const force = forceOf(run);
    const row = `row of ${run.length} from ${metres(stations[0]!)} to ${metres(stations.at(-1)!)} m, between leaf ${plane + 1} and ${plane + 2}`;
    return [{
        said: named(row, rowAlongGrain({ n: run.length, a1, d: most.bolt.d }, force, one.capacity.value * 1e3)),
        where: { combination, at: most.bolt.x }
    }];
}

const metres = (mm: number): string => (mm / 1000).toFixed(2);

/** The first line says what it is about. */
export function named<T extends object>(name: string, said: T): T {
    if (!('explain' in said)) {
        return said;
    }
    const { explain } = said as unknown as Verdict;
    return { ...said, explain: () => explain().map((line, i) => i === 0 ? { ...line, note: [name, line.note].filter(Boolean).join('; ') } : line) };
}
