import { amount, percentUp } from '../../sheet/numbers.js';
import type { CheckResult, Results } from '../../results.js';
import type { Format } from './format.js';

/** JUnit's report as pipelines read it: a suite a file, a case a check, a requirement, an error of the text, and the verdict. */
export const junit: Format = {
    tellsAsked: false,
    part: results => {
        const cases = casesOf(results);
        const count = (kind: Case['problem']) => cases.filter(({ problem }) => problem === kind).length;
        const lines = cases.map(({ name, problem, message }) => element('testcase', { name, classname: results.file },
            problem === undefined ? '' : element(problem, { message, type: problem }, '')));
        return element('testsuite', { name: results.file, tests: cases.length, failures: count('failure'), errors: count('error') }, `\n${lines.join('\n')}\n`);
    },
    whole: files => `<?xml version="1.0" encoding="UTF-8"?>\n${element('testsuites', { name: 'Padstone' }, `\n${files.map(({ part }) => part).join('\n')}\n`)}\n`
};

interface Case {
    readonly name: string;
    readonly problem?: 'failure' | 'error';
    readonly message?: string;
}

function casesOf({ checks, requirements, findings, verdict, verdictReason, understood }: Results): Case[] {
    const mistakes = understood ? [] : findings.filter(({ severity, code }) => severity === 'error' && code !== 'check-fails' && code !== 'requirement-fails');
    return [
        ...mistakes.map(({ code, message, source: { file, line, column } }): Case => ({ name: `${code} at ${file}:${line}:${column}`, problem: 'error', message })),
        ...checks.map((check): Case => check.pass ? { name: nameOf(check) } : { name: nameOf(check), problem: 'failure', message: failureOf(check) }),
        ...requirements.map(({ text, holds, reason }): Case => holds ? { name: `require ${text}` } : { name: `require ${text}`, problem: 'failure', message: reason ?? 'does not hold' }),
        verdict === 'pass' ? { name: 'verdict' } : { name: 'verdict', problem: 'failure', message: `${verdict}: ${verdictReason}` }
    ];
}

const nameOf = ({ id, stage, option }: CheckResult): string => `${id}${stage === null ? '' : ` in ${stage}`}${option === null ? '' : `, option ${option}`}`;

const failureOf = ({ utilisation, demand, capacity, clause, combination }: CheckResult): string =>
    `${percentUp(utilisation)}: ${amount(demand)} of ${amount(capacity)}, ${clause}, ${combination}`;

function element(name: string, attributes: Readonly<Record<string, string | number | undefined>>, content: string): string {
    const written = Object.entries(attributes).flatMap(([key, value]) => value === undefined ? [] : [` ${key}="${escape(String(value))}"`]).join('');
    return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** White space in an attribute would be read as spaces; what XML 1.0 cannot hold at all is left out. */
const escape = (text: string): string => text.replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '')
    .replace(/[&<>"\t\n\r]/g, character => `&#${character.charCodeAt(0)};`);
