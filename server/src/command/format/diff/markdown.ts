import { presenceWords, tally } from '../../../diff/lines.js';
import { sectionsOf } from '../../../diff/sections.js';
import type { Compared } from '../../diff.js';

/** For a comment on a pull request. */
export function diffMarkdown(compared: readonly Compared[]): string {
    const changed = compared.filter(one => one.changed);
    const blocks = changed.map(({ comparison }) => {
        const presence = presenceWords[comparison.presence];
        const head = `### ${escape(comparison.title)} (${code(comparison.file)})${presence === '' ? '' : `, ${presence}`}`;
        return [head, ...sectionsOf(comparison).map(({ title, rows, note }) => [
            `**${title}**`, '',
            ...rows.length === 0 ? [] : ['| | before | after |', '|---|---|---|'],
            ...rows.map(({ what, before, after }) => `| ${escape(what)} | ${escape(before)} | ${escape(after)} |`),
            ...note === undefined ? [] : ['', note]
        ].join('\n'))].join('\n\n');
    });
    return `${['## Padstone', ...blocks, tally(compared.length, changed.length)].join('\n\n')}\n`;
}

/** Text of the files is never markup, nor does it call anybody. */
function escape(text: string): string {
    return text.replace(/[\\`*_{}[\]#!|<>~&@]/g, character => character === '@' ? '@\u200B' : `\\${character}`).replace(/\s+/g, ' ');
}

function code(text: string): string {
    return text.includes('`') ? escape(text) : `\`${text.replace(/\s+/g, ' ')}\``;
}
