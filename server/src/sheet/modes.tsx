/** The ways in which a connection may fail, where a line of the calculation takes the least of them: the governing one marked. */
import type { Step, Term } from '../results.js';
import { Tex } from './math/mathml.js';
import { amount } from './numbers.js';
import { Table } from './parts.js';
import { proseToText } from './plain-math.js';

interface Mode {
    readonly term: Term;
    readonly how: string;
    readonly clause: string;
}

/** Terms of `\min` of nothing but symbols that stand for earlier lines or say in words what they are; empty where it is something else. */
export function modesOf({ formula, terms }: Step, earlier: readonly Step[]): readonly Mode[] {
    const symbols = /^\\min\s*(?:\\left)?\s*(?:\(|\\\{)([^]*?)(?:\\right)?\s*(?:\)|\\\})$/.exec(formula.trim())?.[1]?.split(/;\\;|,\\;|, |;/).map(symbol => symbol.trim());
    const found = symbols?.map(symbol => terms.find(term => term.symbol === symbol));
    if (found === undefined || found.length < 2 || found.includes(undefined)) {
        return [];
    }
    const modes = (found as readonly Term[]).map(term => {
        const from = earlier.findLast(step => step.symbol === term.symbol);
        return { term, how: proseToText(from?.note ?? term.meaning ?? ''), clause: from?.clause ?? '' };
    });
    return modes.every(({ how }) => how !== '') ? modes : [];
}

export function Modes({ modes, of }: { readonly modes: readonly Mode[]; readonly of: string }) {
    const least = Math.min(...modes.map(({ term }) => term.amount.value));
    const governing = modes.findIndex(({ term }) => term.amount.value === least);
    return modes.length === 0 ? null : (
        <Table name="modes" caption={`Ways to fail, ${of}`} head={['How it fails', 'Capacity', 'Bears', 'By']}>
            {modes.map(({ term, how, clause }, i) => (
                <tr class={i === governing ? 'governing' : undefined}>
                    <th scope="row">{how}</th>
                    <td><Tex tex={term.symbol} /></td>
                    <td class="number">{amount(term.amount)}{i === governing && <b> ◀ governs</b>}</td>
                    <td>{clause}</td>
                </tr>
            ))}
        </Table>
    );
}
