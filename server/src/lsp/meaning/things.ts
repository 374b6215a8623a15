/** A declared thing in a few words, and as it is written. */
import type { AstNode } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';

/** Lines; more is read where it stands. */
const most = 12;

export function describe(node: AstNode): { readonly title: string; readonly text: string } {
    const written = node.$cstNode?.text ?? '';
    const lines = written.split('\n');
    const indent = Math.min(...lines.slice(1).filter(line => line.trim() !== '').map(line => /^\s*/.exec(line)![0].length), Infinity);
    const shown = lines.slice(0, most).map((line, index) => index === 0 ? line : line.slice(Math.min(indent, /^\s*/.exec(line)![0].length)));
    return { title: titleOf(node), text: ['```padstone', ...shown, ...(lines.length > most ? ['…'] : []), '```'].join('\n') };
}

function titleOf(node: AstNode): string {
    const kind = node.$type.toLowerCase();
    if (ast.isLet(node)) {
        return `= ${node.value?.$cstNode?.text ?? ''}`;
    }
    if (ast.isLoad(node)) {
        return `${node.action} ${node.amount?.$cstNode?.text ?? ''}`;
    }
    if (ast.isParameter(node)) {
        return `parameter, a ${node.type}`;
    }
    return 'title' in node && typeof node.title === 'string' ? `${kind}, ${node.title}` : kind;
}
