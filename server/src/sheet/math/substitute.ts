import type { Amount, Term } from '../../results.js';
import { isFactor, parseTex, printTex, type Atom, type Row } from './tex.js';

/**
 * The formula with the terms' numbers for their symbols. A symbol is matched whole (`h` is not the `h` of
 * `h_{ef}`, nor that of `k_h`), the longest first; where two factors stood side by side a dot comes between
 * them, and a number with a unit is put in brackets under a power.
 * @param hrefOf a link to where the number of a term comes from
 */
export function substitute(formula: Row, terms: readonly Term[], hrefOf: (term: Term) => string | undefined = () => undefined): Row {
    const known = terms
        .map(term => ({ symbol: parseTex(term.symbol), amount: term.amount, href: hrefOf(term) }))
        .filter(({ symbol }) => symbol.length > 0)
        .sort((a, b) => b.symbol.length - a.symbol.length)
        .map(({ symbol, amount, href }) => ({ length: symbol.length, key: printTex(symbol), amount, href }));

    function fill(row: Row): Row {
        const filled: Atom[] = [];
        for (let i = 0; i < row.length;) {
            const term = known.find(({ length, key }) => i + length <= row.length && printTex(row.slice(i, i + length)) === key);
            filled.push(term ? value(term.amount, term.href) : within(row[i]!));
            i += term?.length ?? 1;
        }
        return withDots(filled);
    }

    function within(atom: Atom): Atom {
        switch (atom.kind) {
            case 'fraction': return { ...atom, over: fill(atom.over), under: fill(atom.under) };
            case 'root': return { ...atom, of: fill(atom.of) };
            case 'group': return { ...atom, items: fill(atom.items) };
            case 'scripts': return power(atom);
            default: return atom;
        }
    }

    /** A symbol with a subscript is a symbol of its own: where no term has it, it stays whole. */
    function power(atom: Atom & { kind: 'scripts' }): Atom {
        const { base, sub, sup } = atom;
        if (!sup) {
            return base.kind === 'group' ? { ...atom, base: within(base) } : atom;
        }
        const raised = fill(sup);
        const filled = fill([sub ? { kind: 'scripts', base, sub } : base])[0]!;
        return sub && filled.kind === 'scripts' ? { ...atom, sup: raised } : { kind: 'scripts', base: bracketed(filled), sup: raised };
    }

    return fill(formula);
}

function value(amount: Amount, href: string | undefined): Atom {
    const filled: Atom = { kind: 'value', amount, href };
    return amount.value < 0 ? { kind: 'group', items: [filled], open: '(', close: ')' } : filled;
}

function bracketed(atom: Atom): Atom {
    return atom.kind === 'value' && atom.amount.unit !== '' ? { kind: 'group', items: [atom], open: '(', close: ')' } : atom;
}

/** A multiplication sign between neighbours that were a product of symbols. */
function withDots(row: Row): Row {
    const spaced: Atom[] = [];
    let before: Atom | undefined;
    for (const atom of row) {
        if (before && isFactor(before) && isFactorStart(atom) && (holdsValue(before) || holdsValue(atom))) {
            while (spaced.at(-1)?.kind === 'space') {
                spaced.pop();
            }
            spaced.push({ kind: 'operator', tex: '\\cdot' });
        }
        spaced.push(atom);
        before = atom.kind === 'space' ? before : atom;
    }
    return spaced;
}

const isFactorStart = (atom: Atom): boolean => isFactor(atom) || atom.kind === 'function';

function holdsValue(atom: Atom): boolean {
    switch (atom.kind) {
        case 'value': return true;
        case 'fraction': return [...atom.over, ...atom.under].some(holdsValue);
        case 'root': return atom.of.some(holdsValue);
        case 'group': return atom.items.some(holdsValue);
        case 'scripts': return holdsValue(atom.base);
        default: return false;
    }
}
