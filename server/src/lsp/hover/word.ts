import { GrammarAST } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';
import { boltGrade, boltSize, loadCategory, rolled, steelClass, timberClass } from '../meaning/classes.js';
import { constructMarkdown } from '../meaning/constructs.js';
import { certaintyOf, inputAt } from './certainty.js';
import { sourceOf, type HoverOf } from './place.js';

/** A class, a size, a grade or a category: its values and where they come from. */
export const hoverClass: HoverOf = ({ computed: { results }, word }) => {
    if (!word) {
        return undefined;
    }
    const { astNode: node, text } = word;
    if (ast.isRolled(node)) {
        const markdown = rolled(`${node.series} ${node.designation}`);
        return markdown === undefined || !node.$cstNode ? undefined : { markdown, source: { start: node.$cstNode.offset, end: node.$cstNode.end } };
    }
    const given = inputAt(results, word.offset);
    const markdown = ast.isBoltGrade(node) && node.value !== undefined ? boltGrade(String(node.value))
        : ast.isLoad(node) && node.category === text ? loadCategory(text)
            : timberClass(text) ?? steelClass(text) ?? boltSize(text);
    return markdown === undefined ? undefined : { markdown: given ? `${markdown}\n\n${certaintyOf(results, given)}` : markdown, source: sourceOf(word) };
};

/** A word of the language: what it is for. */
export const hoverKeyword: HoverOf = ({ word }) => {
    const isKeyword = word && GrammarAST.isKeyword(word.grammarSource) && /\p{L}/u.test(word.text);
    const markdown = isKeyword ? constructMarkdown(word.astNode.$type) : undefined;
    return word && markdown !== undefined ? { markdown, source: sourceOf(word) } : undefined;
};
