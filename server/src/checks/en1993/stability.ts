/**
 * EN 1993-1-1 6.3: sideways buckling of a beam (6.3.2), buckling of a strut (6.3.1), and both together (6.3.3 with
 * Annex B), whichever the forces of the length ask for.
 */
import { kN, kNm, plain, quotient, step } from '../steps.js';
import { against, againstOne, isProblem, problem, unsound, worst, type Problem, type Verdict } from '../verdict.js';
import { classify, type SectionClass } from './classification.js';
import type { LateralLength } from './critical-moment.js';
import { flexuralResistance, type FlexuralResistance } from './flexural-buckling.js';
import { lateralResistance, type LateralResistance } from './lateral-torsional.js';
import type { SteelMember } from './steel-member.js';

export interface StabilityInput {
    /** N mm, greatest of the length, either sign. */
    readonly M: number;
    /** N, tension positive: tension does not buckle and is not counted as a help. */
    readonly N: number;
    readonly lateral: LateralLength;
    /** Buckling lengths, mm; 0 where it cannot buckle that way. */
    readonly bucklingLength: { readonly y: number; readonly z: number };
    /** C_my and C_mLT of Table B.3; 1 is on the safe side and the default. */
    readonly equivalentMoment?: { readonly my: number; readonly mLT: number };
}

export const stabilityClause = 'EN 1993-1-1 6.3';

const longest = 1e6;
/** Of the same moment all along. */
const allAlong = { my: 1, mLT: 1 };

/** A problem for a channel in compression: it buckles by twisting too (6.3.1.4), which is not covered. */
export function stability(member: SteelMember, input: StabilityInput): Verdict | Problem {
    const compression = Math.max(-input.N, 0);
    const fault = faultOf(member, input);
    if (fault) {
        return fault;
    }
    const found = classify(member.section, member.steel, compression);
    if (isProblem(found)) {
        return found;
    }
    const beam = lateralResistance(member, found.sectionClass, input.lateral);
    const strut = { y: flexuralResistance(member, 'y', input.bucklingLength.y), z: flexuralResistance(member, 'z', input.bucklingLength.z) };
    if (compression === 0) {
        return against(Math.abs(input.M), beam.resistance, kNm, 'EN 1993-1-1 6.3.2', beam.explain);
    }
    return input.M === 0 ? ofStrut(compression, strut) : ofBoth(member, found.sectionClass, input, { compression, beam, strut });
}

function faultOf({ section }: SteelMember, { M, N, lateral, bucklingLength: { y, z }, equivalentMoment = allAlong }: StabilityInput): Problem | undefined {
    const bad = unsound('finite', { 'the moment': M, 'the axial force': N, 'the height of the load': lateral.loadHeight })
        ?? unsound('not negative', { 'the length between restraints': lateral.length, 'the buckling length': Math.min(y, z), C2: lateral.shape.C2 })
        ?? unsound('positive', { C1: lateral.shape.C1 });
    if (bad) {
        return bad;
    }
    if (Math.max(lateral.length, y, z) > longest) {
        return problem('a length between restraints of more than a kilometre');
    }
    if (Object.values(equivalentMoment).some(C => !(C >= 0.4 && C <= 1))) {
        return problem('the equivalent moment factors of EN 1993-1-1 Table B.3 are from 0.4 to 1');
    }
    return N < 0 && section.shape === 'channel'
        ? problem(`${section.name} in compression may buckle by twisting (EN 1993-1-1 6.3.1.4): not covered`) : undefined;
}

interface Strut { readonly y: FlexuralResistance; readonly z: FlexuralResistance }

function ofStrut(compression: number, { y, z }: Strut): Verdict {
    const about = (one: FlexuralResistance): Verdict => against(compression, one.resistance, kN, 'EN 1993-1-1 6.3.1', one.explain);
    return worst(about(y), about(z));
}

interface Resistances {
    readonly compression: number;
    readonly beam: LateralResistance;
    readonly strut: Strut;
}

function ofBoth(member: SteelMember, sectionClass: SectionClass, input: StabilityInput, given: Resistances): Verdict {
    const { compression, beam, strut } = given;
    const M = Math.abs(input.M);
    const { kyy, kzy } = interactionFactors(member, sectionClass, input, given);
    const about = (one: FlexuralResistance, k: number, equation: string): Verdict => {
        const sum = quotient(compression, one.resistance) + k * quotient(M, beam.resistance);
        return againstOne(sum, 'EN 1993-1-1 6.3.3', () => [
            ...beam.explain(), ...one.explain(),
            step('\\eta', `\\frac{N_{Ed}}{N_{b,${one.axis},Rd}} + k_{${one.axis}y} \\frac{M_{Ed}}{M_{b,Rd}}`, [
                ['N_{Ed}', compression / 1e3, 'kN'], [`N_{b,${one.axis},Rd}`, one.resistance / 1e3, 'kN'],
                [`k_{${one.axis}y}`, k, ''], ['M_{Ed}', M / 1e6, 'kNm'], ['M_{b,Rd}', beam.resistance / 1e6, 'kNm']
            ], plain(sum), { clause: `EN 1993-1-1 ${equation}, ${factorSource(member)}` })
        ]);
    };
    return worst(about(strut.y, kyy, '(6.61)'), about(strut.z, kzy, '(6.62)'));
}

const factorSource = ({ section }: SteelMember): string => section.shape === 'I'
    ? 'Annex B Tables B.1, B.2' : 'linear sum with the moment increased by 1/(1 - N/N_cr,y): standard theory, Annex B does not cover a flat';

/** k_yy and k_zy of Annex B for members that may twist. */
function interactionFactors({ section }: SteelMember, sectionClass: SectionClass, input: StabilityInput, given: Resistances): { kyy: number; kzy: number } {
    const { compression, strut: { y, z } } = given;
    if (section.shape !== 'I') {
        // At N_cr and beyond the axial force alone is above 1.
        const increased = 1 / Math.max(1 - compression / y.critical, 1e-6);
        return { kyy: increased, kzy: increased };
    }
    const { my, mLT } = input.equivalentMoment ?? allAlong;
    const ny = quotient(compression, y.resistance);
    const nz = quotient(compression, z.resistance);
    const plastic = sectionClass < 3;
    const kyy = plastic
        ? my * (1 + Math.min(y.slenderness - 0.2, 0.8) * ny)
        : my * (1 + 0.6 * Math.min(y.slenderness, 1) * ny);
    const c = plastic ? 0.1 : 0.05;
    const reduced = Math.max(1 - c * Math.min(z.slenderness, 1) * nz / (mLT - 0.25), 0);
    return { kyy, kzy: plastic && z.slenderness < 0.4 ? Math.min(0.6 + z.slenderness, reduced) : reduced };
}
