/** A step of a calculation as one line of plain text, for hovers and terminals. */
import type { Step } from '../results.js';
import { inCalculation, ratioUp } from './numbers.js';
import { prose } from './prose.js';
import { nameOf, printPlain } from './math/plain.js';
import { substitute } from './math/substitute.js';
import { parseTex } from './math/tex.js';

/** E.g. `σ_m,y,d = M / W = 3.48 kN·m / 633 cm³ = 5.50 MPa`; parts that would only repeat are left out. */
export function stepToText(step: Step): string {
    const formula = parseTex(step.formula);
    const parts = [texToText(step.symbol), printPlain(formula), printPlain(substitute(formula, step.terms)), isUtilisation(step) ? ratioUp(step.result.value) : inCalculation(step.result)];
    return parts.filter((part, i) => part !== '' && part !== parts[i - 1]).join(' = ');
}

/** The last line of a check: it is rounded up like every utilisation. */
export function isUtilisation({ symbol, result }: Step): boolean {
    return symbol === '\\eta' && result.unit === '';
}

/** TeX as plain text: `k_{c,90}` → `k_c,90`. */
export function texToText(tex: string): string {
    return printPlain(parseTex(tex));
}

/** A sentence that may name a symbol in TeX. */
export function proseToText(sentence: string): string {
    return prose(sentence.replace(/\\[a-zA-Z]+/g, nameOf));
}
