import { MPa, plain, quotient, step } from '../../steps.js';
import { unsound, type Problem, type Verdict } from '../../verdict.js';

export interface PlateOnGrainInput {
    /** Design force on the timber, N. */
    readonly force: number;
    /** Contact along the grain, mm, with what EN 1995-1-1 6.1.5(1) adds at its sides. */
    readonly effectiveLength: number;
    /** Contact across the grain, mm: the lesser of the plate and the sound face of the timber. */
    readonly width: number;
    /** Diameters of holes within the contact, mm. */
    readonly holes: readonly number[];
    readonly kc90: number;
    /** Design compressive strength across the grain, MPa. */
    readonly fc90_d: number;
}

/** Compression across the grain under a plate, on its contact less the holes. EN 1995-1-1 6.1.5 (6.3), (6.4). */
export function plateOnGrain({ force, effectiveLength, width, holes, kc90, fc90_d }: PlateOnGrainInput): Verdict | Problem {
    const hollow = holes.reduce((sum, hole) => sum + Math.PI / 4 * hole ** 2, 0);
    const area = effectiveLength * width - hollow;
    const bad = unsound('positive', { 'the contact along the grain': effectiveLength, 'the contact across the grain': width, 'k_c,90': kc90, 'the strength across the grain': fc90_d })
        ?? unsound('not negative', { 'the holes': hollow })
        ?? unsound('positive', { 'the contact less its holes': area })
        ?? unsound('finite', { 'the force on the plate': force });
    if (bad) {
        return bad;
    }
    const stress = Math.max(0, force) / area;
    const strength = kc90 * fc90_d;
    const utilisation = quotient(stress, strength);
    return {
        utilisation, demand: MPa(stress), capacity: MPa(strength), clause: 'EN 1995-1-1 6.1.5',
        explain: () => [
            step('A_{ef}', 'l_{ef}\\,b - A_0', [
                ['l_{ef}', effectiveLength, 'mm', 'along the grain'], ['b', width, 'mm', 'across the grain'], ['A_0', hollow, 'mm2', 'holes']
            ], { value: area, unit: 'mm2' }, { clause: 'EN 1995-1-1 6.1.5(1)' }),
            step('\\sigma_{c,90,d}', '\\frac{F_{c,90,d}}{A_{ef}}', [['F_{c,90,d}', Math.max(0, force), 'N'], ['A_{ef}', area, 'mm2']], MPa(stress), { clause: 'EN 1995-1-1 (6.4)' }),
            step('\\eta', '\\frac{\\sigma_{c,90,d}}{k_{c,90}\\,f_{c,90,d}}', [
                ['\\sigma_{c,90,d}', stress, 'MPa'], ['k_{c,90}', kc90, ''], ['f_{c,90,d}', fc90_d, 'MPa']
            ], plain(utilisation), { clause: 'EN 1995-1-1 (6.3)' })
        ]
    };
}
