import * as ast from '../generated/ast.js';
import type { Support } from '../model.js';
import { formatQuantity } from '../units.js';
import { length } from '../quantity.js';
import type { Context } from './context.js';
import { fail, source } from './context.js';
import { aDepth, aLength, aStation, aStiffness, consequential, given } from './inputs.js';
import { leafCount, leafNumbers } from './leaves.js';
import { resolve } from './names.js';
import { notComputed } from './not-computed.js';
import type { SupportStatement } from './named-quantities.js';
import { isSupport } from './named-quantities.js';

export function evaluateSupports(context: Context, member: ast.Member, memberLength: number | undefined): readonly Support[] {
    const counts = new Map<string, number>();
    const supports = member.statements.filter(isSupport).flatMap(node => {
        const on = supportName(node);
        const count = (counts.get(on) ?? 0) + 1;
        counts.set(on, count);
        return evaluateSupport(context, member, node, `${member.name}.${on}${count === 1 ? '' : count}`, memberLength) ?? [];
    });
    reportSameStation(context, member, supports);
    return supports;
}

function supportName(node: SupportStatement): string {
    switch (node.$type) {
        case 'Bearing': return node.on?.$refText ?? '';
        case 'Spring': return 'spring';
        case 'Pinned': return 'pin';
        case 'Fixed': return 'fixed';
    }
}

const kinds = { Spring: 'spring', Pinned: 'pinned', Fixed: 'fixed' } as const;
type Carrier = ast.Wall | ast.Member;
const isCarrier = (node: unknown): node is Carrier => ast.isWall(node) || ast.isMember(node);

function evaluateSupport(context: Context, member: ast.Member, node: SupportStatement, path: string, memberLength: number | undefined): Support | undefined {
    const at = given(context, node.at, path, aStation);
    const carrier = node.$type === 'Bearing' ? resolve(context, node.on, node, isCarrier, 'a wall or a member') : undefined;
    const bearing = node.parts.find(ast.isBearingLength);
    const wallEnd = node.parts.find(ast.isWallEnd);
    if (at !== undefined && memberLength !== undefined && (at.value < 0 || at.value > memberLength)) {
        fail(context, 'support-outside', `this support is ${outside(at.value, memberLength)} of ${member.name}`, at.source);
    }
    const leafPart = node.parts.find(ast.isLeaves);
    const leaves = leafPart && leafNumbers(context, leafPart, leafCount(member));
    if (leafPart !== undefined) {
        notComputed(context, 'leaves', `${path}.leaf`, [member.name], source(context, node));
    }
    const support: Omit<Support, 'at'> = {
        kind: node.$type === 'Bearing' ? (ast.isMember(carrier) ? 'member' : 'wall') : kinds[node.$type],
        on: supportName(node),
        bearing: bearing && consequential(context, given(context, bearing.value, `${path}.bearing`, aLength)),
        stiffness: node.$type === 'Spring' ? consequential(context, given(context, node.stiffness, `${path}.stiffness`, aStiffness)) : undefined,
        tied: node.parts.some(ast.isTied),
        stationOnCarrier: evaluateCrossing(context, member, node, carrier, path),
        fromWallEnd: wallEnd && given(context, wallEnd.value, `${path}.end`, aDepth),
        ...(leaves && { leaves }),
        source: source(context, node)
    };
    return at && (node.$type !== 'Bearing' || carrier !== undefined) ? { ...support, at } : undefined;
}

/** `1.20 m past the end (4.90 m)`, or before the start. */
export function outside(station: number, memberLength: number): string {
    const print = (value: number) => formatQuantity({ value, dimension: length });
    return station < 0 ? `${print(-station)} before the start` : `${print(station - memberLength)} past the end (${print(memberLength)})`;
}

/** Where a member crosses the one that carries it; a post carries at its top unless said. */
function evaluateCrossing(context: Context, member: ast.Member, node: SupportStatement, carrier: Carrier | undefined, path: string): Support['stationOnCarrier'] {
    const crossing = node.parts.find(ast.isCrossing);
    if (carrier === undefined || carrier.$type === 'Wall') {
        if (crossing !== undefined && carrier !== undefined) {
            fail(context, 'crossing-a-wall', 'only a member is crossed at a station', source(context, crossing));
        }
        return undefined;
    }
    if (carrier === member) {
        return fail(context, 'on-itself', `${member.name} cannot stand on itself`, source(context, node, 'on'));
    }
    const carrierLength = carrier.statements.find(ast.isLengthStatement)?.value;
    if (crossing === undefined && carrier.statements.some(ast.isStands)) {
        return given(context, carrierLength, `${path}.crossing`, aStation);
    }
    if (crossing === undefined) {
        return fail(context, 'no-crossing', `where ${member.name} crosses ${carrier.name} is not said: add crossing at a station along ${carrier.name}`, source(context, node),
            { fix: { title: 'add the station', text: `${node.$cstNode?.text ?? ''} crossing at 1.00 m` } });
    }
    const at = given(context, crossing.value, `${path}.crossing`, aStation);
    const whole = given(context, carrierLength, `${carrier.name}.length`, aStation);
    if (at !== undefined && whole !== undefined && (at.value < 0 || at.value > whole.value)) {
        fail(context, 'support-outside', `the crossing is ${outside(at.value, whole.value)} of ${carrier.name}`, at.source);
    }
    return at;
}

function reportSameStation(context: Context, member: ast.Member, supports: readonly Support[]): void {
    supports.forEach((support, i) => {
        const first = supports.slice(0, i).find(other => Math.abs(other.at.value - support.at.value) < 1e-6 && shareALeaf(other, support));
        if (first !== undefined) {
            fail(context, 'duplicate-support', `${member.name} has a support at this station already`, support.at.source,
                { related: [{ message: 'the first is here', source: first.source }] });
        }
    });
}

/** Leaves may bear beside each other, each on its own. */
const shareALeaf = ({ leaves: some }: Support, { leaves: others }: Support): boolean =>
    some === undefined || others === undefined || some.some(leaf => others.includes(leaf));
