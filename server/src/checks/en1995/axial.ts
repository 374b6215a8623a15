/** Stress by an axial force that goes with bending; a loss on one side moves the axis and so bends the member sideways. */
import { kmRectangle } from '../../catalog/tables/member-factors.js';
import type { ActionState, Segment } from '../../analysis/actions.js';
import type { Step, Term } from '../../results.js';
import type { MemberContext } from '../check.js';
import type { Place } from '../governing.js';
import { amount, step, term } from '../steps.js';
import { bendingStress, bendingStressSteps } from './bending.js';
import { sectionTerms, wholeSection } from './section.js';
import { sizeFactor } from './size-factor.js';

export interface AxialStresses {
    /** Positive whichever way it acts, MPa. */
    readonly axial: number;
    readonly my: number;
    readonly mz: number;
}

export function axialStresses({ N, M }: Pick<ActionState, 'N' | 'M'>, { b, h, shiftRight }: Segment): AxialStresses {
    return { axial: Math.abs(N) / (b * h), my: bendingStress(M, b, h), mz: bendingStress(N * shiftRight, h, b) };
}

/** k_h for bending sideways: the depth is then the breadth. */
export function sidewaysSizeFactor({ member, strength }: MemberContext): number {
    return sizeFactor(strength, wholeSection(member).b);
}

/** Shares of strength used up by bending about both axes, the one about z and then the one about y reduced by k_m, 6.1.6(1). */
export interface Sums { readonly y: number; readonly z: number }

export function bendingSums(my: number, mz: number): Sums {
    return { y: my + kmRectangle * mz, z: kmRectangle * my + mz };
}

/** The axis whose sum governs. */
export function governingAxis({ y, z }: Sums): 'y' | 'z' {
    return y >= z ? 'y' : 'z';
}

/** The last line: shares of axial stress and of bending, with k_m at the axis that does not govern. */
export function sumStep(
    axialShare: string, axialTerms: readonly Term[], { my, mz }: AxialStresses, { fmy, fmz }: { readonly fmy: number; readonly fmz: number },
    sums: Sums, clauses: Readonly<Record<'y' | 'z', string>>
): Step {
    const axis = governingAxis(sums);
    const share = (of: 'y' | 'z'): string => `${of === axis ? '' : 'k_m '}\\frac{\\sigma_{m,${of},d}}{f_{m,${of},d}}`;
    const bends = { y: my > 0, z: mz > 0 };
    const formula = [axialShare, ...bends.y ? [share('y')] : [], ...bends.z ? [share('z')] : []].join(' + ');
    return step('\\eta', formula, [
        ...axialTerms,
        ...bends[axis === 'y' ? 'z' : 'y'] ? [term('k_m', kmRectangle, '', '6.1.6(2)')] : [],
        ...bends.y ? [term('\\sigma_{m,y,d}', my, 'MPa'), term('f_{m,y,d}', fmy, 'MPa')] : [],
        ...bends.z ? [term('\\sigma_{m,z,d}', mz, 'MPa'), term('f_{m,z,d}', fmz, 'MPa')] : []
    ], amount(sums[axis], ''), { clause: `EN 1995-1-1 ${clauses[axis]}`, note: 'has to be \\le 1' });
}

/** @param symbol of the axial stress in TeX */
export function axialStressSteps(context: MemberContext, place: Place, symbol: string): readonly Step[] {
    const { segment, state } = place;
    const { b, h } = sectionTerms(context.member, segment);
    const { axial, mz } = axialStresses(state, segment);
    const lateral = Math.abs(state.N * segment.shiftRight);
    const steps = [step(symbol, '\\frac{N_d}{b h}', [term('N_d', Math.abs(state.N) / 1000, 'kN'), b, h], amount(axial, 'MPa'))];
    if (state.M !== 0) {
        steps.push(...bendingStressSteps(context, place));
    }
    if (lateral > 0) {
        steps.push(step('\\sigma_{m,z,d}', '\\frac{6 N_d e_z}{h b^2}', [
            term('N_d', Math.abs(state.N) / 1000, 'kN'),
            term('e_z', Math.abs(segment.shiftRight), 'mm', 'the loss moves the axis sideways'), h, b
        ], amount(mz, 'MPa')));
    }
    return steps;
}
