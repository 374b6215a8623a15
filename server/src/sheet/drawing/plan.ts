/** Where everything of an elevation goes, before it is drawn. */
import type { MemberResult } from '../../results.js';
import { captionsOf, type Caption } from './captions.js';
import { crossingHeight } from './crossings.js';
import { dimensionHeight, stationsOf } from './dimensions.js';
import { frameOf, sideMargin, viewBoxOf, viewWidth, type Frame, type ViewBox } from './frame.js';
import { rodHeight } from './hangers.js';
import { fontSize, rowHeight } from './labels.js';
import { layOutLoads, type LoadLayout } from './load-layout.js';
import type { Prop } from './props.js';
import { supportHeight } from './supports.js';

export interface Plan {
    readonly frame: Frame;
    readonly loads: LoadLayout;
    readonly captions: readonly Caption[];
    /** Distances from the axis, as are rows. */
    readonly firstCaption: number;
    readonly dimensionLine: number;
    readonly stations: readonly number[];
    readonly view: ViewBox;
}

function planOf(member: MemberResult, props: readonly Prop[], room?: number): Plan {
    const frame = frameOf(member, room);
    const loads = layOutLoads(frame, member.loadSketches, clearAbove(member));
    const captions = captionsOf(frame, member, props);
    const firstCaption = frame.halfDepth + supportHeight + fontSize + 2;
    const dimensionLine = firstCaption + (Math.max(-1, ...captions.map(caption => caption.row)) + 1) * rowHeight;
    const stations = dimensioned(frame, member, props);
    const view = viewBoxOf(frame, frame.halfDepth + loads.height + 4, dimensionLine + dimensionHeight(stations), frame.steep ? 90 : sideMargin);
    return { frame, loads, captions, firstCaption, dimensionLine, stations, view };
}

/** What is drawn above and below a sloping member needs room across, too. */
export function fittingPlan(member: MemberResult, props: readonly Prop[]): Plan {
    const plan = planOf(member, props);
    const excess = plan.view.width - viewWidth;
    return excess > 0 ? planOf(member, props, viewWidth - 2 * sideMargin - excess) : plan;
}

/** Every station where the values can stand side by side, else what a carpenter needs first, else only the ends and supports. */
function dimensioned(frame: Frame, member: MemberResult, props: readonly Prop[]): readonly number[] {
    const withoutLoads = { ...member, loadSketches: [] };
    const least = { ...withoutLoads, losses: [], notches: [], crossingSketches: [] };
    const choices = [stationsOf(member, props), stationsOf(withoutLoads, props), stationsOf(least, [])];
    return choices.find(stations => stations.length <= frame.length / rowHeight) ?? stationsOf({ ...least, hangerSketches: [], butts: [] }, []);
}

/** What stands on the member or goes up from it keeps loads at a distance. */
function clearAbove({ hangerSketches, crossingSketches }: MemberResult): number {
    return Math.max(0, ...hangerSketches.map(({ above }) => above ? rodHeight : 7), ...crossingSketches.map(() => crossingHeight));
}
