/**
 * The part of TeX that formulas of checks are written in, as a tree: so that numbers can stand in for
 * symbols, and the same formula be printed as TeX or as plain text. Never throws: what it does not know
 * is kept as it stands.
 */
import type { Amount } from '../../results.js';

export type Row = readonly Atom[];

export type Atom =
    | { readonly kind: 'symbol'; readonly tex: string }
    | { readonly kind: 'number'; readonly text: string }
    /** `\text{…}` or `\mathrm{…}`. */
    | { readonly kind: 'words'; readonly command: string; readonly text: string }
    | { readonly kind: 'operator'; readonly tex: string }
    | { readonly kind: 'function'; readonly tex: string }
    | { readonly kind: 'space'; readonly tex: string }
    | { readonly kind: 'fraction'; readonly over: Row; readonly under: Row }
    | { readonly kind: 'root'; readonly of: Row; readonly degree?: Row }
    | { readonly kind: 'scripts'; readonly base: Atom; readonly sub?: Row; readonly sup?: Row }
    | { readonly kind: 'group'; readonly items: Row; readonly open: string; readonly close: string }
    /** A number that stands for a symbol, and a link to where it comes from; only `substitute` makes it. */
    | { readonly kind: 'value'; readonly amount: Amount; readonly href?: string };

const token = /\\[a-zA-Z]+|\\[^]|[0-9]+(?:\.[0-9]+)?|\s+|[^]/gu;
const operators = new Set('+ - = / , ; : < > ) ] | ! & \\cdot \\times \\le \\leq \\ge \\geq \\ne \\neq \\approx \\pm \\to \\Rightarrow \\% \\{ \\} \\\\'.split(' '));
const functions = new Set('\\min \\max \\sin \\cos \\tan \\ln \\log \\exp \\operatorname'.split(' '));
const spaces = new Set('\\, \\; \\: \\! \\quad \\qquad ~ \\displaystyle'.split(' ').concat('\\ '));
const wordCommands = new Set(['\\text', '\\mathrm', '\\textrm', '\\mathit']);
const fractions = new Set(['\\frac', '\\dfrac', '\\tfrac']);

/** The checks' formulas and symbols are few, and come again with every keystroke; emptied when full, since names are among them. */
const memoLimit = 4000;
const memo = new Map<string, Row>();

export function parseTex(tex: string): Row {
    const known = memo.get(tex);
    if (known) {
        return known;
    }
    if (memo.size >= memoLimit) {
        memo.clear();
    }
    const row = parse(tex);
    memo.set(tex, row);
    return row;
}

function parse(tex: string): Row {
    const tokens = (tex.match(token) ?? []).filter(text => text.trim() !== '' || text === '\\ ');
    const words = wordArguments(tex);
    let next = 0;

    function row(ends: (text: string) => boolean): Atom[] {
        const items: Atom[] = [];
        while (next < tokens.length && !ends(tokens[next]!)) {
            items.push(withScripts(atom()));
        }
        next += 1;
        return items;
    }

    /** The argument of a command: a group in braces or a single atom. */
    function argument(): Row {
        if (tokens[next] === '{') {
            next += 1;
            return row(text => text === '}');
        }
        return next < tokens.length ? [atom()] : [];
    }

    function withScripts(base: Atom): Atom {
        let sub: Row | undefined;
        let sup: Row | undefined;
        while (tokens[next] === '_' || tokens[next] === '^') {
            next += 1;
            if (tokens[next - 1] === '_') {
                sub = argument();
            } else {
                sup = argument();
            }
        }
        return sub || sup ? { kind: 'scripts', base, sub, sup } : base;
    }

    function atom(): Atom {
        const text = tokens[next]!;
        next += 1;
        if (text === '{') {
            return { kind: 'group', items: row(end => end === '}'), open: '', close: '' };
        }
        if (text === '(' || text === '[') {
            const close = text === '(' ? ')' : ']';
            return { kind: 'group', items: row(end => end === close), open: text, close };
        }
        if (text === '\\left') {
            const open = tokens[next++] ?? '';
            const items = row(end => end === '\\right');
            return { kind: 'group', items, open, close: tokens[next++] ?? '' };
        }
        if (fractions.has(text)) {
            const over = argument();
            return { kind: 'fraction', over, under: argument() };
        }
        if (text === '\\sqrt') {
            let degree: Row | undefined;
            if (tokens[next] === '[') {
                next += 1;
                degree = row(end => end === ']');
            }
            return { kind: 'root', of: argument(), degree };
        }
        if (wordCommands.has(text)) {
            argument();
            return { kind: 'words', command: text, text: words.shift() ?? '' };
        }
        const kind = operators.has(text) ? 'operator' : functions.has(text) ? 'function' : spaces.has(text) ? 'space' : 'symbol';
        return /^[0-9]/.test(text) ? { kind: 'number', text } : { kind, tex: text };
    }

    return row(() => false);
}

/** What stands in the braces of each `\text{…}`, with its spaces. */
function wordArguments(tex: string): string[] {
    return [...tex.matchAll(/\\(?:text|mathrm|textrm|mathit)(?![a-zA-Z])\s*(?:\{((?:[^{}\\]|\\[^])*)\}|([^]))/g)].map(match => match[1] ?? match[2] ?? '');
}

/** What can be multiplied by standing beside something. */
export function isFactor(atom: Atom): boolean {
    return atom.kind === 'scripts' ? isFactor(atom.base) : !['operator', 'function', 'space', 'words'].includes(atom.kind);
}

/**
 * As TeX again; also the form that symbols are compared in, since it is the same for `M_d` and `M_{d}`.
 * @param product stands between factors that are side by side
 */
export function printTex(row: Row, printValue: (amount: Amount, href?: string) => string = () => '', product = ' '): string {
    const print = (items: Row): string =>
        items.map((item, i) => `${i === 0 ? '' : isFactor(item) && isFactor(items[i - 1]!) ? product : ' '}${one(item)}`).join('');
    const one = (atom: Atom): string => {
        switch (atom.kind) {
            case 'number': return atom.text;
            case 'words': return `${atom.command}{${atom.text}}`;
            case 'fraction': return `\\frac{${print(atom.over)}}{${print(atom.under)}}`;
            case 'root': return `\\sqrt${atom.degree ? `[${print(atom.degree)}]` : ''}{${print(atom.of)}}`;
            case 'scripts': return `${one(atom.base)}${atom.sub ? `_{${printTex(atom.sub, printValue)}}` : ''}${atom.sup ? `^{${print(atom.sup)}}` : ''}`;
            case 'group': return atom.open ? `\\left${atom.open} ${print(atom.items)} \\right${atom.close || '.'}` : `{${print(atom.items)}}`;
            case 'value': return printValue(atom.amount, atom.href);
            default: return atom.tex;
        }
    };
    return print(row);
}
