/** The section through the worst place: what is left of it, thick; what is lost, hatched; leaves, plates and rolled shapes as they are. */
import type { Segment } from '../analysis/actions.js';
import type { BoltResult, CheckResult, MemberResult } from '../results.js';
import { setOut, size, station } from './numbers.js';
import { diameterOf } from './drawing/bolts.js';
import { Drawing } from './drawing/drawing.js';
import { r } from './drawing/frame.js';
import { BoltThrough, FlitchParts, LeavesParts, RolledParts } from './drawing/section-parts.js';
import { Height, Width } from './drawing/section-dimensions.js';
import { useLineOf } from './parts.js';

const greatest = 110;

/** Checks of the section itself: the place of another says nothing of it. */
const ofTheSection = new Set(['bending', 'shear', 'stability', 'tension', 'compression', 'interaction', 'notch', 'net section']);

interface Props {
    readonly member: MemberResult;
    /** Worst first. */
    readonly checks: readonly CheckResult[];
    readonly id: string;
}

export function Section({ member, checks, id }: Props) {
    const lineOf = useLineOf();
    const worst = checks.find(({ check, at }) => ofTheSection.has(check) && Number.isFinite(at.value));
    const at = worst ? worst.at.value * 1000 : member.length / 2;
    const segment = member.shape === 'rectangle' ? weakestAt(member.segments, at) : undefined;
    const { breadth, depth } = member;
    const scale = Math.min(greatest / depth, greatest / breadth);
    const [width, height] = [breadth * scale, depth * scale];
    const words = wordsOf(member, segment);
    const bolt = nearest(member.bolts ?? [], at);
    /** Clear of a bolt's end. */
    const beside = bolt ? 26 : 14;
    const reason = worst ? `where ${worst.check} is worst` : 'at the middle';
    return (
        <figure class="section" data-line={lineOf(member.source)}>
            <Drawing id={id} title={`Section of ${member.name} at ${station(at)}`} description={`Seen from the start, ${reason}: ${words}.`} view={{ x: -20, y: -22, width: width + beside + 46, height: height + 54 }}>
                {segment ? <Rectangle member={member} segment={segment} scale={scale} />
                    : member.rolled ? <RolledParts rolled={member.rolled} scale={scale} />
                        : member.plates ? <FlitchParts plates={member.plates} depth={depth} scale={scale} />
                            : <LeavesParts member={member} at={at} scale={scale} />}
                {bolt && <BoltThrough y={(depth / 2 - bolt.height) * scale} width={width} thick={diameterOf(bolt) * scale} />}
                {!segment && <path class="axis" d={`${member.rolled ? `M${r(width / 2)} -7V${r(height + 7)}` : ''}M-12 ${r(height / 2)}H${r(width + 12)}`} />}
                <Width x={0} width={width} y={height + 14} text={setOut(breadth)} />
                <Height y={0} height={height} x={width + beside} text={setOut(depth)} />
            </Drawing>
            <figcaption>Section at {station(at)}, {reason}: {words}, seen from the start.</figcaption>
        </figure>
    );
}

function wordsOf({ breadth, depth, leaves, plates, rolled }: MemberResult, segment: Segment | undefined): string {
    const whole = `${size(breadth, depth)}`;
    if (segment) {
        const left = `${size(segment.b, segment.h)}`;
        return segment.weakened ? `${left} left of ${whole}` : left;
    }
    if (rolled) {
        return rolled.designation;
    }
    if (plates) {
        return `${plates.leaves} leaves ${size(plates.leafBreadth, depth)} with ${plates.count} ${plates.count === 1 ? 'plate' : 'plates'} ${size(plates.thickness, plates.depth)} ${plates.steel}, ${whole} over all`;
    }
    return leaves ? `${leaves.length} leaves, ${whole} over all` : whole;
}

function Rectangle({ member: { breadth, depth }, segment, scale }: { readonly member: MemberResult; readonly segment: Segment; readonly scale: number }) {
    const [width, height] = [breadth * scale, depth * scale];
    const left = { x: (breadth / 2 + segment.shiftRight - segment.b / 2) * scale, y: (depth / 2 - segment.shiftUp - segment.h / 2) * scale, width: segment.b * scale, height: segment.h * scale };
    const centre = [left.x + left.width / 2, left.y + left.height / 2] as const;
    return (
        <>
            {segment.weakened && <rect class="whole" x={0} y={0} width={r(width)} height={r(height)} />}
            <rect class="residual" x={r(left.x)} y={r(left.y)} width={r(left.width)} height={r(left.height)} />
            <path class="axis" d={`M${r(centre[0])} ${r(left.y - 7)}V${r(left.y + left.height + 7)}M${r(left.x - 7)} ${r(centre[1])}H${r(left.x + left.width + 7)}`} />
            {segment.b < breadth && <Width x={left.x} width={left.width} y={-9} text={setOut(segment.b)} />}
            {segment.h < depth && <Height y={left.y} height={left.height} x={width + 29} text={setOut(segment.h)} />}
        </>
    );
}

function nearest(bolts: readonly BoltResult[], at: number): BoltResult | undefined {
    return bolts.reduce<BoltResult | undefined>((near, bolt) => near && Math.abs(near.x - at) <= Math.abs(bolt.x - at) ? near : bolt, undefined);
}

/** Of the segments that meet at a station, the smaller. */
function weakestAt(segments: readonly Segment[], at: number): Segment {
    const here = segments.filter(segment => segment.from - 0.5 <= at && at <= segment.to + 0.5);
    return (here.length > 0 ? here : segments).reduce((least, segment) => segment.b * segment.h < least.b * least.h ? segment : least);
}
