/** What may be the name of a thing: the grammar's `Name`. */
import { AstUtils, GrammarAST } from 'langium';

const letters = 'A-Za-z_\\u00C0-\\u00D6\\u00D8-\\u00F6\\u00F8-\\u024F\\u0370-\\u03FF\\u0400-\\u04FF';
/** The grammar's `ID`. */
export const namePattern = `[${letters}][${letters}0-9]*`;
const wholeName = new RegExp(`^${namePattern}$`);

export function isName(text: string, grammar: GrammarAST.Grammar): boolean {
    const words = (from: GrammarAST.Grammar | GrammarAST.AbstractRule | undefined): Set<string> =>
        new Set(from && AstUtils.streamAllContents(from).filter(GrammarAST.isKeyword).map(keyword => keyword.value));
    const soft = words(grammar.rules.find(rule => rule.name === 'SoftWord'));
    return wholeName.test(text) && (soft.has(text) || !words(grammar).has(text));
}
