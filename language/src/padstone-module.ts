/** The services of the language: the server adds its own to these. */
import { EmptyFileSystem, createDefaultCoreModule, createDefaultSharedCoreModule, inject } from 'langium';
import type { DeepPartial, LangiumCoreServices, LangiumSharedCoreServices, Module } from 'langium';
import { createDefaultModule, createDefaultSharedModule } from 'langium/lsp';
import type { DefaultSharedModuleContext, LangiumServices, LangiumSharedServices, PartialLangiumServices, PartialLangiumSharedServices } from 'langium/lsp';
import { PadstoneGeneratedModule, PadstoneGeneratedSharedModule } from './generated/module.js';
import { PadstoneLexerMessages, PadstoneParserMessages } from './lexing/messages.js';
import { PadstoneLexer } from './lexing/lexer.js';
import { createPadstoneParser } from './lexing/parser.js';
import { PadstoneTokenBuilder } from './lexing/tokens.js';
import { PadstoneScopeComputation, PadstoneScopeProvider } from './references/scope.js';

export type PadstoneServices = LangiumServices;

export const PadstoneModule: Module<LangiumCoreServices, DeepPartial<LangiumCoreServices>> = {
    parser: {
        Lexer: services => new PadstoneLexer(services),
        TokenBuilder: () => new PadstoneTokenBuilder(),
        LangiumParser: services => createPadstoneParser(services),
        LexerErrorMessageProvider: () => new PadstoneLexerMessages(),
        ParserErrorMessageProvider: services => new PadstoneParserMessages(services.Grammar)
    },
    references: {
        ScopeComputation: services => new PadstoneScopeComputation(services),
        ScopeProvider: services => new PadstoneScopeProvider(services)
    }
};

/** The language with its editor services; `added` stands before Langium's and this module's own. */
export function createPadstoneServices(
    context: DefaultSharedModuleContext,
    added: Module<PadstoneServices, PartialLangiumServices> = {},
    addedShared: Module<LangiumSharedServices, PartialLangiumSharedServices> = {}
): { readonly shared: LangiumSharedServices; readonly padstone: PadstoneServices } {
    const shared = inject(createDefaultSharedModule(context), PadstoneGeneratedSharedModule, addedShared);
    const padstone = inject(createDefaultModule({ shared }), PadstoneGeneratedModule, PadstoneModule, added);
    shared.ServiceRegistry.register(padstone);
    return { shared, padstone };
}

/** The language alone, for the command and tests: nothing of an editor is loaded. */
export function createPadstoneCoreServices(): { readonly shared: LangiumSharedCoreServices; readonly padstone: LangiumCoreServices } {
    const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), PadstoneGeneratedSharedModule);
    const padstone = inject(createDefaultCoreModule({ shared }), PadstoneGeneratedModule, PadstoneModule);
    shared.ServiceRegistry.register(padstone);
    return { shared, padstone };
}
