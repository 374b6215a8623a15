/** Runs of text as Markdown, and as the HTML that a summary may hold. */
import type { Run, Text } from '../document/blocks.js';
import { clip } from '../drawing/labels.js';
import { escapeHtml, escapeMarkdown } from './escape.js';

/** Characters of a run in a table or a summary, where a name of thousands would hide the rest. */
const longestInCell = 300;

export function markdownText(text: Text, lineBreak = '  \n'): string {
    return text.map(run => (run.breaks ? lineBreak : '') + markdownRun(run)).join('');
}

export function markdownCell(text: Text): string {
    return markdownText(text.map(run => ({ ...run, text: clip(run.text, longestInCell) })), '<br>');
}

export function htmlText(text: Text): string {
    return text.map(({ breaks, text: content, bold, script }) => {
        const escaped = escapeHtml(clip(content, longestInCell));
        const scripted = script ? `<${script}>${escaped}</${script}>` : escaped;
        return (breaks ? ' ' : '') + (bold ? `<b>${scripted}</b>` : scripted);
    }).join('');
}

/** Spaces stand outside the marks, which else would not be any. */
function markdownRun(run: Run): string {
    const [, before = '', content = '', after = ''] = /^(\s*)([^]*?)(\s*)$/.exec(run.text)!;
    return content === '' ? run.text : before + marked(content, run) + after;
}

function marked(content: string, { bold, code, script, target }: Run): string {
    const text = code ? inCode(content) : escapeMarkdown(content);
    const scripted = script ? `<${script}>${text}</${script}>` : text;
    const linked = target === undefined ? scripted : `[${scripted}](#${encodeURI(target)})`;
    return bold ? `**${linked}**` : linked;
}

function inCode(content: string): string {
    const fence = '`'.repeat(1 + Math.max(0, ...(content.match(/`+/g) ?? []).map(({ length }) => length)));
    return `${fence}${content}${fence}`;
}
