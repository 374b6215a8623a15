import { presenceWords, tally, type Row } from '../../../diff/lines.js';
import { sectionsOf } from '../../../diff/sections.js';
import type { Compared } from '../../diff.js';
import type { Page } from '../page.js';
import { plain } from '../table.js';

export function diffText(compared: readonly Compared[], page: Page): string {
    const changed = compared.filter(one => one.changed);
    const blocks = changed.map(({ comparison }) => {
        const presence = presenceWords[comparison.presence];
        const head = `${page.colors.bold(comparison.file)}  ${plain(comparison.title)}${presence === '' ? '' : ` (${presence})`}`;
        return [head, ...sectionsOf(comparison).map(({ title, rows, note }) => [`  ${title}`, ...rows.map(row => rowLine(row, page)), ...note === undefined ? [] : [`      ${note}`]].join('\n'))].join('\n');
    });
    return `${[...blocks, tally(compared.length, changed.length)].join('\n\n')}\n`;
}

/** `T2.bending: 76 % → 83 %`; what comes has a plus, what goes a minus. */
function rowLine({ what, before, after }: Row, { colors }: Page): string {
    const [one, other] = [plain(before), plain(after)];
    if (one === '') {
        return colors.green(`    + ${plain(what)}: ${other}`);
    }
    return other === '' ? colors.red(`    - ${plain(what)}: ${one}`) : `      ${plain(what)}: ${one} → ${other}`;
}
