import type { Step } from '../../../results.js';
import { newton, step } from '../../steps.js';
import { isProblem, unsound, type Problem } from '../../verdict.js';
import { leastCapacity, modeOf, modeSteps, type Mode, type ModeRule, type PlaneNumbers } from './mode-rule.js';
import { readingOf, type Dowel, type PlaneReading, type Side } from './plane-reading.js';

export interface PlaneCapacity {
    /** Characteristic, N for one bolt and this plane. */
    readonly capacity: number;
    /** Every mode with its value. */
    readonly modes: readonly Mode[];
    /** Letter of the mode that governs, or two where a plate is between thin and thick. */
    readonly governing: string;
    readonly explain: () => readonly Step[];
}

/** Characteristic capacity of one bolt in one shear plane, all modes. EN 1995-1-1 8.2.2 and 8.2.3. */
export function planeCapacity(dowel: Dowel, near: Side, far: Side): PlaneCapacity | Problem {
    const wrong = unsound('positive', { 'the bolt diameter': dowel.d, 'the yield moment': dowel.My_Rk })
        ?? unsound('not negative', { 'the axial capacity': dowel.Fax_Rk })
        ?? badSide(near) ?? badSide(far);
    const reading = wrong ?? readingOf(dowel, near, far);
    return isProblem(reading) ? reading : {
        capacity: capacityOf(reading),
        modes: rulesOf(reading).map(rule => modeOf(rule, reading.numbers)),
        governing: governing(reading),
        explain: () => explainReading(reading)
    };
}

/** As `planeCapacity`, N alone, for sides known to be sound and not both of steel. */
export function planeStrength(dowel: Dowel, near: Side, far: Side): number {
    const reading = readingOf(dowel, near, far);
    return isProblem(reading) ? 0 : capacityOf(reading);
}

function badSide(side: Side): Problem | undefined {
    return side.kind === 'timber'
        ? unsound('positive', { 'the timber thickness': side.thickness, 'the embedment strength': side.fh_k })
        : unsound('positive', { 'the plate thickness': side.thickness })
            ?? unsound('not negative', { 'the hole clearance': side.clearance });
}

function rulesOf({ rules, thick }: PlaneReading): readonly ModeRule[] {
    return thick ? [...rules, ...thick.rules] : rules;
}

function capacityOf({ rules, thick, numbers }: PlaneReading): number {
    const thin = leastCapacity(rules, numbers);
    return thick ? thin + thick.weight * (leastCapacity(thick.rules, numbers) - thin) : thin;
}

function governing({ rules, thick, numbers }: PlaneReading): string {
    const first = leastMode(rules, numbers);
    return thick ? `between ${first.letter} and ${leastMode(thick.rules, numbers).letter}` : first.letter;
}

function leastMode(rules: readonly ModeRule[], numbers: PlaneNumbers): ModeRule {
    return rules.reduce((least, rule) => modeOf(rule, numbers).capacity < modeOf(least, numbers).capacity ? rule : least);
}

function explainReading(reading: PlaneReading): readonly Step[] {
    const { rules, thick, numbers } = reading;
    const modes = rulesOf(reading).flatMap(rule => modeSteps(rule, numbers));
    const symbol = 'F_{v,Rk}';
    if (!thick) {
        return [...modes, leastStep(rules, numbers, symbol)];
    }
    const [thin, full] = ['F_{v,Rk,thin}', 'F_{v,Rk,thick}'];
    return [
        ...modes, leastStep(rules, numbers, thin), leastStep(thick.rules, numbers, full),
        step(symbol, `${thin} + \\frac{t_s - 0.5\\,d}{0.5\\,d}\\left(${full} - ${thin}\\right)`, [
            [thin, leastCapacity(rules, numbers), 'N'], [full, leastCapacity(thick.rules, numbers), 'N'],
            ['t_s', thick.plate.thickness, 'mm', 'steel plate'], ['d', numbers.d, 'mm']
        ], newton(capacityOf(reading)), { clause: 'EN 1995-1-1 8.2.3(1)', note: 'plate between thin and thick' })
    ];
}

function leastStep(rules: readonly ModeRule[], numbers: PlaneNumbers, symbol: string): Step {
    const modes = rules.map(rule => ({ rule, symbol: `F_{v,Rk,${rule.letter}}`, value: modeOf(rule, numbers).capacity }));
    const least = modes.reduce((lowest, mode) => mode.value < lowest.value ? mode : lowest);
    return step(symbol, `\\min\\left\\{${modes.map(mode => mode.symbol).join(';\\;')}\\right\\}`,
        modes.map(mode => [mode.symbol, mode.value, 'N', mode.rule.name]), newton(least.value),
        { clause: least.rule.clause, note: `mode (${least.rule.letter}): ${least.rule.name}` });
}
