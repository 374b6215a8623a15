import { GrammarUtils } from 'langium';
import * as ast from '../generated/ast.js';
import type { Access, Given, Job, SourceRef, ValueOverride } from '../model.js';
import type { Context } from './context.js';
import { fail, fileOf, report, source } from './context.js';
import { evaluateExpression } from './expressions.js';
import { aDistance, aMass, given } from './inputs.js';
import { failUnknown } from './unknown.js';

const bases = ['EN1995'];

export function evaluateJob(context: Context, root: ast.Calculation): Job {
    const [node, again] = root.declarations.filter(ast.isJob);
    if (node === undefined) {
        reportMissingJob(context, root);
        return { title: '', basis: 'EN1995', serviceClass: 2, serviceClassStated: false, combinations: '6.10', source: startOf(context, root) };
    }
    if (again !== undefined) {
        fail(context, 'duplicate-job', 'a file is one job: this is the second', source(context, again, 'title'));
    }
    const serviceClass = evaluateServiceClass(context, node.settings.find(ast.isServiceClass));
    return {
        title: node.title ?? '',
        revision: revisionOf(node.settings.find(ast.isRevision)),
        basis: evaluateBasis(context, node.settings.find(ast.isBasis)),
        serviceClass: serviceClass ?? 2,
        serviceClassStated: serviceClass !== undefined,
        combinations: evaluateCombinations(context, node.settings.find(ast.isCombinations)),
        source: source(context, node, 'title')
    };
}

const startOf = (context: Context, root: ast.Calculation): SourceRef => ({ file: fileOf(context, root), start: 0, end: 0, line: 1, column: 1 });

function reportMissingJob(context: Context, root: ast.Calculation): void {
    const start = startOf(context, root);
    const library = root.declarations.some(node => ast.isDetail(node) || ast.isValues(node)) && !root.declarations.some(node => ast.isMember(node) || ast.isLoad(node));
    if (library) {
        report(context, 'info', 'library', 'this file holds details or values for other files: it has no job of its own', start);
    } else {
        fail(context, 'no-job', 'no job is named: a file begins with a line such as job "Sail loft, relief of tie T2"', start,
            { fix: { title: 'name the job', text: 'job "Untitled"\n\n' } });
    }
}

function revisionOf(node: ast.Revision | undefined): Job['revision'] {
    const mark = node && GrammarUtils.findNodeForProperty(node.$cstNode, 'mark')?.text;
    return mark === undefined ? undefined : { mark, ...(node?.note !== undefined && { note: node.note }) };
}

function evaluateBasis(context: Context, node: ast.Basis | undefined): string {
    if (node?.name === undefined || bases.includes(node.name)) {
        return node?.name ?? bases[0]!;
    }
    failUnknown(context, 'unknown-basis', `unknown basis '${node.name}'`, source(context, node, 'name'),
        { word: node.name, among: bases, otherwise: `: this version knows ${bases.join(', ')}` });
    return bases[0]!;
}

function evaluateServiceClass(context: Context, node: ast.ServiceClass | undefined): 1 | 2 | 3 | undefined {
    const value = node?.value;
    return value === undefined || value === 1 || value === 2 || value === 3 ? value
        : fail(context, 'unknown-service-class', 'a service class is 1, 2 or 3', source(context, node!, 'value'));
}

function evaluateCombinations(context: Context, node: ast.Combinations | undefined): Job['combinations'] {
    const text = node && GrammarUtils.findNodeForProperty(node.$cstNode, 'rule')?.text;
    if (text === undefined || text === '6.10' || text === '6.10a/b') {
        return text ?? '6.10';
    }
    fail(context, 'unknown-combinations', 'combinations are 6.10 or 6.10a/b of EN 1990', source(context, node!, 'rule'));
    return '6.10';
}

export function evaluateValues(context: Context, root: ast.Calculation): readonly ValueOverride[] {
    return root.declarations.filter(ast.isValues).flatMap(block => block.entries).flatMap(entry => {
        const quantity = evaluateExpression(context, entry.value);
        return quantity === undefined ? []
            : [{ name: entry.words.join(' '), value: quantity.value, dimension: quantity.dimension, source: source(context, entry) }];
    });
}

export function evaluateAccess(context: Context, root: ast.Calculation): Access | undefined {
    const node = root.declarations.find(ast.isAccess);
    const limit = (kind: ast.AccessLimit['kind'], expected: typeof aMass): Given | undefined => {
        const found = node?.limits.find(fact => fact.kind === kind);
        return found && given(context, found.limit, `access.${kind}`, expected);
    };
    return node && { piece: limit('piece', aDistance), carry: limit('carry', aMass), source: source(context, node) };
}
