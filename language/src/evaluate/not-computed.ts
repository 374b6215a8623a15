/** Names what is understood but left out of the results of this version. */
import type { AstNode, Reference } from 'langium';
import { AstUtils } from 'langium';
import * as ast from '../generated/ast.js';
import type { Context } from './context.js';
import { notComputed, source } from './context.js';
import { isAnything } from './named-quantities.js';
import { resolve } from './names.js';
import { failUnknown } from './unknown.js';
import { checkArguments, checkNames, checkParameters } from './uses.js';

export function evaluateNotComputed(context: Context, root: ast.Calculation): void {
    const included = root.declarations.some(ast.isInclude);
    for (const node of root.declarations) {
        switch (node.$type) {
            case 'Include': say(context, node, `include "${node.path ?? ''}"`, 'included files are not read in this version'); break;
            case 'Hanger': say(context, node, `hanger ${node.name ?? ''}`.trim(), 'hangers are not computed in this version'); break;
            case 'Detail':
                checkParameters(context, node);
                say(context, node, `detail ${node.name}`, 'details are not computed in this version');
                break;
            case 'Use':
                checkUse(context, node, included);
                say(context, node, `detail use ${node.name}`, 'hangers are not computed in this version');
                break;
            case 'Stage': say(context, node, `stage ${node.name}`, 'stages are not computed in this version: everything is there from the start'); break;
            case 'LoadTest': say(context, node, `load test ${node.name}`, 'proof loads are not computed in this version'); break;
            case 'Option': say(context, node, `option ${node.name}`, 'options are not computed in this version', []); break;
            default: break;
        }
    }
    root.declarations.filter(ast.isMember).flatMap(member => member.statements).forEach(statement => reportStatement(context, statement));
}

function say(context: Context, node: ast.Declaration, what: string, why: string, members = referencedMembers(context, node)): void {
    references(node).forEach(({ reference, container }) => checkReference(context, node, reference as Reference, container));
    notComputed(context, what, why, members, source(context, node));
}

/** Names in parts that are not computed are looked up all the same, where no other step does. */
function checkReference(context: Context, node: ast.Declaration, reference: Reference, container: AstNode): void {
    const elsewhere = ast.isDetail(node) || ast.isUse(node);
    const evaluated = ast.isOption(node) ? !ast.isReplace(container) : ast.isReference(container);
    if (!elsewhere && !evaluated) {
        resolve(context, reference, container, isAnything, '');
    }
}

function referencedMembers(context: Context, node: AstNode): readonly string[] {
    return references(node).map(({ reference }) => (reference as Reference).$refText)
        .filter(name => ast.isMember(context.names.things.get(name))).toArray();
}

const references = (node: AstNode) => AstUtils.streamAst(node).flatMap(part => AstUtils.streamReferences(part));

/** A detail that is not in this file may be in one that it includes. */
function checkUse(context: Context, node: ast.Use, included: boolean): void {
    const name = node.detail?.$refText;
    const detail = name === undefined ? undefined : context.names.details.get(name);
    if (detail !== undefined) {
        checkArguments(context, node, detail);
    } else if (included) {
        checkNames(context, node);
    } else if (name !== undefined) {
        failUnknown(context, 'unknown-name', `unknown detail '${name}'`, source(context, node, 'detail'), { word: name, among: context.names.details.keys() });
    }
}

const partsNotComputed: Readonly<Record<string, string>> = {
    Ply: 'butt joints of leaves are not computed in this version', Bolts: 'bolts are not computed in this version',
    Splice: 'splices are not computed in this version', Fire: 'fire is not computed in this version'
};

function reportStatement(context: Context, statement: ast.Statement): void {
    const why = partsNotComputed[statement.$type];
    if (why !== undefined) {
        const member = (statement.$container as ast.Member).name;
        notComputed(context, `${member}.${statement.$type.toLowerCase()}`, why, [member], source(context, statement));
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
        notComputed(context, `break-even ${path}`, 'break-even values are not computed in this version', ast.isMember(thing) ? [thing.name] : [], source(context, node));
    }
}
