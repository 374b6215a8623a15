import type { LangiumDocument } from 'langium';
import type { Formatter } from 'langium/lsp';
import type { DocumentOnTypeFormattingOptions, DocumentOnTypeFormattingParams, DocumentRangeFormattingParams, Range, TextEdit } from 'vscode-languageserver';
import { formatChanges } from '../../../language/src/index.js';

/** The language's own printer, as an editor asks for it: for all, for a selection, and for the line that is finished. */
export class TextFormatter implements Formatter {
    readonly formatOnTypeOptions: DocumentOnTypeFormattingOptions = { firstTriggerCharacter: '}', moreTriggerCharacter: ['\n'] };

    formatDocument(document: LangiumDocument): TextEdit[] {
        return editsOf(document);
    }

    formatDocumentRange(document: LangiumDocument, { range }: DocumentRangeFormattingParams): TextEdit[] {
        return editsOf(document).filter(edit => overlaps(edit.range, range));
    }

    /** After the end of a line that line, else as far as the brace; never what lies before the line. */
    formatDocumentOnType(document: LangiumDocument, { position, ch }: DocumentOnTypeFormattingParams): TextEdit[] {
        const { line } = position;
        const typed = ch === '\n'
            ? { start: { line: line - 1, character: 0 }, end: { line: line - 1, character: Number.MAX_SAFE_INTEGER } }
            : { start: { line, character: 0 }, end: position };
        return editsOf(document).filter(({ range: { start, end } }) => !isBefore(start, typed.start) && !isBefore(typed.end, end));
    }
}

function editsOf(document: LangiumDocument): TextEdit[] {
    const at = (offset: number) => document.textDocument.positionAt(offset);
    return formatChanges(document).map(({ start, end, text }) => ({ range: { start: at(start), end: at(end) }, newText: text }));
}

type Position = Range['start'];
const isBefore = (a: Position, b: Position): boolean => a.line < b.line || (a.line === b.line && a.character < b.character);
const overlaps = (a: Range, b: Range): boolean => !isBefore(a.end, b.start) && !isBefore(b.end, a.start);
