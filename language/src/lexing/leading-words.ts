import { AstUtils, GrammarAST } from 'langium';

export interface BlockWords {
    /** For the name of a rule, the words that may begin a statement in its block. */
    readonly of: (rule: string) => readonly string[];
    /** Every word of the language. */
    readonly all: readonly string[];
}

export function blockWords(grammar: GrammarAST.Grammar): BlockWords {
    const rules = new Map(grammar.rules.map(rule => [rule.name, rule]));
    const words = new Map<string, readonly string[]>();
    const compute = (name: string): readonly string[] => {
        const rule = rules.get(name);
        return GrammarAST.isParserRule(rule) ? [...new Set(repeated(rule.definition).flatMap(leading))] : [];
    };
    const of = (name: string): readonly string[] => {
        const known = words.get(name) ?? compute(name);
        words.set(name, known);
        return known;
    };
    const keywords = AstUtils.streamAllContents(grammar).filter(GrammarAST.isKeyword).map(keyword => keyword.value);
    return { of, all: [...new Set(keywords.filter(word => /^[a-z]/.test(word)))] };
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
