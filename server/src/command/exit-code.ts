import type { Results } from '../results.js';

/** What the command tells the shell. The greatest of several files is the whole run's. */
export const exitCode = {
    /** Everything was understood, computed and holds. */
    pass: 0,
    /** A check or requirement fails, or the verdict is incomplete: no pipeline may take it for a pass. */
    fails: 1,
    /** A file cannot be read or understood. */
    notUnderstood: 2,
    /** The program itself failed. */
    programFailed: 3
} as const;

export const exitCodeHelp = `
Exit codes:
  0  every check and requirement of every file holds
  1  a check or requirement fails, or the verdict is incomplete (something was not checked)
  2  a file cannot be read or understood, or the command line itself cannot
  3  the program itself failed`;

export const internalErrorCode = 'program-failed';

export function exitCodeOf(results: Results): number {
    if (results.findings.some(finding => finding.code === internalErrorCode)) {
        return exitCode.programFailed;
    }
    if (!results.understood) {
        return exitCode.notUnderstood;
    }
    return results.verdict === 'pass' ? exitCode.pass : exitCode.fails;
}
