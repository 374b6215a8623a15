import { GrammarAST } from 'langium';

/** For the name of a rule, the words that may begin a statement in its block. */
export function leadingWordsOfBlock(grammar: GrammarAST.Grammar): (rule: string) => readonly string[] {
    const rules = new Map(grammar.rules.map(rule => [rule.name, rule]));
    const words = new Map<string, readonly string[]>();
    return name => {
        const known = words.get(name);
        if (known !== undefined) {
            return known;
        }
        const rule = rules.get(name);
        const found = GrammarAST.isParserRule(rule) ? [...new Set(repeated(rule.definition).flatMap(leading))] : [];
        words.set(name, found);
        return found;
    };
}

function repeated(element: GrammarAST.AbstractElement): readonly GrammarAST.AbstractElement[] {
    if (element.cardinality === '*') {
        return [element];
    }
    return GrammarAST.isGroup(element) || GrammarAST.isAlternatives(element) ? element.elements.flatMap(repeated) : [];
}

function leading(element: GrammarAST.AbstractElement): readonly string[] {
    if (GrammarAST.isKeyword(element)) {
        return [element.value];
    }
    if (GrammarAST.isAssignment(element)) {
        return leading(element.terminal);
    }
    if (GrammarAST.isAlternatives(element)) {
        return element.elements.flatMap(leading);
    }
    if (GrammarAST.isGroup(element)) {
        return leading(element.elements[0]!);
    }
    const rule = GrammarAST.isRuleCall(element) ? element.rule.ref : undefined;
    return GrammarAST.isParserRule(rule) ? leading(rule.definition) : [];
}
