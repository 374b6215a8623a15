/** Which members cannot be trusted: those with an error in their own text, and what depends on such. */
import type { AstNode } from 'langium';
import * as ast from '../generated/ast.js';
import type { Evaluation, Hanger } from '../model.js';
import type { Context } from './context.js';
import { report, source } from './context.js';
import type { SyntaxError } from './syntax.js';

/** Declarations in which a syntax error lies. */
export function unsoundDeclarations(root: ast.Calculation, errors: readonly SyntaxError[]): ReadonlySet<ast.Declaration> {
    const sorted = root.declarations.filter(node => node.$cstNode !== undefined).sort((a, b) => a.$cstNode!.offset - b.$cstNode!.offset);
    const unsound = new Set<ast.Declaration>();
    for (const { within, strictly } of errors) {
        const node = within === undefined ? undefined : lastBefore(sorted, within);
        if (node !== undefined && !(strictly && within! >= node.$cstNode!.end)) {
            unsound.add(node);
        }
    }
    return unsound;
}

/** Binary search: the last declaration that begins at or before an offset. */
function lastBefore(sorted: readonly ast.Declaration[], offset: number): ast.Declaration | undefined {
    let [low, high] = [0, sorted.length];
    while (low < high) {
        const middle = (low + high) >> 1;
        if (sorted[middle]!.$cstNode!.offset <= offset) { low = middle + 1; } else { high = middle; }
    }
    return sorted[low - 1];
}

/** Spreads from members that are broken to those that carry them or that they carry, or that hang between. */
export function spread(root: ast.Calculation, unsound: ReadonlySet<ast.Declaration>, reasons: Map<string, string>, hangers: readonly Hanger[]): void {
    const members = root.declarations.filter(ast.isMember).filter(member => member.name);
    const names = new Set(members.map(member => member.name));
    const neighbours = new Map<string, Set<string>>();
    const join = (one: string, other: string) => neighbours.set(one, (neighbours.get(one) ?? new Set()).add(other));
    for (const member of members) {
        for (const word of carriersOf(member, unsound.has(member))) {
            if (names.has(word) && word !== member.name) {
                join(member.name, word);
                join(word, member.name);
            }
        }
    }
    for (const { carries, from } of hangers) {
        join(carries, from);
        join(from, carries);
    }
    const queue = [...reasons.keys()];
    for (let name = queue.pop(); name !== undefined; name = queue.pop()) {
        for (const next of neighbours.get(name) ?? []) {
            if (!reasons.has(next)) {
                reasons.set(next, `${name}, which it stands on, hangs from or carries, has an error`);
                queue.push(next);
            }
        }
    }
}

/** In a member that could not be read any word may be what it stands on. */
function carriersOf(member: ast.Member, unreadable: boolean): readonly string[] {
    return unreadable ? wordsOf(member) : member.statements.filter(ast.isBearing).map(bearing => bearing.on?.$refText ?? '');
}

export const wordsOf = (node: AstNode): readonly string[] => node.$cstNode?.text.match(/[\p{L}_][\p{L}\p{N}_]*/gu) ?? [];

export function brokenMembers(context: Context, root: ast.Calculation, reasons: ReadonlyMap<string, string>): Evaluation['broken'] {
    const nodes = root.declarations.filter(ast.isMember).filter(member => member.name && reasons.has(member.name));
    const unique = [...new Map(nodes.map(node => [node.name, node])).values()];
    return unique.map(node => {
        const at = source(context, node, 'name');
        report(context, 'warning', 'not-computed', `${node.name} is not computed: ${reasons.get(node.name)}`, at);
        return { name: node.name, source: at };
    });
}
