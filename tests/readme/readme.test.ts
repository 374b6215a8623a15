import { readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { examples } from '../../language/src/examples.js';

const readme = new URL('../../README.md', import.meta.url);
const [begin, end] = ['<!-- made from language/src/examples.ts -->', '<!-- end of what is made -->'];

/** The language reference, one example for each construct; tests/language runs every one. */
function reference(): string {
    return examples.map(({ construct, text, note, inside, notComputed }) => {
        const where = inside === 'member' ? ' (in a member)' : '';
        const later = notComputed ? ' *Understood, but not computed by this version: it is listed as not checked.*' : '';
        return `**${construct}**${where}: ${note}${later}\n\n\`\`\`padstone\n${text}\n\`\`\`\n`;
    }).join('\n');
}

it('prints the language reference as its examples are (PADSTONE_UPDATE=1 writes it anew)', () => {
    const text = readFileSync(readme, 'utf8');
    const [before, rest] = text.split(begin);
    const after = rest?.split(end)[1];
    expect(after, 'the marks of the reference are in the README').toBeDefined();
    const whole = `${before}${begin}\n\n${reference()}\n${end}${after}`;
    if (process.env['PADSTONE_UPDATE']) {
        writeFileSync(readme, whole);
    }
    expect(readFileSync(readme, 'utf8')).toBe(whole);
});
