/** Above the job: its sheet and its break-evens; above a member or a hanger: its place in the sheet. */
import { CstUtils, type AstNode, type LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import type { CodeLens } from 'vscode-languageserver';
import * as ast from '../../../language/src/generated/ast.js';
import { breakEvenCommand, openSheetCommand } from '../protocol.js';
import type { EditorCommands } from './editor-commands.js';

export class SheetLenses implements CodeLensProvider {
    constructor(private readonly commands: EditorCommands) { }

    provideCodeLens(document: LangiumDocument): CodeLens[] {
        const root = document.parseResult.value;
        if (!this.commands.lenses || !ast.isCalculation(root)) {
            return [];
        }
        const lenses = root.declarations.flatMap(node => {
            if (ast.isJob(node)) {
                return [lens(document, node, '$(open-preview) sheet', openSheetCommand), lens(document, node, '$(pulse) break-evens', breakEvenCommand)].flat();
            }
            return ast.isMember(node) || ast.isUse(node) || ast.isHanger(node) ? lens(document, node, '$(open-preview) sheet here', openSheetCommand) : [];
        });
        return lenses.filter(({ command }) => this.commands.has(command!.command));
    }
}

function lens(document: LangiumDocument, node: AstNode, title: string, command: string): CodeLens[] {
    if (!node.$cstNode) {
        return [];
    }
    const { range } = CstUtils.toDocumentSegment(node.$cstNode);
    return [{ range: { start: range.start, end: range.start }, command: { title, command, arguments: [document.uri.toString(), range.start.line + 1] } }];
}
