/** The numbers of a proof load. N, mm, MPa, kg. */
import type { LoadTest, Member, Model, TestWeight } from '../../../language/src/model.js';
import type { Actions } from '../analysis/actions.js';
import { connectedGroups } from '../analysis/groups.js';
import type { TimberStrength } from '../catalog/timber.js';
import { backFigure, type BackFigured } from './back-figure.js';
import { benchModel } from './bench.js';
import { recoveryOf, softeningOf } from './criteria.js';
import { sinkingOf, type Sinking } from './flexibility.js';
import { moduliBand, type ModuliBand } from './moduli.js';
import { peakOf, solveUnfactored, type Peak } from './solve.js';

export interface Point {
    readonly weight: TestWeight;
    readonly predicted: number;
    /** With the modulus that one piece in twenty goes beyond, and the one that one in twenty falls below. */
    readonly low: number;
    readonly high: number;
    readonly read?: number;
}

export interface Shares { readonly moment: number; readonly shear: number }

export interface Figures {
    readonly points: readonly Point[];
    /** The heaviest that a reading shows to have been on; of a prediction alone the heaviest that is planned. */
    readonly greatest: Point;
    /** Of timber. */
    readonly band?: ModuliBand;
    readonly back?: BackFigured;
    /** After unloading, mm. */
    readonly residual?: number;
    readonly recovery?: number;
    readonly softening?: number;
    /** Of the member's greatest moment and shear in any stage, its own weight counted on both sides. */
    readonly service?: Shares;
    readonly design?: Shares;
}

/** A sentence where it cannot be computed. */
export function figuresOf(model: Model, test: LoadTest, member: Member, strength: TimberStrength | undefined, actions: Actions): Figures | string {
    const [first] = test.weights;
    if (!first) {
        return 'no weight is given';
    }
    const laid = solveUnfactored(benchModel(model, test, member, first, { selfWeight: true }));
    if (laid.members.length === 0) {
        return laid.findings[0]?.message ?? `${member.name} cannot be analysed on its blocks`;
    }
    const sinking = sinkingOf(model, test, member);
    const band = strength && moduliBand(strength);
    const points = pointsOf(test, sinking, band);
    if (points.some(({ predicted, low, high }) => ![predicted, low, high].every(Number.isFinite))) {
        return 'a weight stands where the member has nothing to carry it';
    }
    const shown = points.filter(({ read }) => read !== undefined);
    const [greatest] = [...shown.length > 0 ? shown : points].sort((a, b) => b.weight.mass.value - a.weight.mass.value);
    const peaks = heaviestOfEachPlace(shown.length > 0 ? shown : points).map(weight => weight === first ? peakOf(laid.members, member.name)! : peakOnBench(model, test, member, weight));
    const residual = test.readings.filter(({ mass }) => mass.value === 0).at(-1)?.deflection.value;
    const most = Math.max(...shown.map(({ read = 0 }) => read));
    const peak: Peak = { M: Math.max(...peaks.map(({ M }) => M)), V: Math.max(...peaks.map(({ V }) => V)) };
    return {
        points, greatest: greatest!,
        ...band && { band, back: backFiguredFrom(shown, sinking, band) },
        ...residual !== undefined && { residual, recovery: recoveryOf(most, residual) },
        softening: softeningOf(shown.flatMap(({ predicted, read }) => read === undefined ? [] : [{ predicted, read }])),
        service: sharesOf(peak, peakOf(solveUnfactored(joinedTo(model, member)).members, member.name)),
        design: sharesOf(peak, peakOf(actions.members, member.name))
    };
}

function pointsOf(test: LoadTest, sinking: Sinking, band: ModuliBand | undefined): readonly Point[] {
    return test.weights.flatMap((weight, i): Point[] => {
        const point = { weight, predicted: sinking(weight, band?.mean), low: sinking(weight, band?.high), high: sinking(weight, band?.low) };
        const reads = test.readings.filter(({ mass }) => test.weights.findIndex(other => sameMass(other.mass.value, mass.value)) === i);
        return reads.length === 0 ? [point] : reads.map(({ deflection }) => ({ ...point, read: deflection.value }));
    });
}

/** As near as the language takes a reading's mass for a weight's. */
const sameMass = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(a, b);

/** G is held at the class's mean, so that shear is taken off before E is found. */
function backFiguredFrom(points: readonly Point[], sinking: Sinking, { mean }: ModuliBand): BackFigured | undefined {
    const readings = points.map(({ read = NaN, weight }) => ({ read, predicted: (E: number) => sinking(weight, { E, G: mean.G }) }));
    return readings.length === 0 ? undefined : backFigure(readings, mean.E);
}

/** With one place the heaviest weight bends it most. */
function heaviestOfEachPlace(points: readonly Point[]): readonly TestWeight[] {
    const rising = points.map(({ weight }) => weight).sort((a, b) => a.mass.value - b.mass.value);
    return [...new Map(rising.map(weight => [`${weight.at.value} ${weight.spread?.value}`, weight])).values()];
}

function peakOnBench(model: Model, test: LoadTest, member: Member, weight: TestWeight): Peak {
    return peakOf(solveUnfactored(benchModel(model, test, member, weight, { selfWeight: true })).members, member.name) ?? { M: NaN, V: NaN };
}

function joinedTo(model: Model, member: Member): Model {
    const byName = new Map(model.members.map(one => [one.name, one]));
    return { ...model, members: connectedGroups(model, byName).find(group => group.includes(member)) ?? [member] };
}

function sharesOf(test: Peak, member: Peak | undefined): Shares | undefined {
    return member && member.M > 0 && member.V > 0 ? { moment: test.M / member.M, shear: test.V / member.V } : undefined;
}
