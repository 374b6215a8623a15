import { existsSync } from 'node:fs';
import { dirname, extname, join } from 'node:path';
import type { Command } from 'commander';
import { version } from '../../../package.json';
import { renderSheet, type Display } from '../sheet/index.js';
import { renderMarkdown } from '../sheet/markdown/index.js';
import { sheetMeta, undated } from '../sheet-meta.js';
import { calculateFile, readFromDisk } from './calculate-file.js';
import { exitCode } from './exit-code.js';
import { tell } from './tell.js';

const help = `
Without SOURCE, the calculation that the sheet names is looked for beside the sheet.

Exit codes:
  0  this source, with what it includes, makes this very sheet
  1  it does not: the text has changed, the sheet has, or another version of Padstone makes another
  2  one of them cannot be read
  3  the program itself failed`;

export function addVerify(program: Command): void {
    program.command('verify')
        .description('Say whether a source still makes a sheet that was written of it.')
        .argument('<sheet>', 'a sheet in HTML or Markdown')
        .argument('[source]', 'the calculation')
        .addHelpText('after', help)
        .action(async (sheet: string, source: string | undefined) => { process.exitCode = await verify(sheet, source); });
}

/** In whose units and with whose decimal sign it may have been written. */
const displays: readonly Display[] = (['si', 'imperial'] as const).flatMap(units => (['point', 'comma'] as const).map(decimal => ({ units, decimal })));

/** What a sheet says of its own making. */
interface Imprint {
    /** Names of the files, without folders, the calculation first. */
    readonly files: readonly string[];
    readonly hash: string;
    readonly date?: string;
    readonly version?: string;
}

async function verify(sheet: string, given: string | undefined): Promise<number> {
    const text = readFromDisk(sheet);
    const imprint = typeof text === 'string' ? imprintOf(text) : undefined;
    if (typeof text !== 'string' || imprint === undefined) {
        tell(`${sheet}: ${typeof text === 'string' ? 'this is no sheet in HTML or Markdown that Padstone wrote' : text.message}`);
        return exitCode.notUnderstood;
    }
    const source = given ?? join(dirname(sheet), imprint.files[0]!);
    if (!existsSync(source)) {
        tell(given === undefined ? `${imprint.files[0]} is not beside ${sheet}: say where it is, padstone verify ${sheet} SOURCE` : `${source}: there is no such file`);
        return exitCode.notUnderstood;
    }
    const { results, sources } = calculateFile(source);
    if (sources.length === 0) {
        tell(`${source}: ${results.verdictReason}`);
        return exitCode.notUnderstood;
    }
    const now = await sheetMeta(sources, new Date());
    if (now.sourceHash !== imprint.hash) {
        process.stdout.write(`${source} has changed since ${sheet} was written: its content hash is ${now.sourceHash}, the sheet's is ${imprint.hash}\n`);
        return exitCode.fails;
    }
    const meta = imprint.date === undefined ? undated(now) : { ...now, date: imprint.date, version: imprint.version };
    const render = extname(sheet).toLowerCase() === '.md' ? renderMarkdown : renderSheet;
    if (!displays.some(display => render(results, meta, display) === text)) {
        const other = imprint.version !== undefined && imprint.version !== version;
        process.stdout.write(`${source} is the text that ${sheet} was made from, but it does not make this sheet: ${other ? `Padstone was ${imprint.version}, and is ${version}` : 'the sheet was changed, or made by another Padstone'}\n`);
        return exitCode.fails;
    }
    process.stdout.write(`${source} makes ${sheet}, content hash ${imprint.hash}\n`);
    return exitCode.pass;
}

/** Of the head of a sheet, where no text of the calculation can stand for it. */
function imprintOf(text: string): Imprint | undefined {
    const source = /<dt>Source<\/dt><dd>(.*?), content hash <code>([0-9a-f]{64})<\/code>/.exec(text) ?? /^- Source: (.*), content hash `([0-9a-f]{64})`$/m.exec(text);
    const made = /<dt>Calculated<\/dt><dd>([^<]*), Padstone ([^<]*)<\/dd>/.exec(text) ?? /^- Calculated: (.*), Padstone (.*)$/m.exec(text);
    return source === null ? undefined
        : { files: plainText(source[1]!).split(', '), hash: source[2]!, ...(made && { date: made[1], version: made[2] }) };
}

/** A file's name as it is, without marks. */
const plainText = (marked: string): string => marked.replace(/<[^>]*>|\\(?=[^\w\s])/g, '')
    .replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&quot;/g, '"').replace(/&#39;/g, '\'').replace(/&amp;/g, '&');
