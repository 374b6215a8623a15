/** Names what is understood but left out of the results of this version. */
import type { AstNode, Reference } from 'langium';
import { AstUtils } from 'langium';
import * as ast from '../generated/ast.js';
import type { Context } from './context.js';
import { source } from './context.js';
import { isAnything } from './named-quantities.js';
import { resolve } from './names.js';
import type { Construct } from './not-computed.js';
import { notComputed } from './not-computed.js';
import { failUnknown } from './unknown.js';

/** `reading`: included files are read here. */
export function nameLeftOut(context: Context, root: ast.Calculation, reading: boolean): void {
    for (const node of root.declarations) {
        switch (node.$type) {
            case 'Include':
                if (!reading) { say(context, node, 'include', `include "${node.path ?? ''}"`); }
                break;
            case 'LoadTest': say(context, node, 'loadtest', `load test ${node.name}`); break;
            case 'Option': say(context, node, 'option', `option ${node.name}`, []); break;
            default: break;
        }
    }
    root.declarations.filter(ast.isMember).flatMap(member => member.statements).forEach(statement => reportStatement(context, statement));
}

function say(context: Context, node: ast.Declaration, construct: Construct, what: string, members = referencedMembers(context, node)): void {
    references(node).forEach(({ reference, container }) => checkReference(context, node, reference as Reference, container));
    notComputed(context, construct, what, members, source(context, node));
}

/** Names in parts that are not computed are looked up all the same, where no other step does. */
function checkReference(context: Context, node: ast.Declaration, reference: Reference, container: AstNode): void {
    const evaluated = ast.isOption(node) ? !ast.isReplace(container) : ast.isReference(container);
    if (!evaluated) {
        resolve(context, reference, container, isAnything, '');
    }
}

function referencedMembers(context: Context, node: AstNode): readonly string[] {
    return references(node).map(({ reference }) => (reference as Reference).$refText)
        .filter(name => ast.isMember(context.names.things.get(name))).toArray();
}

const references = (node: AstNode) => AstUtils.streamAst(node).flatMap(part => AstUtils.streamReferences(part));

const parts = { Ply: 'ply', Bolts: 'bolts', Fire: 'fire' } as const;

function reportStatement(context: Context, statement: ast.Statement): void {
    if (ast.isPly(statement) || ast.isBolts(statement) || ast.isFire(statement)) {
        const member = (statement.$container as ast.Member).name;
        notComputed(context, parts[statement.$type], `${member}.${parts[statement.$type]}`, [member], source(context, statement));
    }
}

/** After all inputs are known: whether each `breakeven` names one. */
export function evaluateBreakEvens(context: Context, root: ast.Calculation, broken: ReadonlySet<string>): void {
    for (const node of root.declarations.filter(ast.isBreakEven)) {
        const subject = node.input?.subject?.$refText;
        if (subject === undefined) {
            continue;
        }
        const path = [subject, ...node.input.path].join('.');
        if (!context.paths.has(path) && !broken.has(subject)) {
            failUnknown(context, 'unknown-input', `no input is called '${path}'`, source(context, node, 'input'), { word: path, among: context.paths });
        }
        const thing = context.names.things.get(subject);
        notComputed(context, 'breakeven', `break-even ${path}`, ast.isMember(thing) ? [thing.name] : [], source(context, node));
    }
}
