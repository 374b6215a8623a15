import { refusal } from './lexing/lexer.js';
import { syntaxErrors } from './evaluate/syntax.js';
import { applyChanges, formatChanges } from './format/format.js';
import type { Finding } from './model.js';
import { parseText } from './parse-text.js';

export interface Formatted {
    /** What does not parse is as it was. */
    readonly text: string;
    /** Why it is as it was. */
    readonly findings: readonly Finding[];
}

/** A text as it should look; `file` is what the places of its findings call it. Never throws on bad input. */
export function formatText(text: string, file: string): Formatted {
    const refused = refusal(text);
    if (refused !== undefined) {
        return { text, findings: [{ severity: 'error', code: 'not-read', message: refused, source: { file, start: 0, end: 0, line: 1, column: 1 } }] };
    }
    const bare = text.replace(/^\uFEFF/, '');
    const document = parseText(bare);
    const findings = syntaxErrors(document.parseResult, bare, file).map(({ finding }) => finding);
    return { text: text.slice(0, text.length - bare.length) + applyChanges(bare, formatChanges(document)), findings };
}
