import type { Severity } from '../../../../language/src/model.js';
import type { Format } from './format.js';

const commands: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', hazard: 'warning', info: 'notice' };

/** Commands of GitHub's workflow runner: each finding stands at its line in the pull request. The verdicts follow in plain lines. */
export const github: Format = {
    tellsAsked: false,
    part: results => results.findings.map(({ severity, code, message, source: { file, line, column } }) => (
        `::${commands[severity]} file=${property(file)},line=${line},col=${column},title=${property(`Padstone ${code}`)}::${data(message)}\n`
    )).join(''),
    whole: files => files.map(({ part, file, verdict, verdictReason }) => `${part}${data(`${file}: ${verdict.toUpperCase()}, ${verdictReason}`)}\n`).join('')
};

/** As the runner's own toolkit escapes them, so that no text of a file is a command. */
const data = (text: string): string => text.replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A');
const property = (text: string): string => data(text).replace(/:/g, '%3A').replace(/,/g, '%2C');
