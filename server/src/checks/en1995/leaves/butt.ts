/** Around a broken leaf's end: the bolts that take what it hands on, and splitting by them. */
import type { Butt, PliesSection } from '../../../../../language/src/model.js';
import type { ActionState, Station } from '../../../analysis/actions.js';
import type { MemberContext } from '../../check.js';
import { judgedCheck, whereAt, type Answer } from '../../judged.js';
import { splitting } from '../fasteners/splitting.js';
import { named, shearAnswers } from './bolt-answers.js';
import { leavesOf } from './plies.js';
import { connectionFactors, throughBolts, type ThroughBolt } from './through-bolts.js';

export const butt = judgedCheck('butt', 'EN 1995-1-1 8.1.4, 8.2', (context: MemberContext) => {
    const { section } = context.member;
    if (section.shape !== 'plies' || section.butts.length === 0) {
        return { answers: [] };
    }
    const bolts = throughBolts(section.bolts, context.actions.bolts ?? []);
    return { answers: section.butts.flatMap(one => ([-1, 1] as const).flatMap(side => sideAnswers(context, section, one, groupAt(bolts, section, one, side), side))) };
});

/** The bolts of one side within the depth of the leaf, and in any case the nearest; none past the piece's other end. */
function groupAt(bolts: readonly ThroughBolt[], { depth, butts }: PliesSection, { leaf, at }: Butt, side: -1 | 1): readonly ThroughBolt[] {
    const reach = (x: number): number => side * (x - at.value);
    const other = Math.min(Infinity, ...butts.filter(one => one.leaf === leaf && reach(one.at.value) > 0).map(one => reach(one.at.value)));
    const beside = bolts.filter(({ x }) => reach(x) > 0 && reach(x) < other).sort((a, b) => reach(a.x) - reach(b.x));
    return beside.filter(({ x }, i) => i === 0 || reach(x) <= depth.value);
}

function sideAnswers(context: MemberContext, section: PliesSection, one: Butt, group: readonly ThroughBolt[], side: -1 | 1): readonly Answer[] {
    const { leaf, at } = one;
    if (group.length === 0) {
        return [];
    }
    const place = `leaf ${leaf}, ${side < 0 ? 'left' : 'right'} of the butt at ${(at.value / 1000).toFixed(2)} m`;
    return [...shearAnswers(context, group, leavesOf(context, section)), ...splittingAnswers(context, section, one, group, side)]
        .map(answer => ({ ...answer, said: named(place, answer.said) }));
}

/**
 * The shear of the leaf from its end to past the group. What holds the free end back pushes it the other way: left of
 * the butt down under a positive shear, right of it up; from the edge that is pushed towards to the farthest bolt.
 */
function splittingAnswers(context: MemberContext, section: PliesSection, { leaf, at }: Butt, group: readonly ThroughBolt[], side: -1 | 1): readonly Answer[] {
    const { actions, strength } = context;
    const [b, h] = [section.breadth.value, section.depth.value];
    const heights = group.map(({ height }) => height);
    const heTowards = (up: boolean): number => h / 2 + (up ? -Math.min(...heights) : Math.max(...heights));
    const [from, to] = [at.value, group.at(-1)!.x].sort((one, other) => one - other) as [number, number];
    const beside = actions.stations.filter(station => station.leaf === leaf && station.x >= from - 1e-6 && station.x <= to + 1e-6);
    return greatestShears(beside).map(({ station, state }) => ({
        said: splitting({
            b, h, he: heTowards(side * state.V > 0), wood: strength.softwood ? 'softwood' : 'hardwood'
        }, [state.V, 0], connectionFactors(context, state.combination)),
        where: whereAt(station, state)
    }));
}

interface Sheared { readonly station: Station; readonly state: ActionState }

/** Up and down, for each duration. */
function greatestShears(stations: readonly Station[]): readonly Sheared[] {
    const greatest = new Map<string, Sheared>();
    for (const station of stations) {
        for (const state of station.states) {
            const key = `${state.V > 0} ${state.combination.duration}`;
            const most = greatest.get(key);
            if (!most || Math.abs(state.V) > Math.abs(most.state.V)) greatest.set(key, { station, state });
        }
    }
    return [...greatest.values()];
}
