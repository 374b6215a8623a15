import { isolated } from '../document/plain-text.js';

/**
 * Text of the file is never markup, nor anything that GitHub makes of text by itself: a person who is told,
 * an issue, a picture for `:a word:`, mathematics between dollars.
 */
export function escapeMarkdown(text: string): string {
    return isolated(text)
        .replace(/[\\`*[\]|<>~&$]|(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, '\\$&')
        .replace(/@|#(?=\d)|:(?=[\w+-]+:)/g, '$&<!-- -->');
}

/** What would begin a list, a heading or an underline at the beginning of a line. */
export function escapeLineStart(line: string): string {
    return line.replace(/^(\s*)([-+=#])/, '$1\\$2').replace(/^(\s*\d+)([.)])(?=\s|$)/, '$1\\$2');
}

export function escapeHtml(text: string): string {
    return isolated(text).replace(/[&<>"]/g, character => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[character]!);
}
