import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));
const bundle = `${root}dist/padstone.cjs`;

export interface Run {
    readonly code: number;
    readonly stdout: string;
    readonly stderr: string;
}

/** The built command as a shell would run it, without a terminal. */
export function padstone(args: readonly string[], options: { readonly cwd?: string; readonly env?: NodeJS.ProcessEnv } = {}): Promise<Run> {
    if (!existsSync(bundle)) {
        throw new Error('dist/padstone.cjs is missing: run `npm run build` first');
    }
    const { NO_COLOR: _no, FORCE_COLOR: _force, CI: _ci, ...inherited } = process.env;
    return new Promise(resolve => {
        const child = execFile(process.execPath, [bundle, ...args], { cwd: options.cwd ?? root, env: { ...inherited, ...options.env }, maxBuffer: 1e8 },
            (_error, stdout, stderr) => resolve({ code: child.exitCode ?? -1, stdout, stderr }));
    });
}
