/** The command line: `padstone check`, `padstone sheet`, `padstone breakeven`, `padstone diff`, `padstone format`, `padstone verify`, `padstone textconv`, `padstone schema`. */
import { Command, CommanderError } from 'commander';
import pc from 'picocolors';
import { version } from '../../../package.json';
import { describe } from './calculate-file.js';
import { addBreakEven } from './break-even.js';
import { addCheck } from './check/index.js';
import { serve, workerArgument } from './check/workers.js';
import { addDiff } from './diff.js';
import { exitCode, exitCodeHelp } from './exit-code.js';
import { addFormat } from './format-files.js';
import { pageOf } from './format/page.js';
import { plainDisplay } from '../sheet/index.js';
import { addSchema } from './schema.js';
import { addSheet } from './sheet.js';
import { addTextconv } from './textconv.js';
import { addVerify } from './verify.js';

/** Columns where the output is no terminal: the same for every reader. */
const plainWidth = 120;
/** Narrower, and the numbers themselves would not fit. */
const leastWidth = 80;

const page = pageOf({
    width: process.stdout.isTTY ? Math.max(process.stdout.columns, leastWidth) : plainWidth,
    // picocolors alone would colour a pipe that runs under CI.
    coloured: pc.isColorSupported && Boolean(process.stdout.isTTY || process.env.FORCE_COLOR),
    display: plainDisplay
});

function createProgram(): Command {
    const program = new Command('padstone')
        .description('Retrofit calculations for old buildings, checked.')
        .version(version)
        .addHelpText('after', exitCodeHelp)
        .exitOverride();
    addCheck(program, page);
    addSheet(program, page);
    addBreakEven(program, page);
    addDiff(program, page);
    addFormat(program, page);
    addVerify(program);
    addTextconv(program);
    addSchema(program);
    return program;
}

async function run(): Promise<void> {
    try {
        await createProgram().parseAsync();
    } catch (error) {
        if (error instanceof CommanderError) {
            process.exitCode = error.exitCode === 0 ? exitCode.pass : exitCode.notUnderstood;
        } else {
            process.stderr.write(`padstone: the program itself failed: ${describe(error)}\n`);
            process.exitCode = exitCode.programFailed;
        }
    }
}

// A reader that has seen enough (`| head`) is no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') {
        throw error;
    }
});

if (process.argv[2] === workerArgument && process.send) {
    serve();
} else {
    void run();
}
