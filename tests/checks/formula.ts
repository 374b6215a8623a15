/** Works out the formula of a step with its terms' numbers, as a reader with a pocket calculator would. */
import type { Amount, Step } from '../../server/src/results.js';
import { substitute } from '../../server/src/sheet/math/substitute.js';
import { parseTex, type Atom, type Row } from '../../server/src/sheet/math/tex.js';

/** Stress and lengths of members in N and mm; a floor's numbers are in N and m among themselves. */
const scale: Readonly<Record<string, number>> = { kN: 1e3, kNm: 1e6, 'mm/kN': 1e-3, '°': Math.PI / 180 };

export function inBase({ value, unit }: Amount): number {
    return value * (scale[unit] ?? 1);
}

/** The number that the formula comes to; throws where a symbol has no term. */
export function worked({ formula, terms }: Step): number {
    return sum(substitute(parseTex(formula), terms));
}

function sum(row: Row): number {
    let total = 0;
    let sign = 1;
    let product: Atom[] = [];
    const add = (): void => {
        total += product.length > 0 ? sign * multiplied(product) : 0;
        product = [];
    };
    for (const atom of row.filter(({ kind }) => kind !== 'space')) {
        if (atom.kind === 'operator' && (atom.tex === '+' || atom.tex === '-')) {
            add();
            sign = atom.tex === '+' ? 1 : -1;
        } else if (!(atom.kind === 'operator' && atom.tex === '\\cdot')) {
            product.push(atom);
        }
    }
    add();
    return total;
}

function multiplied(atoms: readonly Atom[]): number {
    let result = 1;
    for (let i = 0; i < atoms.length; i++) {
        const atom = atoms[i];
        const next = atoms[i + 1];
        if (atom?.kind === 'function' && next?.kind === 'group') {
            const all = parts(next.items).map(sum);
            result *= atom.tex === '\\min' ? Math.min(...all) : Math.max(...all);
            i++;
        } else if (atom?.kind === 'scripts' && atom.base.kind === 'function' && atom.sup && next) {
            result *= trigonometric(atom.base.tex, valueOf(next)) ** sum(atom.sup);
            i++;
        } else if (atom) {
            result *= valueOf(atom);
        }
    }
    return result;
}

function trigonometric(name: string, angle: number): number {
    return name === '\\sin' ? Math.sin(angle) : Math.cos(angle);
}

function parts(row: Row): Row[] {
    return row.reduce<Atom[][]>((lists, atom) => {
        if (atom.kind === 'operator' && (atom.tex === ',' || atom.tex === ';')) {
            return [...lists, []];
        }
        lists.at(-1)?.push(atom);
        return lists;
    }, [[]]);
}

function valueOf(atom: Atom): number {
    switch (atom.kind) {
        case 'number': return Number(atom.text);
        case 'value': return inBase(atom.amount);
        case 'fraction': return sum(atom.over) / sum(atom.under);
        case 'root': return sum(atom.of) ** (1 / (atom.degree ? sum(atom.degree) : 2));
        case 'group': return atom.open === '|' ? Math.abs(sum(atom.items)) : sum(atom.items);
        case 'scripts':
            if (atom.sup && !atom.sub) {
                return valueOf(atom.base) ** sum(atom.sup);
            }
            break;
        case 'symbol':
            if (atom.tex === '\\pi') {
                return Math.PI;
            }
    }
    throw new Error(`no term explains ${JSON.stringify(atom)}`);
}
