/** Which findings are told: not those that a syntax error brings about, and not without end. */
import type * as ast from '../generated/ast.js';
import type { Finding, SourceRef } from '../model.js';
import type { Context } from './context.js';
import { source } from './context.js';
import type { SyntaxError } from './syntax.js';

/** So many findings are told for a file; one more says how many are left out. */
const mostFindings = 200;

/** In the order of the text, those of the main file first. */
export function findingsToTell(context: Context, errors: readonly SyntaxError[], unsound: ReadonlySet<ast.Declaration>, file: string): readonly Finding[] {
    return bounded(withoutConsequences(context, errors, unsound), file);
}

/** What a statement that could not be read makes seem missing. */
const consequences = new Set([
    'no-material', 'no-section', 'no-length', 'no-support', 'no-grade', 'no-category', 'load-on-nothing', 'load-without-place', 'load-without-strip',
    'load-misplaced', 'empty-loss', 'floor-incomplete', 'said-twice'
]);

function withoutConsequences(context: Context, errors: readonly SyntaxError[], unsound: ReadonlySet<ast.Declaration>): readonly Finding[] {
    const runs = [...unsound].map(node => source(context, node));
    const syntax = errors.map(error => error.finding);
    const units = new Set(syntax.filter(isUnitMistake).map(finding => lineKey(finding.source)));
    const told = context.findings.filter(({ code, source: at }) =>
        !(consequences.has(code) && runs.some(run => run.file === at.file && run.start <= at.start && at.start < run.end)) && !(code === 'unit-missing' && units.has(lineKey(at))));
    return [...syntax, ...told];
}

const lineKey = ({ file, line }: SourceRef) => `${file}:${line}`;
const isUnitMistake = ({ code }: Finding) => code === 'unknown-unit' || code === 'decimal-comma';

function bounded(findings: readonly Finding[], file: string): readonly Finding[] {
    const inOrder = (a: Finding, b: Finding) => fileRank(a, file) - fileRank(b, file) || a.source.file.localeCompare(b.source.file) || a.source.start - b.source.start;
    const sorted = [...findings].sort((a, b) => inOrder(a, b) || severityRank(a) - severityRank(b));
    if (sorted.length <= mostFindings) {
        return sorted;
    }
    const kept = [...sorted].sort((a, b) => severityRank(a) - severityRank(b)).slice(0, mostFindings).sort(inOrder);
    const left = sorted.length - mostFindings;
    return [...kept, { severity: 'error', code: 'more-findings', message: `and ${left} more`, source: kept.at(-1)!.source }];
}

const fileRank = ({ source: { file } }: Finding, main: string): number => (file === main ? 0 : 1);
const severityRank = ({ severity }: Finding): number => (severity === 'error' ? 0 : 1);
