/** Whole alternatives: each is the calculation with other members in the place of some. */
import * as ast from '../generated/ast.js';
import type { Finding, Option, SourceRef } from '../model.js';
import type { Calculation, Reading } from './calculation.js';
import { evaluateCalculation } from './calculation.js';
import type { Context } from './context.js';
import { attempt, fail, report, source } from './context.js';
import { resolve } from './names.js';

/** Each is a calculation of its own; more than a person compares. */
const mostOptions = 20;

/** Those that are sound; what is wrong with the others is told. */
export function evaluateOptions(read: Reading, root: ast.Calculation, drawn: Calculation): readonly Option[] {
    const { context } = drawn;
    const again = new Set<unknown>(context.names.duplicates.map(duplicate => duplicate.again));
    const nodes = root.declarations.filter(ast.isOption).filter(node => node.name && !again.has(node));
    if (nodes.length > mostOptions) {
        fail(context, 'too-many-options', `these are ${nodes.length} options: at most ${mostOptions} are computed`, source(context, nodes[mostOptions]!, 'name'));
    }
    const known = new Set(context.findings.map(keyOf));
    return nodes.slice(0, mostOptions).flatMap(node => {
        const { value, sound } = attempt(context, () => evaluateOption(read, root, node, context, known));
        if (value === undefined || !sound || read.unsound.has(node)) {
            report(context, 'warning', 'not-computed', `option ${node.name} is not computed: it has an error`, source(context, node, 'name'));
            return [];
        }
        return [value];
    });
}

const keyOf = ({ code, message, source: { file, start } }: Finding): string => `${code} ${file} ${start} ${message}`;

function evaluateOption(read: Reading, root: ast.Calculation, node: ast.Option, context: Context, known: ReadonlySet<string>): Option | undefined {
    const replacements = replacementsOf(context, node);
    const declarations = root.declarations.filter(one => !ast.isOption(one) && !ast.isLoadTest(one) && !ast.isBreakEven(one));
    const tried = evaluateCalculation(read, { ...root, declarations: declarations.map(one => replacements.get(one) ?? one) });
    tell(context, node, tried.context.findings.filter(finding => !known.has(keyOf(finding))));
    const names = new Set([...replacements.values()].map(({ name }) => name));
    const replaced = tried.model.members.filter(({ name }) => names.has(name));
    return replaced.length < names.size ? undefined
        : { name: node.name, ...(node.title !== undefined && { title: node.title }), replaced, model: tried.model, source: source(context, node) };
}

/** By the member that is replaced. */
function replacementsOf(context: Context, node: ast.Option): ReadonlyMap<ast.Declaration, ast.Member> {
    const found = new Map<ast.Declaration, ast.Member>();
    for (const change of node.changes) {
        const member = resolve(context, change.member, change, ast.isMember, 'a member');
        if (member === undefined) {
            continue;
        }
        const before = found.get(member);
        if (before !== undefined) {
            fail(context, 'replaced-twice', `option ${node.name} replaces ${member.name} twice`, source(context, change, 'member'), { related: [{ message: 'the first is here', source: source(context, before) }] });
            continue;
        }
        found.set(member, { ...change, $type: 'Member', name: member.name, title: member.title } as unknown as ast.Member);
    }
    if (node.changes.length === 0) {
        fail(context, 'empty-option', `option ${node.name} changes nothing: say what it replaces, such as replace R1 { … }`, source(context, node, 'name'));
    }
    return found;
}

/** What is amiss in the option's own text speaks for itself; elsewhere it is amiss with the option alone. */
function tell(context: Context, node: ast.Option, findings: readonly Finding[]): void {
    const own = source(context, node);
    for (const finding of findings) {
        context.failures.count += finding.severity === 'error' ? 1 : 0;
        context.findings.push(isWithin(finding.source, own) ? finding : {
            severity: finding.severity, code: finding.code, message: `in option ${node.name}: ${finding.message}`, source: finding.source,
            related: [{ message: 'the option is here', source: source(context, node, 'name') }, ...finding.related ?? []]
        });
    }
}

const isWithin = (inner: SourceRef, outer: SourceRef): boolean => inner.file === outer.file && outer.start <= inner.start && inner.end <= outer.end;
