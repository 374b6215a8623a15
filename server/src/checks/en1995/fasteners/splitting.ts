import { newton, step } from '../../steps.js';
import { problem, unsound, type Problem, type Verdict } from '../../verdict.js';
import { designStep, designValue, unsoundFactors, type DesignFactors } from './design-value.js';
import type { Wood } from './embedment.js';
import { verifyForce } from './verify.js';

export interface SplittingInput {
    /** Breadth of the timber, mm; of a joint with timbers on either side, of the one that is checked. */
    readonly b: number;
    /** Depth of the timber, mm. */
    readonly h: number;
    /** From the loaded edge to the farthest bolt, mm. */
    readonly he: number;
    readonly wood: Wood;
}

/** Characteristic splitting capacity, N, of softwood across the grain at a bolted joint. EN 1995-1-1 (8.4), w = 1. */
export function splittingCapacity({ b, h, he, wood }: SplittingInput): number | Problem {
    const wrong = unsound('positive', { 'the breadth': b, 'the depth': h, 'the distance to the loaded edge': he });
    if (wrong) {
        return wrong;
    }
    if (wood !== 'softwood') {
        return problem(`EN 1995-1-1 8.1.4(3) gives the splitting capacity of softwood alone, not of ${wood}`);
    }
    return he < h
        ? 14 * b * Math.sqrt(he / (1 - he / h))
        : problem(`the farthest bolt is ${he} mm from the loaded edge of a timber ${h} mm deep: it stands outside`);
}

/**
 * Splitting by the part of a joint's force across the grain. EN 1995-1-1 8.1.4: the demand is the greater of the
 * design shear forces in the timber on either side of the joint, N.
 */
export function splitting(input: SplittingInput, shear: readonly [number, number], factors: DesignFactors): Verdict | Problem {
    const Rk = splittingCapacity(input);
    const demand = Math.max(Math.abs(shear[0]), Math.abs(shear[1]));
    const wrong = unsound('not negative', { 'the shear force': demand }) ?? unsoundFactors(factors);
    if (wrong || typeof Rk !== 'number') {
        return wrong ?? Rk as Problem;
    }
    return verifyForce({
        demand, demandSymbol: 'F_{v,Ed}', capacity: designValue(Rk, factors), capacitySymbol: 'F_{90,Rd}', clause: 'EN 1995-1-1 (8.2)'
    }, () => [
        step('F_{90,Rk}', '14\\,b\\,\\sqrt{\\frac{h_e}{1 - \\frac{h_e}{h}}}',
            [['b', input.b, 'mm'], ['h_e', input.he, 'mm', 'loaded edge to the farthest bolt'], ['h', input.h, 'mm']],
            newton(Rk), { clause: 'EN 1995-1-1 (8.4)' }),
        designStep('F_{90,Rd}', 'F_{90,Rk}', Rk, factors)
    ]);
}
