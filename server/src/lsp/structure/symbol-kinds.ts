import type { AstNode } from 'langium';
import { CompletionItemKind, SymbolKind } from 'vscode-languageserver';

/** An editor has icons for these alone: the nearest of them. */
const kinds: Readonly<Record<string, SymbolKind>> = {
    Job: SymbolKind.Package, Access: SymbolKind.Property, Survey: SymbolKind.Property, Values: SymbolKind.Property, Include: SymbolKind.File,
    Timber: SymbolKind.Class, Steel: SymbolKind.Class, Masonry: SymbolKind.Class, Wall: SymbolKind.Module, Member: SymbolKind.Struct,
    Let: SymbolKind.Constant, Load: SymbolKind.Event, Hanger: SymbolKind.Interface, Use: SymbolKind.Object, Detail: SymbolKind.Function, Parameter: SymbolKind.TypeParameter,
    Stage: SymbolKind.Enum, Require: SymbolKind.Boolean, BreakEven: SymbolKind.Key, LoadTest: SymbolKind.Method, Option: SymbolKind.Namespace, Answer: SymbolKind.String
};

export function symbolKind({ $type }: AstNode): SymbolKind {
    return kinds[$type] ?? SymbolKind.Variable;
}

const completionKinds: Readonly<Record<string, CompletionItemKind>> = {
    Let: CompletionItemKind.Constant, Load: CompletionItemKind.Event, Member: CompletionItemKind.Struct, Wall: CompletionItemKind.Module, Timber: CompletionItemKind.Class,
    Steel: CompletionItemKind.Class, Masonry: CompletionItemKind.Class, Detail: CompletionItemKind.Function, Parameter: CompletionItemKind.TypeParameter
};

export function completionKind({ $type }: AstNode): CompletionItemKind {
    return completionKinds[$type] ?? CompletionItemKind.Variable;
}
