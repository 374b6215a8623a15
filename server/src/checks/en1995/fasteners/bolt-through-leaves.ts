/** A bolt through any number of leaves, with a force of its own in every shear plane. */
import type { Step } from '../../../results.js';
import { newton, step } from '../../steps.js';
import { isProblem, problem, unsound, type Problem, type Verdict } from '../../verdict.js';
import { designStep, designValue, unsoundFactors, type DesignFactors } from './design-value.js';
import type { Fastener } from './fastener.js';
import { magnitude, type Force } from './force.js';
import { innerHinge } from './inner-hinge.js';
import { badLeaf, leafSteps, sideOf, type Leaf } from './leaf.js';
import { twoPlates, type Side } from './plane-reading.js';
import { readingsOf, type LoadedPlane, type Reading } from './readings.js';
import { planeCapacity, planeStrength, type PlaneCapacity } from './shear-plane.js';
import { verifyForce } from './verify.js';
import { yieldMomentStep } from './yield-moment.js';

export interface BoltThroughLeaves {
    readonly fastener: Fastener;
    readonly leaves: readonly Leaf[];
    /** From `axialCapacity`, N; nought where it is not known, and then there is no rope effect. */
    readonly Fax_Rk: number;
}

/**
 * A bolt's worst shear plane, by EN 1995-1-1 8.1.3 and 8.2. `forces[i]` is the design force, N, that leaf i puts on
 * leaf i + 1 through the bolt. The demand is the greatest of them; the capacity is that demand over the utilisation.
 */
export function boltShear(bolt: BoltThroughLeaves, forces: readonly Force[], factors: DesignFactors): Verdict | Problem {
    const wrong = badBolt(bolt, forces) ?? unsoundFactors(factors);
    if (wrong) {
        return wrong;
    }
    const best = readingsOf(forces).map(reading => weigh(bolt, reading))
        .reduce((better, other) => other.utilisation < better.utilisation ? other : better);
    const demand = Math.max(...forces.map(magnitude));
    const Rk = demand === 0 ? best.main.strength : demand / best.utilisation;
    return verifyForce({
        demand, demandSymbol: 'F_{v,Ed}', capacity: designValue(Rk, factors), capacitySymbol: 'F_{v,Rd}', clause: 'EN 1995-1-1 8.2'
    }, () => [
        yieldMomentStep(bolt.fastener),
        ...explainPart(bolt, best.main, best.name, best.besides ? 'F_{v,Rk,p}' : 'F_{v,Rk}'),
        ...(best.besides ? [...explainPart(bolt, best.besides, best.name, 'F_{v,Rk,r}'), sumStep(best.main, best.besides, demand, Rk)] : []),
        designStep('F_{v,Rd}', 'F_{v,Rk}', Rk, factors)
    ]);
}

/** Characteristic capacity of the one shear plane of two leaves, N, with all its modes, for a force in a direction. */
export function twoLeafCapacity(bolt: BoltThroughLeaves, direction: Force): PlaneCapacity | Problem {
    const wrong = badBolt(bolt, [direction]);
    return wrong ?? capacityOf(bolt, readingsOf([direction])[0]!.main[0]!, bolt.fastener.My_Rk);
}

/** The plane that governs one part of a reading. */
interface Part {
    readonly loaded: LoadedPlane;
    /** The moment that the bolt can have in its hinges here, N·mm. */
    readonly My: number;
    /** Characteristic, N. */
    readonly strength: number;
    readonly utilisation: number;
}

interface Weighed {
    readonly name: string;
    readonly main: Part;
    readonly besides: Part | undefined;
    /** By characteristic values. */
    readonly utilisation: number;
}

function weigh(bolt: BoltThroughLeaves, { name, main, besides }: Reading): Weighed {
    const { fastener, leaves } = bolt;
    const hinge = main.some(({ near, far }) => near.held && far.held)
        ? innerHinge(leaves, fastener, main[0]!.force, My => worstPart(bolt, main, My)!.strength)
        : fastener.My_Rk;
    const first = worstPart(bolt, main, hinge)!;
    const second = worstPart(bolt, besides, fastener.My_Rk);
    return { name, main: first, besides: second, utilisation: first.utilisation + (second?.utilisation ?? 0) };
}

function worstPart(bolt: BoltThroughLeaves, planes: readonly LoadedPlane[], My: number): Part | undefined {
    let worst: Part | undefined;
    const bent = dowel(bolt, My);
    for (const loaded of planes) {
        const strength = planeStrength(bent, near(bolt, loaded), far(bolt, loaded));
        const utilisation = magnitude(loaded.force) / strength;
        if (!worst || utilisation > worst.utilisation || utilisation === 0 && strength < worst.strength) {
            worst = { loaded, My, strength, utilisation };
        }
    }
    return worst;
}

function badBolt({ fastener, leaves, Fax_Rk }: BoltThroughLeaves, forces: readonly Force[]): Problem | undefined {
    if (leaves.length < 2 || forces.length !== leaves.length - 1) {
        return problem(`a bolt through ${leaves.length} leaves cannot have forces in ${forces.length} shear planes`);
    }
    const touching = leaves.some((leaf, i) => leaf.kind === 'steel' && leaves[i + 1]?.kind === 'steel');
    return unsound('not negative', { 'the axial capacity': Fax_Rk })
        ?? first(leaves, leaf => badLeaf(leaf, fastener))
        ?? (touching ? twoPlates : undefined)
        ?? first(forces, ({ x, z }) => unsound('finite', { 'the force along': x, 'the force across': z }));
}

function first<T>(things: readonly T[], wrong: (thing: T) => Problem | undefined): Problem | undefined {
    for (const thing of things) {
        const found = wrong(thing);
        if (found) {
            return found;
        }
    }
    return undefined;
}

function dowel({ fastener, Fax_Rk }: BoltThroughLeaves, My_Rk: number) {
    return { d: fastener.d_ef, My_Rk, Fax_Rk };
}

function near({ fastener, leaves }: BoltThroughLeaves, loaded: LoadedPlane): Side {
    return sideOf(leaves[loaded.plane]!, fastener, loaded.force, loaded.near);
}

function far({ fastener, leaves }: BoltThroughLeaves, loaded: LoadedPlane): Side {
    return sideOf(leaves[loaded.plane + 1]!, fastener, loaded.force, loaded.far);
}

function capacityOf(bolt: BoltThroughLeaves, loaded: LoadedPlane, My: number): PlaneCapacity | Problem {
    return planeCapacity(dowel(bolt, My), near(bolt, loaded), far(bolt, loaded));
}

/** The modes of the governing plane; `symbol` is what its capacity is called further on. */
function explainPart(bolt: BoltThroughLeaves, { loaded, My }: Part, reading: string, symbol: string): readonly Step[] {
    const { fastener, leaves } = bolt;
    const capacity = capacityOf(bolt, loaded, My);
    return isProblem(capacity) ? [] : [
        ...(My < fastener.My_Rk ? [hingeStep(My)] : []),
        ...leafSteps(leaves[loaded.plane]!, fastener, loaded.force, '1'),
        ...leafSteps(leaves[loaded.plane + 1]!, fastener, loaded.force, '2'),
        ...capacity.explain().map((line, i, all) =>
            i < all.length - 1 ? line : { ...line, symbol, note: `${line.note}; shear plane ${loaded.plane + 1}: ${reading}` })
    ];
}

function hingeStep(My: number): Step {
    return step('M_{y,Rk}', 'm', [['m', My, 'N·mm', 'moment that the bolt can have in the middle of an inner leaf']], { value: My, unit: 'N·mm' },
        { clause: 'EN 1995-1-1 8.1.3(2)', note: 'own derivation from the lower-bound theorem of plasticity' });
}

function sumStep(main: Part, besides: Part, demand: number, Rk: number): Step {
    return step('F_{v,Rk}', '\\frac{F_{v,Ed}}{\\frac{F_p}{F_{v,Rk,p}} + \\frac{F_r}{F_{v,Rk,r}}}', [
        ['F_{v,Ed}', demand, 'N'],
        ['F_p', magnitude(main.loaded.force), 'N', 'to-and-fro part'], ['F_{v,Rk,p}', main.strength, 'N'],
        ['F_r', magnitude(besides.loaded.force), 'N', 'what differs from it'], ['F_{v,Rk,r}', besides.strength, 'N']
    ], newton(Rk), { note: 'own derivation from the lower-bound theorem of plasticity' });
}
