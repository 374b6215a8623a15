/** What the file asks for beyond its checks: break-evens, proof loads, options. */
import { units } from '../../../language/src/units.js';
import { allBreakEvens, unitOf, type Certainty } from '../certainty/index.js';
import type { LoadTestResult, OptionResult, Verdict } from '../results.js';
import { amountOutput, finiteUse, orNull, type AmountOutput } from './amounts.js';

/** Of what was asked for first, then guesses by how near they sit to it. */
export interface BreakEvenOutput {
    readonly input: string;
    readonly given: InputOutput;
    /** Null where none is within reach. */
    readonly limit: InputOutput | null;
    readonly check: string | null;
    readonly stage: string | null;
    /** By a `breakeven` line. */
    readonly asked: boolean;
    /** What fails at the given value and no value mends: the limit is that of all others. */
    readonly aside: readonly string[];
    readonly sentence: string;
}

/** A class has a name and no unit. */
interface InputOutput {
    readonly value: number | string;
    readonly unit: string;
}

export interface LoadTestOutput {
    readonly name: string;
    readonly member: string;
    readonly outcome: LoadTestResult['outcome'];
    readonly points: readonly Readonly<Record<'weight' | 'predicted' | 'low' | 'high', AmountOutput> & { read: AmountOutput | null }>[];
    readonly E: AmountOutput | null;
    readonly scatter: AmountOutput | null;
    readonly recovery: AmountOutput | null;
    /** The test's moment and shear over the member's, in service and in design. */
    readonly shares: Readonly<Record<'service' | 'design', { readonly moment: number; readonly shear: number } | null>>;
    readonly verdict: string;
    readonly proves: readonly string[];
    readonly doesNotProve: readonly string[];
    readonly line: number;
}

export interface OptionOutput {
    /** Null of what the file says first. */
    readonly option: string | null;
    readonly title: string | null;
    readonly verdict: Verdict;
    readonly worst: { readonly check: string; readonly utilisation: number } | null;
    readonly deflection: AmountOutput | null;
    readonly mass: AmountOutput | null;
    readonly heaviestPiece: AmountOutput | null;
    readonly longestPiece: AmountOutput | null;
    readonly parts: number;
    readonly hazards: OptionResult['hazards'];
    readonly line: number;
}

export function breakEvenOutputs(certainty: Certainty): readonly BreakEvenOutput[] {
    return allBreakEvens(certainty).map(one => {
        const { path, given, limit, dimension, check, stage, aside, sentence } = one;
        const unit = unitOf({ value: given, dimension });
        const input = (value: number | string): InputOutput => ({ value: typeof value === 'number' ? value / (units.get(unit)?.factor ?? 1) : value, unit });
        return {
            input: path, given: input(given), limit: limit === undefined ? null : input(limit), check: check === '' ? null : check,
            stage: stage ?? null, asked: certainty.asked.includes(one), aside, sentence
        };
    });
}

export function loadTestOutput({ points, E, EScatter, recovery, momentShareService, shearShareService, momentShareDesign, shearShareDesign, ...test }: LoadTestResult): LoadTestOutput {
    const { name, member, outcome, verdict, proves, doesNotProve, source } = test;
    const shares = (moment: number | undefined, shear: number | undefined) => moment === undefined || shear === undefined ? null : { moment, shear };
    return {
        name, member, outcome,
        points: points.map(({ weight, predicted, low, high, read }) => ({
            weight: amountOutput(weight), predicted: amountOutput(predicted), low: amountOutput(low), high: amountOutput(high), read: orNull(read)
        })),
        E: orNull(E), scatter: orNull(EScatter), recovery: orNull(recovery),
        shares: { service: shares(momentShareService, shearShareService), design: shares(momentShareDesign, shearShareDesign) },
        verdict, proves, doesNotProve, line: source.line
    };
}

export function optionOutput({ name, title, verdict, worst, deflection, mass, heaviestPiece, longestPiece, parts, hazards, source }: OptionResult): OptionOutput {
    return {
        option: name, title: title ?? null, verdict,
        worst: worst ? { check: worst.id, utilisation: finiteUse(worst.utilisation) } : null,
        deflection: orNull(deflection?.final), mass: orNull(mass), heaviestPiece: orNull(heaviestPiece?.mass), longestPiece: orNull(longestPiece?.length),
        parts, hazards, line: source.line
    };
}
