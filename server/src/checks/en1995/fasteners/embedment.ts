import type { Step } from '../../../results.js';
import { MPa, plain, step, type TermRow } from '../../steps.js';
import { problem, unsound, type Problem } from '../../verdict.js';

export type Wood = 'softwood' | 'hardwood' | 'LVL';

/** EN 1995-1-1 8.5.1.1 is for bolts up to this diameter, mm. */
export const greatestBolt = 30;

export interface EmbedmentInput {
    /** mm. */
    readonly d: number;
    /** kg/m³. */
    readonly rho_k: number;
    readonly wood: Wood;
    /** Force to grain, rad, 0 to π/2. */
    readonly angle: number;
}

export interface Embedment {
    /** MPa, along the grain. */
    readonly fh0_k: number;
    readonly k90: number;
    /** MPa, at the angle. */
    readonly fh_k: number;
    readonly explain: () => readonly Step[];
}

/** Embedment strength along the grain, MPa. EN 1995-1-1 (8.32). */
export function embedmentAlong(d: number, rho_k: number): number {
    return 0.082 * (1 - 0.01 * d) * rho_k;
}

const k90AtNought: Readonly<Record<Wood, number>> = { softwood: 1.35, LVL: 1.30, hardwood: 0.90 };

/** EN 1995-1-1 (8.33). */
export function k90Of(wood: Wood, d: number): number {
    return k90AtNought[wood] + 0.015 * d;
}

/** Embedment strength at an angle, MPa, for inputs known to be sound. EN 1995-1-1 (8.31). */
export function embedmentAt({ d, rho_k, wood, angle }: EmbedmentInput): number {
    return embedmentAlong(d, rho_k) / (k90Of(wood, d) * Math.sin(angle) ** 2 + Math.cos(angle) ** 2);
}

/** Embedment strength of a bolt in timber or LVL. EN 1995-1-1 8.5.1.1. */
export function embedment(input: EmbedmentInput): Embedment | Problem {
    return unsound('positive', { 'the bolt diameter': input.d, 'the density': input.rho_k })
        ?? unsound('not negative', { 'the angle to the grain': input.angle })
        ?? tooThick(input.d)
        ?? {
            fh0_k: embedmentAlong(input.d, input.rho_k),
            k90: k90Of(input.wood, input.d),
            fh_k: embedmentAt(input),
            explain: () => embedmentSteps(input, '')
        };
}

export function tooThick(d: number): Problem | undefined {
    return d > greatestBolt ? problem(`the bolt is ${d} mm thick: EN 1995-1-1 8.5.1.1 goes up to ${greatestBolt} mm`) : undefined;
}

/** `index` tells the timbers of a joint apart: `1`, `2`, or nothing. */
export function embedmentSteps(input: EmbedmentInput, index: string): readonly Step[] {
    const indexed = index && `,${index}`;
    const fhSymbol = `f_{h${indexed},0,k}`;
    const k90Symbol = `k_{90${indexed}}`;
    const alpha = index ? `\\alpha_${index}` : '\\alpha';
    const rho = `\\rho_{k${indexed}}`;
    const d: TermRow = ['d', input.d, 'mm'];
    const fh0 = embedmentAlong(input.d, input.rho_k);
    const k90 = k90Of(input.wood, input.d);
    return [
        step(fhSymbol, `0.082\\,(1 - 0.01\\,d)\\,${rho}`, [d, [rho, input.rho_k, 'kg/m³', 'density of the timber']],
            MPa(fh0), { clause: 'EN 1995-1-1 (8.32)' }),
        step(k90Symbol, `${k90AtNought[input.wood].toFixed(2)} + 0.015\\,d`, [d], plain(k90),
            { clause: 'EN 1995-1-1 (8.33)', note: input.wood }),
        step(`f_{h${indexed},k}`, `\\frac{${fhSymbol}}{${k90Symbol}\\,\\sin^2 ${alpha} + \\cos^2 ${alpha}}`,
            [[fhSymbol, fh0, 'MPa'], [k90Symbol, k90, ''], [alpha, input.angle * 180 / Math.PI, '°', 'force to grain']],
            MPa(embedmentAt(input)), { clause: 'EN 1995-1-1 (8.31)' })
    ];
}
