import { CstUtils } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';
import type { MendingOf } from './place.js';

const codes = ['no-support', 'mechanism'];

/** A member that is held nowhere, or not enough: a bearing on each wall of the file, near that end which has none. */
export const insertSupport: MendingOf = ({ document, computed: { results }, finding }) => {
    const root = document.parseResult.value;
    if (!codes.includes(finding.code) || !ast.isCalculation(root)) {
        return [];
    }
    const member = root.declarations.filter(ast.isMember).find(({ $cstNode: cst }) => cst && cst.offset <= finding.source.start && finding.source.end <= cst.end);
    const last = member?.statements.filter(statement => ast.isBearing(statement) || ast.isLengthStatement(statement)).at(-1)?.$cstNode;
    if (!member || !last) {
        return [];
    }
    const walls = root.declarations.filter(ast.isWall).map(({ name }) => name);
    const used = member.statements.filter(ast.isBearing);
    const length = results.members.find(({ name }) => name === member.name)?.length ?? literalLength(member);
    const station = used.length === 0 || length === undefined ? '0.10 m' : `${((length - 100) / 1000).toFixed(2)} m`;
    const indent = ' '.repeat(CstUtils.toDocumentSegment(last).range.start.character);
    return walls.filter(name => !used.some(({ on }) => on?.$refText === name)).map(name => ({
        title: `Insert a bearing on ${name}`,
        at: last.end,
        text: `\n${indent}on ${name} at ${station} bearing 100 mm`
    }));
};

/** mm, where it is one number in metres or millimetres. */
function literalLength(member: ast.Member): number | undefined {
    const value = member.statements.find(ast.isLengthStatement)?.value?.value;
    return ast.isLiteral(value) ? value.unit === 'm' ? value.value * 1000 : value.unit === 'mm' ? value.value : undefined : undefined;
}
