/** Prints how fast the minified programs are, and how large; asserts nothing. They are built for this alone: `npm run bench`. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { evaluateText } from '../../language/src/index.js';
import { breakEvens, guessedPaths, worstFunction } from '../../server/src/certainty/index.js';
import { findAll } from '../../server/src/compute.js';
import { finished } from '../../server/src/finished.js';
import { Client } from '../lsp/client.js';
import { position } from '../lsp/jobs.js';
import { boltedLeaves, largeFloors } from './large.js';
import { median, repeat, report, timed, wait } from './measure.js';
import { sheets } from './sheets.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const file = `${root}samples/sail-loft/sail-loft.padstone`;
const uri = pathToFileURL(file).href;
const text = readFileSync(file, 'utf8');

const built = mkdtempSync(join(tmpdir(), 'padstone-bench-'));
const serverBundle = join(built, 'server.cjs');

/** Types one digit of a load, to and fro. */
class Typist {
    private version = 1;
    constructor(private readonly client: Client, private readonly at = position(text, '0.75 kN/m2', 3)) { }

    key(): Promise<void> {
        this.version += 1;
        const range = { start: this.at, end: { ...this.at, character: this.at.character + 1 } };
        return this.client.change(uri, this.version, { range, text: String(this.version % 10) });
    }

    /** A text that was not there before, so that nothing is known of it. */
    fresh(): Promise<void> {
        this.version += 1;
        return this.client.change(uri, this.version, { text: text.replace('0.75 kN/m2', `0.${7000 + this.version} kN/m2`) });
    }
}

async function keystrokes(): Promise<void> {
    const client = await Client.start({}, serverBundle);
    await client.open(uri, text);
    await client.hints(uri);
    const typist = new Typist(client);
    const keyToHints = () => timed(async () => {
        await typist.key();
        await client.hints(uri);
    });
    await repeat(30, keyToHints);   // until the compiler has warmed to it
    report('keystroke to hints, after a pause', await repeat(100, async () => {
        await wait(60);
        return keyToHints();
    }), 'ms', 20);
    report('keystroke to hints, the next at once', await repeat(100, keyToHints), 'ms', 20);
    report('20 keys 40 ms apart, last key to hints', await repeat(5, async () => {
        for (let i = 0; i < 19; i++) {
            await typist.key();
            await wait(40);
        }
        return keyToHints();
    }), 'ms');
    await client.change(uri, 10_000, { range: { start: position(text, 'section 190'), end: position(text, 'section 190') }, text: 'sect } (' });
    report('keystroke to hints, text that does not parse', await repeat(50, async () => {
        await wait(20);
        return keyToHints();
    }), 'ms');
    await client.stop();
}

/** The pause is long enough for break-evens to have begun, and too short for them to end. */
async function whileBreakEvensRun(): Promise<void> {
    const client = await Client.start({}, serverBundle);
    await client.open(uri, text);
    await client.hints(uri);
    const typist = new Typist(client);
    const keyToHints = () => timed(async () => {
        await typist.key();
        await client.hints(uri);
    });
    await repeat(20, keyToHints);
    report('keystroke to hints while break-evens run', await repeat(40, async () => {
        await wait(260);
        return keyToHints();
    }), 'ms', 20);
    report('the last key to break-evens, proof loads and options', await repeat(3, async () => {
        const before = client.notices.length;
        return timed(async () => {
            await typist.fresh();
            await client.when(() => client.notices.slice(before).find(({ whole }) => whole));
        });
    }), 'ms');
    await client.stop();
}

/** As they are found in the program, without a server. */
function twentyBreakEvens(): void {
    const { model } = evaluateText(text, file, path => readFileSync(join(dirname(file), basename(dirname(path)), basename(path)), 'utf8'));
    const paths = guessedPaths(model).slice(0, 20);
    const runs = [0, 1, 2].map(() => {
        const start = performance.now();
        finished(breakEvens(model, paths, { worst: worstFunction(model, changed => findAll({ model: changed, findings: [], broken: [] })) }));
        return performance.now() - start;
    });
    report(`${paths.length} break-evens on the sail loft`, runs, 'ms', 1000);
}

async function coldStart(): Promise<void> {
    report('cold start of the server to first hints', await repeat(10, async () => {
        let client: Client | undefined;
        const time = await timed(async () => {
            client = await Client.start({}, serverBundle);
            await client.open(uri, text);
            await client.hints(uri);
        });
        await client?.stop();
        return time;
    }), 'ms', 500);
}

async function command(): Promise<void> {
    const run = (...args: string[]) => timed(async () => void spawnSync(process.execPath, args));
    const nothing = await repeat(10, () => run('-e', '0'));
    const check = await repeat(10, () => run(join(built, 'padstone.cjs'), 'check', file));
    report('Node that does nothing', nothing, 'ms');
    report('padstone check, cold', check, 'ms');
    console.log(`  ${(median(check) / median(nothing)).toFixed(1)} times a Node that does nothing`);
}

function sizes(): void {
    for (const bundle of ['server.cjs', 'server.web.js', 'padstone.cjs', 'client.cjs']) {
        const path = join(built, bundle);
        const zipped = gzipSync(readFileSync(path)).length / 1e6;
        report(`${bundle} (${zipped.toFixed(2)} MB zipped)`, [statSync(path).size / 1e6], 'MB', bundle.startsWith('server') ? 1.5 : undefined);
    }
}

try {
    spawnSync(process.execPath, ['.build/bundle.mjs', '--minify', '--out', built], { cwd: root, stdio: 'inherit' });
    sizes();
    await keystrokes();
    await whileBreakEvensRun();
    twentyBreakEvens();
    await coldStart();
    await command();
    boltedLeaves();
    largeFloors();
    sheets();
} finally {
    rmSync(built, { recursive: true });
}
