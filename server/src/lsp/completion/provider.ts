/** What can be written at the cursor: words by the grammar, names by what is wanted, units by dimension, classes and sizes with what they are. */
import { AstUtils, DocumentState, GrammarAST, type AstNode, type DocumentBuilder, type LangiumDocument, type TextDocument } from 'langium';
import { DefaultCompletionProvider, type CompletionAcceptor, type CompletionContext, type CompletionProviderOptions, type LangiumServices, type NextFeature } from 'langium/lsp';
import { CompletionItemKind, CompletionTriggerKind, type CancellationToken, type CompletionItem, type CompletionList, type CompletionParams, type Position } from 'vscode-languageserver';
import * as ast from '../../../../language/src/generated/ast.js';
import { steelClasses } from '../../../../language/src/index.js';
import type { ComputedDocuments } from '../computed-documents.js';
import { constructHelp, constructMarkdown } from '../meaning/constructs.js';
import { unitMeaning } from '../meaning/units.js';
import { describe } from '../meaning/things.js';
import type { Declared } from '../names/file-names.js';
import type { WorkspaceNames } from '../names/workspace-names.js';
import { completionKind } from '../structure/symbol-kinds.js';
import { pathWords } from './paths.js';
import { sectionItems } from './sections.js';
import { statementAt, type StatementAt } from './statement-at.js';
import { wantedThings } from './wanted-things.js';
import { wantedUnits } from './wanted-units.js';
import { boltWords, openWords, steelWords, timberWords, type Word } from './words.js';

/** Rules that only say that a word of the language may be a name too. */
const nameRules = ['Name', 'SoftWord', 'PlainWord', 'HardWord', 'Word', 'DeclarationWord', 'HazardCode', 'RevisionMark'];
/** Of blocks that hold free words, or that expect a value: words of the language come last there. */
const sorted = { wanted: '0', name: '1', keyword: '2', function: '3' } as const;

interface PlaceContext extends CompletionContext {
    readonly statement: StatementAt;
}

export class Completion extends DefaultCompletionProvider {
    override readonly completionOptions: CompletionProviderOptions = { triggerCharacters: [' ', '.', '('] };
    private readonly declarationWords: ReadonlySet<string>;

    private readonly builder: DocumentBuilder;

    constructor(services: LangiumServices, private readonly names: WorkspaceNames, private readonly computed: ComputedDocuments) {
        super(services);
        this.builder = services.shared.workspace.DocumentBuilder;
        const rule = services.Grammar.rules.find(({ name }) => name === 'DeclarationWord')!;
        this.declarationWords = new Set([...AstUtils.streamAllContents(rule).filter(GrammarAST.isKeyword).map(({ value }) => value), 'timber', 'masonry', 'steel', 'wall']);
    }

    override async getCompletion(document: LangiumDocument, params: CompletionParams, cancellation?: CancellationToken): Promise<CompletionList | undefined> {
        const offset = document.textDocument.offsetAt(params.position);
        if (isInCommentOrText(document.textDocument.getText(), offset)) {
            return undefined;
        }
        const list = await super.getCompletion(document, params, cancellation);
        // A space asks for what is wanted here, not for every word there is.
        return list && params.context?.triggerKind === CompletionTriggerKind.TriggerCharacter && params.context.triggerCharacter === ' '
            ? { ...list, items: list.items.some(isWanted) ? list.items : [] } : list;
    }

    protected override *buildContexts(document: LangiumDocument, position: Position): IterableIterator<PlaceContext> {
        const statement = this.statementBefore(document.textDocument, document.textDocument.offsetAt(position));
        for (const context of super.buildContexts(document, position)) {
            yield { ...context, statement };
        }
    }

    private statementBefore(document: TextDocument, offset: number): StatementAt {
        return statementAt(document.getText(), offset, this.lexer, this.declarationWords);
    }

    /** From the declaration alone: what stands above may not parse, and need not be parsed again. */
    protected override findFeaturesAt(document: TextDocument, offset: number): NextFeature[] {
        const text = document.getText();
        const { start } = this.statementBefore(document, offset);
        const own = { getText: () => text.slice(start, offset), positionAt: () => ({ line: 0, character: 0 }) } as unknown as TextDocument;
        const features = super.findFeaturesAt(own, offset - start);
        return features.filter(({ feature }) => !(GrammarAST.isKeyword(feature) && nameRules.includes(ruleOf(feature) ?? '')));
    }

    protected override async completionFor(context: PlaceContext, next: NextFeature, acceptor: CompletionAcceptor): Promise<void> {
        const { feature } = next;
        if (GrammarAST.isKeyword(feature)) {
            this.completionForKeyword(context, feature, acceptor);
        } else if (GrammarAST.isCrossReference(feature)) {
            await this.namesFor(context, next, acceptor);
        } else if (GrammarAST.isRuleCall(feature)) {
            await this.openWordsFor(context, next, feature.rule.ref?.name, acceptor);
        }
    }

    protected override completionForKeyword(context: CompletionContext, keyword: GrammarAST.Keyword, acceptor: CompletionAcceptor): void {
        const rule = ruleOf(keyword) ?? '';
        // `net section` is offered as the check that it is.
        if (/\p{L}/u.test(keyword.value) && rule !== 'Reference') {
            const documentation = constructMarkdown(rule);
            acceptor(context, {
                label: keyword.value,
                kind: rule === 'Call' ? CompletionItemKind.Function : CompletionItemKind.Keyword,
                detail: constructHelp(rule)?.note.split(/[.;:] /)[0],
                documentation: documentation === undefined ? undefined : { kind: 'markdown', value: documentation },
                sortText: rule === 'Call' ? sorted.function : sorted.keyword
            });
        }
    }

    private async namesFor(context: PlaceContext, next: NextFeature, acceptor: CompletionAcceptor): Promise<void> {
        const assignment = AstUtils.getContainerOfType(next.feature, GrammarAST.isAssignment);
        const type = next.type ?? ruleOf(next.feature) ?? '';
        const property = next.property ?? assignment?.feature ?? '';
        const reference = assignment?.feature ?? property;
        const kind = await this.kindOfArgument(context);
        const wanted = wantedThings(type, reference, context.statement.word, kind);
        const here = context.node ?? context.document.parseResult.value;
        const owner = AstUtils.getContainerOfType(here, ast.isDetail);
        const itself = AstUtils.getContainerOfType(here, ast.isMember)?.name;
        for (const declared of await this.names.visible(this.names.of(context.document), owner)) {
            if (wanted.includes(declared.node.$type) && !(reference === 'on' && declared.name === itself)) {
                acceptor(context, nameItem(declared));
            }
        }
        const classes = reference === 'material' && context.statement.word !== 'wall' ? [...timberWords, ...steelWords] : kind === 'thread' ? boltWords : [];
        classes.forEach(word => acceptor(context, { ...word, sortText: sorted.name }));
    }

    private async openWordsFor(context: PlaceContext, next: NextFeature, rule: string | undefined, acceptor: CompletionAcceptor): Promise<void> {
        if (rule === 'UNIT') {
            await this.unitsFor(context, acceptor);
            return;
        }
        if (next.type === 'Rolled') {
            this.sectionsFor(context, acceptor);
            return;
        }
        for (const word of await this.wordsFor(context, next)) {
            acceptor(context, { ...word, sortText: `${sorted.wanted}~` });
        }
    }

    private async wordsFor(context: PlaceContext, { type, property, feature }: NextFeature): Promise<readonly Word[]> {
        const before = context.statement.tokens.filter(token => token.endOffset! < context.tokenOffset);
        const asksForResults = property === 'path' || before.at(-1)?.image === 'answer';
        if (asksForResults) {
            await this.builder.waitUntil(DocumentState.Validated, context.document.uri);
        }
        const results = (this.computed.lastGood(context.document.uri) ?? this.computed.get(context.document.uri))?.results;
        if (property === 'path') {
            const subject = before.at(-2)?.image ?? '';
            const thing = (await this.names.visible(this.names.of(context.document), undefined)).find(({ name }) => name === subject);
            return pathWords(context.statement.word, subject, thing?.node, results);
        }
        if (asksForResults) {
            return results?.hazards.map(({ code, message }) => ({ label: code, kind: CompletionItemKind.EnumMember, detail: message })) ?? [];
        }
        if (property === 'arguments' || property === 'parameter') {
            return this.parametersFor(context);
        }
        return openWords({ type: type ?? ruleOf(feature), property, word: context.statement.word, previous: before.at(-1)?.image, block: blockOf(before.map(({ image }) => image)) });
    }

    private async unitsFor(context: PlaceContext, acceptor: CompletionAcceptor): Promise<void> {
        const literal = context.node ?? context.document.parseResult.value;
        const space = /\d/.test(context.textDocument.getText()[context.tokenOffset - 1] ?? '') ? ' ' : '';
        wantedUnits(literal, await this.kindOfArgument(context)).forEach((unit, index) => acceptor(context, {
            label: unit.symbol,
            insertText: space + unit.symbol,
            kind: CompletionItemKind.Unit,
            detail: unitMeaning(unit),
            sortText: `${sorted.wanted}${String(index).padStart(3, '0')}`,
            preselect: index === 0
        }));
    }

    /** Every one replaces the size that stands there already. */
    private sectionsFor(context: PlaceContext, acceptor: CompletionAcceptor): void {
        const member = AstUtils.getContainerOfType(context.node, ast.isMember);
        const of = member?.statements.find(ast.isOfMaterial)?.material;
        if (!member) {
            return;
        }
        const text = context.textDocument.getText();
        const rest = /^\s*[\d.]*(?:\s*(?:mm|cm|in))?(?:\s*[x×]\s*[\d.]+(?:\s*(?:mm|cm|in))?)?/.exec(text.slice(context.tokenOffset))?.[0].trimEnd() ?? '';
        const end = Math.max(context.offset, context.tokenOffset + rest.length);
        const at = { uri: context.document.uri.toString(), member: member.name, start: context.tokenOffset, end };
        const range = { start: context.textDocument.positionAt(at.start), end: context.textDocument.positionAt(end) };
        const steel = of !== undefined && (steelClasses.includes(of.$refText) || ast.isSteel(of.ref));
        const typed = text.slice(context.tokenOffset, context.offset);
        for (const item of sectionItems(steel ? 'steel' : 'timber', at)) {
            if (this.fuzzyMatcher.match(typed, item.label)) {
                acceptor(context, { ...item, textEdit: { newText: item.label, range } });
            }
        }
    }

    /** Names of parameters that the use of a detail does not give yet. */
    private async parametersFor(context: PlaceContext): Promise<readonly Word[]> {
        const detail = await this.detailOf(context);
        const given = new Set(context.statement.tokens.filter((_, index, all) => all[index + 1]?.image === ':').map(({ image }) => image));
        return detail?.parameters.filter(({ name }) => !given.has(name)).map(parameter => ({
            label: parameter.name, kind: CompletionItemKind.TypeParameter, insertText: `${parameter.name}: `,
            detail: `${parameter.type}${parameter.default?.$cstNode ? ` = ${parameter.default.$cstNode.text}` : ''}`
        })) ?? [];
    }

    /** Of the value that is being written in `use HANGER H1 (old: T2, at: `. */
    private async kindOfArgument(context: PlaceContext): Promise<string | undefined> {
        const { tokens } = context.statement;
        const colon = tokens.findLastIndex(({ image }) => image === ':' || image === ',' || image === '(');
        return tokens[colon]?.image === ':' ? (await this.detailOf(context))?.parameters.find(({ name }) => name === tokens[colon - 1]?.image)?.type : undefined;
    }

    private async detailOf(context: PlaceContext): Promise<ast.Detail | undefined> {
        const { tokens } = context.statement;
        const use = tokens.findLastIndex(({ image }) => image === 'use');
        const name = tokens[use + 1]?.image;
        const found = use < 0 ? undefined : (await this.names.visible(this.names.of(context.document), undefined)).find(declared => ast.isDetail(declared.node) && declared.name === name);
        return found?.node as ast.Detail | undefined;
    }
}

/** The word before the brace that is open. */
function blockOf(words: readonly string[]): string | undefined {
    let depth = 0;
    const open = words.findLastIndex(word => {
        depth += word === '}' ? 1 : word === '{' ? -1 : 0;
        return depth < 0;
    });
    return words[open - 1];
}

function nameItem({ name, node }: Declared): Pick<CompletionItem, 'label' | 'kind' | 'detail' | 'documentation' | 'sortText'> {
    const { title, text } = describe(node);
    return { label: name, kind: completionKind(node), detail: title, documentation: { kind: 'markdown', value: text }, sortText: sorted.name };
}

function isWanted({ sortText }: CompletionItem): boolean {
    return sortText?.startsWith(sorted.wanted) === true || sortText === sorted.name;
}

function ruleOf(node: AstNode): string | undefined {
    return AstUtils.getContainerOfType(node, GrammarAST.isParserRule)?.name;
}

/** On its line alone: a text never goes over lines, and of block comments the lexer knows. */
function isInCommentOrText(text: string, offset: number): boolean {
    const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
    const withoutTexts = line.replace(/"[^"]*"/g, '');
    return withoutTexts.includes('//') || withoutTexts.includes('"') || text.lastIndexOf('/*', offset) > text.lastIndexOf('*/', offset);
}
