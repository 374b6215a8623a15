import { mm, plain, quotient, step } from './steps.js';
import type { Verdict } from './verdict.js';

export interface Distance {
    /** mm. */
    readonly required: number;
    readonly provided: number;
    /** What it is, in words. */
    readonly what: string;
    readonly clause: string;
    /** Name of the rule: `a3,t`. */
    readonly rule?: string;
}

/** A distance that has to be, over the one that is there. */
export function distanceVerdict({ required, provided, what, clause, rule }: Distance): Verdict {
    const utilisation = quotient(required, provided);
    return {
        utilisation, demand: mm(required), capacity: mm(provided), clause,
        explain: () => [step('\\eta', '\\frac{a_{req}}{a_{prov}}', [
            ['a_{req}', required, 'mm', rule === undefined ? 'at least' : `at least, ${rule}`], ['a_{prov}', provided, 'mm', what]
        ], plain(utilisation), { clause, note: `${what}: ${provided.toFixed(0)} mm, at least ${Math.ceil(required - 1e-6)} mm` })]
    };
}
