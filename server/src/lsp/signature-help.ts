/** Inside the parentheses of the use of a detail, or of a function: what it takes, and which of it is written now. */
import type { LangiumDocument, Lexer, LexerResult } from 'langium';
import type { LangiumServices, SignatureHelpProvider } from 'langium/lsp';
import type { SignatureHelp, SignatureHelpOptions, SignatureHelpParams, SignatureInformation } from 'vscode-languageserver';
import * as ast from '../../../language/src/generated/ast.js';
import { parameterText } from './names/details-hierarchy.js';
import type { WorkspaceNames } from './names/workspace-names.js';

type Token = LexerResult['tokens'][number];

const functions: Readonly<Record<string, { readonly parameters: readonly string[]; readonly what: string }>> = {
    min: { parameters: ['a', 'b', '…'], what: 'The smallest of values of one kind.' },
    max: { parameters: ['a', 'b', '…'], what: 'The largest of values of one kind.' },
    sqrt: { parameters: ['value'], what: 'The square root: of an area it is a length.' },
    abs: { parameters: ['value'], what: 'The value without its sign.' },
    round: { parameters: ['value', 'to: step'], what: 'The nearest multiple of the step.' }
};

export class Signatures implements SignatureHelpProvider {
    readonly signatureHelpOptions: SignatureHelpOptions = { triggerCharacters: ['(', ','], retriggerCharacters: [':'] };
    private readonly lexer: Lexer;

    constructor(services: LangiumServices, private readonly names: WorkspaceNames) {
        this.lexer = services.parser.Lexer;
    }

    async provideSignatureHelp(document: LangiumDocument, { position }: SignatureHelpParams): Promise<SignatureHelp | undefined> {
        const text = document.textDocument;
        const call = openCall(this.lexer.tokenize(text.getText().slice(0, text.offsetAt(position))).tokens);
        if (!call) {
            return undefined;
        }
        const { callee, use, argument, name } = call;
        const known = use ? undefined : functions[callee];
        if (known) {
            return help(signature(`${callee}(`, known.parameters, ')', known.what), Math.min(argument, known.parameters.length - 1));
        }
        const detail = (await this.names.visible(this.names.of(document), undefined)).find(declared => ast.isDetail(declared.node) && declared.name === use)?.node as ast.Detail | undefined;
        if (!detail) {
            return undefined;
        }
        const named = detail.parameters.findIndex(parameter => parameter.name === name);
        return help(signature(`use ${detail.name} ${callee} (`, detail.parameters.map(parameterText), ')', undefined), named < 0 ? Math.min(argument, detail.parameters.length - 1) : named);
    }
}

interface OpenCall {
    /** The word before the parenthesis. */
    readonly callee: string;
    /** The detail, where it is one that is used. */
    readonly use: string | undefined;
    readonly argument: number;
    /** Of the argument, where it has one already. */
    readonly name: string | undefined;
}

/** Of the innermost parenthesis that is open. */
function openCall(tokens: readonly Token[]): OpenCall | undefined {
    let depth = 0;
    let argument = 0;
    let name: string | undefined;
    for (let i = tokens.length - 1; i > 0; i--) {
        const { image } = tokens[i]!;
        if (image === '{' || image === '}') {
            return undefined;
        }
        if (image === ')') {
            depth += 1;
        } else if (image === '(' && depth > 0) {
            depth -= 1;
        } else if (image === '(') {
            return { callee: tokens[i - 1]!.image, use: tokens[i - 3]?.image === 'use' ? tokens[i - 2]!.image : undefined, argument, name };
        } else if (depth === 0 && image === ',') {
            argument += 1;
        } else if (depth === 0 && image === ':' && argument === 0) {
            name ??= tokens[i - 1]!.image;
        }
    }
    return undefined;
}

function signature(before: string, parameters: readonly string[], after: string, documentation: string | undefined): SignatureInformation {
    let label = before;
    const ranges = parameters.map((parameter, index): { label: [number, number] } => {
        const start = label.length;
        label += parameter + (index < parameters.length - 1 ? ', ' : '');
        return { label: [start, start + parameter.length] };
    });
    return { label: label + after, parameters: ranges, documentation };
}

function help(information: SignatureInformation, activeParameter: number): SignatureHelp {
    return { signatures: [information], activeSignature: 0, activeParameter };
}
