/** Names what is understood but left out of the results of this version. */
import * as ast from '../generated/ast.js';
import type { Context } from './context.js';
import { source } from './context.js';
import { aTime, single } from './inputs.js';
import { notComputed } from './not-computed.js';

/** `reading`: included files are read here. */
export function nameLeftOut(context: Context, root: ast.Calculation, reading: boolean): void {
    if (!reading) {
        root.declarations.filter(ast.isInclude).forEach(node => notComputed(context, 'include', `include "${node.path ?? ''}"`, [], source(context, node)));
    }
    for (const member of root.declarations.filter(ast.isMember)) {
        member.statements.forEach(statement => reportStatement(context, member.name, statement));
    }
}

const parts = { Ply: 'ply', Bolts: 'bolts', Fire: 'fire' } as const;

function reportStatement(context: Context, member: string, statement: ast.Statement): void {
    if (ast.isPly(statement) || ast.isBolts(statement) || ast.isFire(statement)) {
        notComputed(context, parts[statement.$type], `${member}.${parts[statement.$type]}`, [member], source(context, statement));
    }
    if (ast.isFire(statement)) {
        single(context, statement.value, aTime);
    }
}
