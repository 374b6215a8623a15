/** Mathematics in one line of text, `M_y,d / W_y`; what text has no room for is written by marks. */
import type { Amount } from '../../results.js';
import { decimal, inFormula } from '../numbers.js';
import type { Atom, Row } from './tex.js';

/** How subscripts, exponents of more than a digit and numbers that stand for symbols are written. */
export interface Marks {
    readonly sub: (text: string) => string;
    readonly sup: (text: string) => string;
    readonly value: (amount: Amount, href: string | undefined) => string;
}

const typed: Marks = {
    sub: text => `_${text}`,
    sup: text => /^[\w.,′']+$/.test(text) ? `^${text}` : `^(${text})`,
    value: given => inFormula(given)
};

export function printPlain(row: Row, marks: Marks = typed): string {
    const plain = (items: Row): string => {
        const shown = items.filter(atom => atom.kind !== 'space');
        return shown.map((atom, i) => `${separator(shown[i - 1], atom, shown[i - 2])}${one(atom, shown[i - 1])}`).join('').trim();
    };

    const compact = (items: Row): string => plain(items).replace(/ · |\s/g, '');

    function one(atom: Atom, before: Atom | undefined): string {
        switch (atom.kind) {
            case 'number': return decimal(atom.text);
            case 'words': return atom.text.replace(/\\(.)/g, '$1');
            case 'value': return marks.value(atom.amount, atom.href);
            case 'root': return `√(${plain(atom.of)})`;
            case 'group': return atom.open ? `${delimiter(atom.open)}${plain(atom.items)}${delimiter(atom.close)}` : plain(atom.items);
            case 'scripts': return `${one(atom.base, before)}${atom.sub ? marks.sub(compact(atom.sub)) : ''}${atom.sup ? power(compact(atom.sup)) : ''}`;
            case 'fraction': {
                const text = `${factor(atom.over, /[+−]/)} / ${factor(atom.under, /[+−·/]/)}`;
                return before?.kind === 'operator' && before.tex === '/' ? `(${text})` : text;
            }
            default: return nameOf(atom.tex);
        }
    }

    function factor(items: Row, needsBrackets: RegExp): string {
        const text = plain(items);
        const alone = items.length === 1 && (items[0]!.kind === 'value' || (items[0]!.kind === 'group' && items[0]!.open !== ''));
        return !alone && needsBrackets.test(outside(text)) ? `(${text})` : text;
    }

    const power = (text: string): string => /^[0-9]$/.test(text) ? '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(text)]! : marks.sup(text);

    return plain(row);
}

const named: Readonly<Record<string, string>> = {
    '\\alpha': 'α', '\\beta': 'β', '\\gamma': 'γ', '\\delta': 'δ', '\\Delta': 'Δ', '\\epsilon': 'ε', '\\varepsilon': 'ε', '\\zeta': 'ζ', '\\eta': 'η',
    '\\theta': 'θ', '\\kappa': 'κ', '\\lambda': 'λ', '\\mu': 'μ', '\\nu': 'ν', '\\xi': 'ξ', '\\pi': 'π', '\\rho': 'ρ', '\\sigma': 'σ', '\\Sigma': 'Σ',
    '\\sum': 'Σ', '\\tau': 'τ', '\\phi': 'φ', '\\varphi': 'φ', '\\chi': 'χ', '\\psi': 'ψ', '\\Psi': 'Ψ', '\\omega': 'ω', '\\Omega': 'Ω', '\\infty': '∞', '\\ell': 'ℓ',
    '\\cdot': '·', '\\times': '×', '\\le': '≤', '\\leq': '≤', '\\ge': '≥', '\\geq': '≥', '\\ne': '≠', '\\neq': '≠', '\\approx': '≈', '\\pm': '±',
    '\\to': '→', '\\Rightarrow': '⇒', '-': '−', '\\%': '%', '\\{': '{', '\\}': '}', '\\\\': ';', '&': ''
};
/** The character or word of one command. */
export const nameOf = (tex: string): string => named[tex] ?? tex.replace(/^\\/, '');
const delimiter = (tex: string): string => tex === '.' ? '' : nameOf(tex);
const tight = new Set(['|', '!', ',', ';', ':', ')', ']']);

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

/** The text without what stands in brackets or in a unit such as `kN·m`: only spaced signs count. */
function outside(text: string): string {
    const unbracketed = text.replace(/\([^()]*\)/g, '').replace(/\([^()]*\)/g, '');
    return [...unbracketed.matchAll(/ ([+−·/]) /g)].map(match => match[1]).join('');
}
