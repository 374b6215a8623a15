/** The samples' sheets as Markdown, as they were last looked at. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { renderMarkdown } from '../../server/src/sheet/markdown/index.js';
import { sheetMeta, undated } from '../../server/src/sheet-meta.js';

const here = dirname(fileURLToPath(import.meta.url));
const samples = join(here, '../../samples');

it.each(['granary-floor', 'sail-loft'])('the sheet of %s is as it was (PADSTONE_UPDATE=1 writes it anew)', async name => {
    const file = `${name}/${name}.padstone`;
    const text = readFileSync(join(samples, file), 'utf8');
    const included = (path: string): string | undefined => {
        const at = resolve(samples, path);
        return existsSync(at) ? readFileSync(at, 'utf8') : undefined;
    };
    const made = renderMarkdown(compute(evaluateText(text, file, included)), undated(await sheetMeta([{ file, text }], new Date())));
    const golden = join(here, `${name}.md`);
    if (process.env['PADSTONE_UPDATE']) {
        writeFileSync(golden, made);
    }
    expect(made).toBe(readFileSync(golden, 'utf8'));
});
