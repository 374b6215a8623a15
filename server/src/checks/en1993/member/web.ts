/** Where forces press on a flange: supports, members on it, hangers, loads at a point. */
import type { ActionState, Combination, MemberActions } from '../../../analysis/actions.js';
import type { SteelMemberContext } from '../../check.js';
import { patchesOf, plateStretch, type Stretch } from '../../en1995/contacts.js';
import { judgedCheck, type Answer } from '../../judged.js';
import { webDepth } from '../steel-member.js';
import { web, webClause, type LoadPlace } from '../web.js';

interface Press {
    readonly at: number;
    readonly stretch: Stretch;
    readonly states: readonly { readonly combination: Combination; readonly force: number }[];
}

export const steelWeb = judgedCheck('web', webClause, (context: SteelMemberContext) => ({
    answers: context.steel.section.shape === 'plate' ? [] : pressesOf(context).flatMap(press => answersAt(context, press)),
    lacking: context.steel.section.shape === 'plate' && pressesOf(context).length > 0
        ? ['a flat that is pressed on its edge may buckle there: not covered'] : []
}));

function answersAt({ actions, member, steel }: SteelMemberContext, { at, stretch, states }: Press): readonly Answer[] {
    const place = placeOf(member.length.value, webDepth(steel.section), stretch, actions);
    return states.map(({ combination, force }) => ({
        said: web(steel, { F: force, stiffBearing: stretch.to - stretch.from, place, M: momentNear(actions, at) }),
        where: { combination, at }
    }));
}

/** At an end where less than the web's depth of beam stands beyond the bearing. */
function placeOf(length: number, depth: number, { from, to }: Stretch, { spans }: MemberActions): LoadPlace {
    const beyond = Math.max(0, Math.min(from, length - to));
    const panel = Math.max(...spans.map(span => span.to - span.from), 0);
    return beyond < depth ? { kind: 'end', overhang: beyond } : { kind: 'inner', panel: panel > 0 ? panel : length };
}

/** The greatest moment either way at the stations beside a place: it counts as compressing the loaded flange. */
function momentNear({ stations }: MemberActions, at: number): number {
    const nearest = Math.min(...stations.map(({ x }) => Math.abs(x - at)));
    return stations.filter(({ x }) => Math.abs(x - at) <= nearest + 1e-6)
        .flatMap(({ states }) => states.map(({ M }: ActionState) => Math.abs(M)))
        .reduce((most, M) => Math.max(most, M), 0);
}

function pressesOf(context: SteelMemberContext): readonly Press[] {
    const { loads, hangers, member, all, actions } = context;
    const patches = patchesOf(context).map(({ on, from, to }): Press =>
        ({ at: on.at, stretch: { from, to }, states: on.states.map(({ combination, R }) => ({ combination, force: R })) }));
    const points = loads.flatMap(({ point }): Press[] => point
        ? [{ at: point.at, stretch: { from: point.at, to: point.at }, states: jumpsAt(actions, point.at) }] : []);
    const hung = hangers.flatMap(hanger => [
        ...hanger.from === member.name ? [{ hanger, at: hanger.fromAt.value, plate: hanger.headPlate }] : [],
        ...hanger.carries === member.name ? [{ hanger, at: hanger.carriesAt.value, plate: hanger.footPlate }] : []
    ]).map(({ hanger, at, plate }): Press => ({
        at, stretch: plateStretch(at, plate?.width.value),
        states: all.hangers?.find(one => one.hanger === hanger.name && one.stage === actions.stage)?.states
            .map(({ combination, N }) => ({ combination, force: N })) ?? []
    }));
    return [...patches, ...points, ...hung];
}

/** A load at a point is the jump of the shear there; the greatest and the least of either side bound it. */
function jumpsAt({ stations }: MemberActions, at: number): Press['states'] {
    const here = stations.filter(({ x }) => Math.abs(x - at) < 1e-6).flatMap(({ states }) => states);
    return here.map(({ combination, V }) => ({
        combination,
        force: here.reduce((most, other) => other.combination === combination ? Math.max(most, Math.abs(V - other.V)) : most, 0)
    }));
}
