/** Where everything of an elevation goes, before it is drawn. */
import type { MemberResult } from '../../results.js';
import { captionsOf, type Caption } from './captions.js';
import { dimensionHeight, stationsOf } from './dimensions.js';
import { frameOf, sideMargin, viewBoxOf, viewWidth, type Frame, type ViewBox } from './frame.js';
import { fontSize, rowHeight } from './labels.js';
import { layOutLoads, type LoadLayout } from './load-layout.js';
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

function planOf(member: MemberResult, room?: number): Plan {
    const frame = frameOf(member, room);
    const loads = layOutLoads(frame, member.loadSketches);
    const captions = captionsOf(frame, member);
    const firstCaption = frame.halfDepth + supportHeight + fontSize + 2;
    const dimensionLine = firstCaption + (Math.max(-1, ...captions.map(caption => caption.row)) + 1) * rowHeight;
    const stations = dimensioned(frame, member);
    const view = viewBoxOf(frame, frame.halfDepth + loads.height + 4, dimensionLine + dimensionHeight(stations), frame.steep ? 90 : sideMargin);
    return { frame, loads, captions, firstCaption, dimensionLine, stations, view };
}

/** What is drawn above and below a sloping member needs room across, too. */
export function fittingPlan(member: MemberResult): Plan {
    const plan = planOf(member);
    const excess = plan.view.width - viewWidth;
    return excess > 0 ? planOf(member, viewWidth - 2 * sideMargin - excess) : plan;
}

/** Every station where the values can stand side by side, else only the ends and supports. */
function dimensioned(frame: Frame, member: MemberResult): readonly number[] {
    const all = stationsOf(member);
    return all.length <= frame.length / (fontSize + 0.5) ? all : stationsOf({ ...member, losses: [], notches: [], loadSketches: [] });
}
