/** Threads, bolt grades and steels: what bolts, hangers and splices have in common. */
import type { AstNode } from 'langium';
import * as ast from '../generated/ast.js';
import type { BoltGroup, Given } from '../model.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { consequential, evidenceOf, wholeNumber } from './inputs.js';
import { boltClasses, steelClasses, threadSizes } from './strength-classes.js';
import { failUnknown } from './unknown.js';

export interface Thread { readonly size: string; readonly diameter: number }

/** Of `M12`, or of what the use of a detail gives for a parameter. */
export function threadOf(context: Context, node: ast.Bolts | ast.Rods): Thread | undefined {
    const name = context.expansion?.threads.get(node.thread) ?? node.thread;
    if (name === undefined || threadSizes.includes(name)) {
        return name === undefined ? undefined : { size: name, diameter: Number(name.slice(1)) };
    }
    return failUnknown(context, 'unknown-thread', `unknown thread '${name}'`, source(context, node, 'thread'),
        { word: name, among: [...threadSizes, ...context.expansion?.threads.keys() ?? []], otherwise: `: known are ${threadSizes.join(', ')}` });
}

/** Where none is said it is the weakest, assumed. */
export function boltGradeOf(context: Context, node: ast.Bolts | ast.Rods, path: string): Given<string> | undefined {
    const grade = ast.isRods(node) ? node.grade : node.parts.find(ast.isBoltGrade);
    const name = grade?.value === undefined ? boltClasses[0]! : String(grade.value);
    const at = grade === undefined ? source(context, node, 'thread') : source(context, grade, 'value');
    return boltClasses.includes(name) ? consequential(context, { value: name, evidence: evidenceOf(grade?.evidence), source: at, path: `${path}.grade` })
        : failUnknown(context, 'unknown-grade', `unknown bolt grade '${name}'`, at, { word: name, among: boltClasses, otherwise: `: known are ${boltClasses.join(', ')}` });
}

/** So many bolts in a splice, or rods in a hanger. */
export function boltGroupOf(context: Context, node: ast.Bolts | ast.Rods, path: string): BoltGroup | undefined {
    const count = wholeNumber(context, node.count, node, 'count');
    const thread = threadOf(context, node);
    const grade = boltGradeOf(context, node, path);
    return count === undefined ? undefined : thread && grade && { count, ...thread, grade };
}

/** A steel class, or the name of a declared steel. */
export function steelOf(context: Context, name: string | undefined, node: AstNode, property: string, whatFor: string): string | undefined {
    const declared = context.names.things.get(name ?? '');
    if (name === undefined) {
        return fail(context, 'no-grade', `${whatFor} is of no steel: say which, such as steel S235`, source(context, node));
    }
    const steels = [...steelClasses, ...[...context.names.things.values()].filter(ast.isSteel).map(steel => steel.name)];
    return ast.isSteel(declared) || steelClasses.includes(name) ? name
        : failUnknown(context, 'unknown-grade', `unknown steel '${name}'`, source(context, node, property), { word: name, among: steels });
}
