import { newton, step, type TermRow } from '../../steps.js';
import { problem, unsound, type Problem, type Verdict } from '../../verdict.js';
import { designStep, designValue, unsoundFactors, type DesignFactors } from './design-value.js';
import { verifyForce } from './verify.js';

/** A group of bolts through a steel plate near the end of a timber. Lengths mm, strengths MPa. */
export interface BlockShearInput {
    /** Timber thickness; half of a middle timber between two plates. */
    readonly t1: number;
    /** Rows along the grain, bolts in each. */
    readonly rows: number;
    readonly bolts: number;
    /** Spacing along and across the grain, and distance to the loaded end. */
    readonly a1: number;
    readonly a2: number;
    readonly a3: number;
    /** Diameter of the hole in the timber. */
    readonly hole: number;
    readonly d: number;
    readonly My_Rk: number;
    readonly fh_k: number;
    readonly ft0_k: number;
    readonly fv_k: number;
    /** Letter of the governing mode of 8.2.3. */
    readonly mode: string;
}

export interface BlockShear {
    /** Net lengths along and across the grain, mm. */
    readonly Lv: number;
    readonly Lt: number;
    /** Net areas, mm². */
    readonly Av: number;
    readonly At: number;
    /** Depth of the plug, mm; undefined where the whole thickness shears. */
    readonly tef: number | undefined;
    /** Characteristic, N. */
    readonly Fbs_Rk: number;
}

/** Modes in which the bolt presses on the whole thickness. EN 1995-1-1 (A.3). */
const wholeThickness = 'cfjlkm';

/**
 * Block shear and plug shear of timber around the bolts of a steel plate. EN 1995-1-1 Annex A (informative), from
 * memory; a single row is taken with no net tension and both sides of the row in shear, which the annex does not say.
 */
export function blockShear(input: BlockShearInput): BlockShear | Problem {
    const { t1, rows, bolts, a1, a2, a3, hole, d } = input;
    const wrong = unsound('positive', {
        'the timber thickness': t1, 'the number of rows': rows, 'the number of bolts': bolts, 'the end distance': a3, 'the hole': hole,
        'the bolt diameter': d, 'the yield moment': input.My_Rk, 'the embedment strength': input.fh_k,
        'the tension strength': input.ft0_k, 'the shear strength': input.fv_k,
        ...(bolts > 1 && { 'the bolt spacing': a1 }), ...(rows > 1 && { 'the row spacing': a2 })
    });
    if (wrong) {
        return wrong;
    }
    const Lv = 2 * (a3 - hole / 2 + (bolts - 1) * (a1 - hole));
    const Lt = (rows - 1) * (a2 - hole);
    if (Lv <= 0 || Lt < 0) {
        return problem('the holes leave no timber between bolts, rows and end');
    }
    const whole = wholeThickness.includes(input.mode);
    const tef = whole ? undefined : plugDepth(input);
    const At = Lt * t1;
    const Av = tef === undefined ? Lv * t1 : Lv / 2 * (Lt + 2 * tef);
    return { Lv, Lt, Av, At, tef, Fbs_Rk: Math.max(1.5 * At * input.ft0_k, 0.7 * Av * input.fv_k) };
}

/** EN 1995-1-1 (A.6) for thin plates, (A.7) for thick ones, from memory; never more than the timber. */
function plugDepth({ mode, t1, d, My_Rk, fh_k }: BlockShearInput): number {
    const ratio = My_Rk / (fh_k * d);
    const depth = mode === 'a' ? 0.4 * t1
        : mode === 'b' ? 1.4 * Math.sqrt(ratio)
        : mode === 'd' || mode === 'g' ? t1 * (Math.sqrt(2 + ratio / t1 ** 2) - 1)
        : 2 * Math.sqrt(ratio);
    return Math.min(depth, t1);
}

/** Force of the group along the grain, N, against block and plug shear. EN 1995-1-1 Annex A. */
export function verifyBlockShear(input: BlockShearInput, forceAlong: number, factors: DesignFactors): Verdict | Problem {
    const found = blockShear(input);
    const wrong = unsound('not negative', { 'the force along the grain': forceAlong }) ?? unsoundFactors(factors);
    if (wrong || 'problem' in found) {
        return wrong ?? found as Problem;
    }
    const clause = 'EN 1995-1-1 Annex A (A.1)';
    return verifyForce({
        demand: forceAlong, demandSymbol: 'F_{bs,Ed}', capacity: designValue(found.Fbs_Rk, factors), capacitySymbol: 'F_{bs,Rd}', clause
    }, () => [
        ...areaSteps(input, found),
        step('F_{bs,Rk}', '\\max\\left(1.5\\,A_{net,t}\\,f_{t,0,k},\\;0.7\\,A_{net,v}\\,f_{v,k}\\right)', [
            ['A_{net,t}', found.At, 'mm2'], ['f_{t,0,k}', input.ft0_k, 'MPa'], ['A_{net,v}', found.Av, 'mm2'], ['f_{v,k}', input.fv_k, 'MPa']
        ], newton(found.Fbs_Rk), { clause }),
        designStep('F_{bs,Rd}', 'F_{bs,Rk}', found.Fbs_Rk, factors)
    ]);
}

function areaSteps({ t1 }: BlockShearInput, { Lv, Lt, Av, At, tef }: BlockShear) {
    const thickness: TermRow = ['t_1', t1, 'mm'];
    const across: TermRow = ['L_{net,t}', Lt, 'mm', 'between the holes across the grain'];
    const along: TermRow = ['L_{net,v}', Lv, 'mm', 'between the holes along the grain, both sides'];
    return [
        step('A_{net,t}', 'L_{net,t}\\,t_1', [across, thickness], { value: At, unit: 'mm2' }, { clause: 'EN 1995-1-1 (A.2)' }),
        tef === undefined
            ? step('A_{net,v}', 'L_{net,v}\\,t_1', [along, thickness], { value: Av, unit: 'mm2' }, { clause: 'EN 1995-1-1 (A.3)' })
            : step('A_{net,v}', '\\frac{L_{net,v}}{2}\\left(L_{net,t} + 2\\,t_{ef}\\right)',
                [along, across, ['t_{ef}', tef, 'mm', 'depth of the plug, (A.6) or (A.7)']], { value: Av, unit: 'mm2' }, { clause: 'EN 1995-1-1 (A.3)' })
    ];
}
