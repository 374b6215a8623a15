/** Blocks, comments of several lines, and the parts of a file under a comment that is a heading: `// ---- what is there ----`. */
import type { LangiumDocument } from 'langium';
import { DefaultFoldingRangeProvider } from 'langium/lsp';
import { FoldingRangeKind, type FoldingRange, type FoldingRangeParams } from 'vscode-languageserver';

const heading = /^\/\/ ?(?:-{3,}|={3,})/;

export class Folding extends DefaultFoldingRangeProvider {
    override getFoldingRanges(document: LangiumDocument, params: FoldingRangeParams): FoldingRange[] {
        return [...super.getFoldingRanges(document, params) as FoldingRange[], ...partsOf(document.textDocument.getText())];
    }
}

/** Each to the last line with text before the next heading. */
function partsOf(text: string): FoldingRange[] {
    const lines = text.split(/\r?\n/);
    const headings = lines.flatMap((line, index) => heading.test(line) ? [index] : []);
    return headings.flatMap((startLine, index) => {
        let endLine = (headings[index + 1] ?? lines.length) - 1;
        while (endLine > startLine && lines[endLine]!.trim() === '') {
            endLine -= 1;
        }
        return endLine > startLine ? [{ startLine, endLine, kind: FoldingRangeKind.Region }] : [];
    });
}
