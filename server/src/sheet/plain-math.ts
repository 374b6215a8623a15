/** A step of a calculation as one line of plain text, for hovers and terminals. */
import type { Step } from '../results.js';
import { amount, ratioUp } from './numbers.js';
import { substitute } from './math/substitute.js';
import { parseTex, type Atom, type Row } from './math/tex.js';

/** E.g. `σ_m,y,d = M / W = 3.48 kN·m / 633 cm³ = 5.50 MPa`; parts that would only repeat are left out. */
export function stepToText(step: Step): string {
    const formula = parseTex(step.formula);
    const parts = [texToText(step.symbol), plain(formula), plain(substitute(formula, step.terms)), isUtilisation(step) ? ratioUp(step.result.value) : amount(step.result)];
    return parts.filter((part, i) => part !== '' && part !== parts[i - 1]).join(' = ');
}

/** The last line of a check: it is rounded up like every utilisation. */
export function isUtilisation({ symbol, result }: Step): boolean {
    return symbol === '\\eta' && result.unit === '';
}

/** TeX as plain text: `k_{c,90}` → `k_c,90`. */
export function texToText(tex: string): string {
    return plain(parseTex(tex));
}

const named: Readonly<Record<string, string>> = {
    '\\alpha': 'α', '\\beta': 'β', '\\gamma': 'γ', '\\delta': 'δ', '\\Delta': 'Δ', '\\epsilon': 'ε', '\\varepsilon': 'ε', '\\zeta': 'ζ', '\\eta': 'η',
    '\\theta': 'θ', '\\kappa': 'κ', '\\lambda': 'λ', '\\mu': 'μ', '\\nu': 'ν', '\\xi': 'ξ', '\\pi': 'π', '\\rho': 'ρ', '\\sigma': 'σ', '\\Sigma': 'Σ',
    '\\sum': 'Σ', '\\tau': 'τ', '\\phi': 'φ', '\\varphi': 'φ', '\\chi': 'χ', '\\psi': 'ψ', '\\Psi': 'Ψ', '\\omega': 'ω', '\\Omega': 'Ω', '\\infty': '∞', '\\ell': 'ℓ',
    '\\cdot': '·', '\\times': '×', '\\le': '≤', '\\leq': '≤', '\\ge': '≥', '\\geq': '≥', '\\ne': '≠', '\\neq': '≠', '\\approx': '≈', '\\pm': '±',
    '\\to': '→', '\\Rightarrow': '⇒', '-': '−', '\\%': '%', '\\{': '{', '\\}': '}', '\\\\': ';', '&': ''
};
const nameOf = (tex: string): string => named[tex] ?? tex.replace(/^\\/, '');
const tight = new Set(['|', '!', ',', ';', ':', ')', ']']);

function plain(row: Row): string {
    const items = row.filter(atom => atom.kind !== 'space');
    return items.map((atom, i) => `${separator(items[i - 1], atom, items[i - 2])}${one(atom, items[i - 1])}`).join('').trim();
}

function separator(before: Atom | undefined, atom: Atom, earlier: Atom | undefined): string {
    if (!before || isSign(before, earlier)) {
        return '';
    }
    if (before.kind === 'operator') {
        return before.tex === ',' || before.tex === ';' || !tight.has(before.tex) ? ' ' : '';
    }
    if (atom.kind === 'operator') {
        return tight.has(atom.tex) ? '' : ' ';
    }
    if (before.kind === 'function') {
        return atom.kind === 'group' ? '' : ' ';
    }
    return before.kind === 'words' || atom.kind === 'words' ? ' ' : ' · ';
}

/** A plus or minus that belongs to what follows. */
function isSign(atom: Atom, before: Atom | undefined): boolean {
    return atom.kind === 'operator' && (atom.tex === '-' || atom.tex === '+') && (!before || before.kind === 'operator');
}

function one(atom: Atom, before: Atom | undefined): string {
    switch (atom.kind) {
        case 'number': return atom.text;
        case 'words': return atom.text.replace(/\\(.)/g, '$1');
        case 'value': return amount(atom.amount);
        case 'root': return `√(${plain(atom.of)})`;
        case 'group': return atom.open ? `${delimiter(atom.open)}${plain(atom.items)}${delimiter(atom.close)}` : plain(atom.items);
        case 'scripts': return `${one(atom.base, before)}${atom.sub ? `_${compact(atom.sub)}` : ''}${atom.sup ? power(atom.sup) : ''}`;
        case 'fraction': {
            const text = `${factor(atom.over, /[+−]/)} / ${factor(atom.under, /[+−·/]/)}`;
            return before?.kind === 'operator' && before.tex === '/' ? `(${text})` : text;
        }
        default: return nameOf(atom.tex);
    }
}

function factor(row: Row, needsBrackets: RegExp): string {
    const text = plain(row);
    const alone = row.length === 1 && (row[0]!.kind === 'value' || (row[0]!.kind === 'group' && row[0]!.open !== ''));
    return !alone && needsBrackets.test(outside(text)) ? `(${text})` : text;
}

/** The text without what stands in brackets or in a unit such as `kN·m`: only spaced signs count. */
function outside(text: string): string {
    const unbracketed = text.replace(/\([^()]*\)/g, '').replace(/\([^()]*\)/g, '');
    return [...unbracketed.matchAll(/ ([+−·/]) /g)].map(match => match[1]).join('');
}

const compact = (row: Row): string => plain(row).replace(/ · |\s/g, '');
const delimiter = (tex: string): string => tex === '.' ? '' : nameOf(tex);

function power(row: Row): string {
    const text = compact(row);
    return /^[0-9]$/.test(text) ? '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(text)]! : /^[\w.′']+$/.test(text) ? `^${text}` : `^(${text})`;
}

/** A sentence that may name a symbol in TeX. */
export function proseToText(prose: string): string {
    return prose.replace(/\\[a-zA-Z]+/g, nameOf);
}
