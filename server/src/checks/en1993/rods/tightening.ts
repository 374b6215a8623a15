import type { Step } from '../../../results.js';
import { kN, mm, step } from '../../steps.js';
import { unsound, type Problem } from '../../verdict.js';

/** A timber between head and foot plate, across the grain. */
export interface DryingTimber {
    readonly name: string;
    /** mm between the plates. */
    readonly depth: number;
    /** Ratios: 17 % is 0.17. */
    readonly moisture: number;
    readonly expectedMoisture: number;
}

export interface TighteningInput {
    /** Tension of all rods when tightened, N. */
    readonly tightening: number;
    readonly timbers: readonly DryingTimber[];
    /** Of the hanger, N/mm. */
    readonly stiffness: number;
    /** How far the two members spring together for 1 N less in the hanger, mm/N; nought for members that do not give. */
    readonly membersFlexibility?: number;
}

export interface TighteningLoss {
    /** Shrinkage of both timbers together, mm; negative where they swell. */
    readonly slack: number;
    /** What the tightening stretched and bent, mm. */
    readonly stretch: number;
    /** N lost of the tightening; negative where swelling adds to it. */
    readonly loss: number;
    readonly left: number;
    /** Points of moisture (ratio), lost by every timber, after which half the tightening is gone: time to tighten again. */
    readonly halfGoneAfter: number;
    readonly explain: () => readonly Step[];
}

/**
 * Strain across the grain for 1 of moisture (0.25 % for 1 %), softwood. Seen in a wood technology institute's rule
 * for sawn softwood; the same as EN 336, from memory.
 */
export const shrinkagePerMoisture = 0.25;

/** Above it wood neither shrinks nor swells: 30 % as that rule's upper end (fibre saturation is nearer 28 %). */
export const fibreSaturation = 0.30;

/**
 * What drying takes of a hanger's tightening: the slack of both timbers against the elastic give of all that
 * was tightened. EN 1995-1-1 10.4.3(3) asks to tighten again when the timber has reached its moisture.
 */
export function tighteningLoss({ tightening, timbers, stiffness, membersFlexibility = 0 }: TighteningInput): TighteningLoss | Problem {
    const bad = unsound('not negative', { 'the tightening': tightening, 'the give of the members': membersFlexibility })
        ?? unsound('positive', { 'the stiffness of the hanger': stiffness, 'the number of timbers': timbers.length })
        ?? timbers.map(({ name, depth, moisture, expectedMoisture }) => unsound('positive', { [`the depth of ${name}`]: depth })
            ?? unsound('not negative', { [`the moisture of ${name}`]: moisture, [`the expected moisture of ${name}`]: expectedMoisture })).find(found => found !== undefined);
    if (bad) {
        return bad;
    }
    const give = 1 / stiffness + membersFlexibility;
    const slack = timbers.reduce((sum, timber) => sum + shrinkageOf(timber), 0);
    const loss = Math.min(tightening, slack / give);
    const depth = timbers.reduce((sum, timber) => sum + timber.depth, 0);
    const stretch = tightening * give;
    return {
        slack, stretch, loss, left: tightening - loss, halfGoneAfter: stretch / 2 / (shrinkagePerMoisture * depth),
        explain: () => lossSteps(timbers, { slack, stretch, give, loss, tightening })
    };
}

function shrinkageOf({ depth, moisture, expectedMoisture }: DryingTimber): number {
    return shrinkagePerMoisture * depth * (Math.min(moisture, fibreSaturation) - Math.min(expectedMoisture, fibreSaturation));
}

function lossSteps(
    timbers: readonly DryingTimber[],
    { slack, stretch, give, loss, tightening }: { readonly slack: number; readonly stretch: number; readonly give: number; readonly loss: number; readonly tightening: number }
): readonly Step[] {
    const shrinkages = timbers.map((timber, i) => step(`\\Delta_${i + 1}`, `0.25\\,h_${i + 1}\\,(u_${i + 1} - u'_${i + 1})`, [
        [`h_${i + 1}`, timber.depth, 'mm', timber.name],
        [`u_${i + 1}`, Math.min(timber.moisture, fibreSaturation), '', 'moisture now, at most 30 %'],
        [`u'_${i + 1}`, Math.min(timber.expectedMoisture, fibreSaturation), '', 'expected']
    ], mm(shrinkageOf(timber)), { note: '0.25 % across the grain for 1 % of moisture' }));
    return [
        ...shrinkages,
        step('\\Delta', timbers.map((_, i) => `\\Delta_${i + 1}`).join(' + '), timbers.map((timber, i) => [`\\Delta_${i + 1}`, shrinkageOf(timber), 'mm']), mm(slack)),
        step('\\delta', 'T\\,f', [['T', tightening, 'N', 'tightening'], ['f', give, 'mm/N', 'give of hanger and members']], mm(stretch)),
        step('\\Delta T', '\\min\\left(T,\\;\\frac{\\Delta}{f}\\right)', [['T', tightening, 'N'], ['\\Delta', slack, 'mm'], ['f', give, 'mm/N']], kN(loss), { clause: 'EN 1995-1-1 10.4.3(3)' })
    ];
}
