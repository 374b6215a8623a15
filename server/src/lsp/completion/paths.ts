/** What can follow `T2.`: quantities in an input, results in a requirement, inputs in a break-even. */
import type { AstNode } from 'langium';
import { CompletionItemKind } from 'vscode-languageserver';
import { checkNames } from '../../../../language/src/index.js';
import type { Results } from '../../results.js';
import { worstOfEach } from '../../summary.js';
import { percentUp } from '../../sheet/numbers.js';
import type { Word } from './words.js';

const quantities: Readonly<Record<string, readonly string[]>> = {
    Member: ['length', 'span', 'breadth', 'depth'], Parameter: ['length', 'span', 'breadth', 'depth'], Wall: ['thick', 'height'], Masonry: ['fk']
};

export function pathWords(word: string | undefined, subject: string, thing: AstNode | undefined, results: Results | undefined): readonly Word[] {
    switch (word) {
        case 'require': return resultWords(subject, results);
        case 'breakeven': return inputWords(subject, results);
        default: return (quantities[thing?.$type ?? ''] ?? []).map(label => ({ label, kind: CompletionItemKind.Property }));
    }
}

/** With what they are now. */
function resultWords(subject: string, results: Results | undefined): readonly Word[] {
    const own = worstOfEach(results?.checks.filter(check => check.subject === subject) ?? []);
    return own.length > 0
        ? own.map(({ check, utilisation, clause }) => ({ label: check, kind: CompletionItemKind.Property, detail: `${percentUp(utilisation)}, ${clause}` }))
        : checkNames.map(label => ({ label, kind: CompletionItemKind.Property }));
}

function inputWords(subject: string, results: Results | undefined): readonly Word[] {
    const before = `${subject}.`;
    return [...new Set(results?.ledger.filter(({ path }) => path.startsWith(before)).map(({ path }) => path.slice(before.length)))]
        .map(label => ({ label, kind: CompletionItemKind.Property }));
}
