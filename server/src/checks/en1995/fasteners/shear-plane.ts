import type { Step } from '../../../results.js';
import { problem, step, unsound, type Problem } from '../../en1993/verdict.js';
import { leastCapacity, modeOf, modeSteps, type Mode, type ModeRule, type PlaneNumbers } from './mode-rule.js';
import { centralPlate, thickOuterPlates, thickPlate, thinOuterPlates, thinPlate } from './steel-modes.js';
import { doubleShear, innerShear, singleShear } from './timber-modes.js';
import { newton } from './verify.js';

/** What one side of a shear plane is. Lengths mm, strengths MPa. */
export type Side = TimberSide | SteelSide;

export interface TimberSide {
    readonly kind: 'timber';
    /** The whole thickness that the bolt bears on. */
    readonly thickness: number;
    readonly fh_k: number;
    /** The bolt goes on through a further plane beyond, loaded alike: it cannot turn here, and half the thickness is this plane's. */
    readonly held: boolean;
}

export interface SteelSide {
    readonly kind: 'steel';
    readonly thickness: number;
    /** Diameter of the hole less that of the bolt. */
    readonly clearance: number;
    /** Timber lies on its other face too, loaded alike. */
    readonly held: boolean;
    /** The bolt may turn in it, whatever its thickness: it counts as thin. */
    readonly turning: boolean;
}

export interface Dowel {
    readonly d: number;
    readonly My_Rk: number;
    readonly Fax_Rk: number;
}

export interface PlaneCapacity {
    /** Characteristic, N for one bolt and this plane. */
    readonly capacity: number;
    /** Every mode with its value. */
    readonly modes: readonly Mode[];
    /** Letter of the mode that governs, or two where a plate is between thin and thick. */
    readonly governing: string;
    readonly explain: () => readonly Step[];
}

/** The modes that rule, and how far a plate is from thin (0) to thick (1). */
interface Reading {
    readonly numbers: PlaneNumbers;
    readonly rules: readonly ModeRule[];
    readonly thick?: { readonly rules: readonly ModeRule[]; readonly weight: number; readonly plate: SteelSide };
}

export const twoPlates = problem('two steel plates lie on one another: EN 1995-1-1 8.2 is for timber on timber or on steel');

/** Characteristic capacity of one bolt in one shear plane, all modes. EN 1995-1-1 8.2.2 and 8.2.3. */
export function planeCapacity(dowel: Dowel, near: Side, far: Side): PlaneCapacity | Problem {
    const wrong = unsound('positive', { 'the bolt diameter': dowel.d, 'the yield moment': dowel.My_Rk })
        ?? unsound('not negative', { 'the axial capacity': dowel.Fax_Rk })
        ?? badSide(near) ?? badSide(far);
    const reading = wrong ?? readingOf(dowel, near, far);
    return 'problem' in reading ? reading : {
        capacity: capacityOf(reading),
        modes: rulesOf(reading).map(rule => modeOf(rule, reading.numbers)),
        governing: governing(reading),
        explain: () => explainReading(reading)
    };
}

/** As `planeCapacity`, N alone, for sides known to be sound and not both of steel. */
export function planeStrength(dowel: Dowel, near: Side, far: Side): number {
    const reading = readingOf(dowel, near, far);
    return 'problem' in reading ? 0 : capacityOf(reading);
}

function badSide(side: Side): Problem | undefined {
    return side.kind === 'timber'
        ? unsound('positive', { 'the timber thickness': side.thickness, 'the embedment strength': side.fh_k })
        : unsound('positive', { 'the plate thickness': side.thickness })
            ?? unsound('not negative', { 'the hole clearance': side.clearance });
}

function readingOf(dowel: Dowel, near: Side, far: Side): Reading | Problem {
    if (near.kind === 'steel' && far.kind === 'steel') {
        return twoPlates;
    }
    if (near.kind === 'timber' && far.kind === 'timber') {
        return near.held && !far.held ? timberReading(dowel, far, near) : timberReading(dowel, near, far);
    }
    return near.kind === 'steel' ? plateReading(dowel, near, far as TimberSide) : plateReading(dowel, far as SteelSide, near);
}

function timberReading(dowel: Dowel, first: TimberSide, second: TimberSide): Reading {
    return {
        numbers: numbersOf(dowel, first, second),
        rules: !second.held ? singleShear : first.held ? innerShear : doubleShear
    };
}

function numbersOf({ d, My_Rk, Fax_Rk }: Dowel, first: TimberSide, second: TimberSide): PlaneNumbers {
    return { d, My_Rk, Fax_Rk, fh1_k: first.fh_k, t1: first.thickness, fh2_k: second.fh_k, t2: second.thickness };
}

function plateReading(dowel: Dowel, plate: SteelSide, timber: TimberSide): Reading {
    const numbers = numbersOf(dowel, timber, timber);
    if (plate.held) {
        return { numbers, rules: timber.held ? thickOuterPlates : centralPlate };
    }
    const [thin, thick] = timber.held ? [thinOuterPlates, thickOuterPlates] : [thinPlate, thickPlate];
    const weight = thickness(plate, dowel.d);
    return weight === 0 ? { numbers, rules: thin }
        : weight === 1 ? { numbers, rules: thick }
        : { numbers, rules: thin, thick: { rules: thick, weight, plate } };
}

/** mm: 13.2 less 12 is a tenth of 12. */
const roundOff = 1e-9;

/**
 * EN 1995-1-1 8.2.3(1): thin (0) up to 0.5 d, thick (1) from d on where the hole is less than 0.1 d wider
 * than the bolt, linear between. A plate with a wider hole holds the bolt too loosely and counts as thin.
 */
function thickness({ thickness, clearance, turning }: SteelSide, d: number): number {
    return turning || clearance > 0.1 * d - roundOff ? 0 : Math.min(1, Math.max(0, (thickness - 0.5 * d) / (0.5 * d)));
}

function rulesOf({ rules, thick }: Reading): readonly ModeRule[] {
    return thick ? [...rules, ...thick.rules] : rules;
}

function capacityOf({ rules, thick, numbers }: Reading): number {
    const thin = leastCapacity(rules, numbers);
    return thick ? thin + thick.weight * (leastCapacity(thick.rules, numbers) - thin) : thin;
}

function governing({ rules, thick, numbers }: Reading): string {
    const first = leastMode(rules, numbers);
    return thick ? `between ${first.letter} and ${leastMode(thick.rules, numbers).letter}` : first.letter;
}

function leastMode(rules: readonly ModeRule[], numbers: PlaneNumbers): ModeRule {
    return rules.reduce((least, rule) => modeOf(rule, numbers).capacity < modeOf(least, numbers).capacity ? rule : least);
}

function explainReading(reading: Reading): readonly Step[] {
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
