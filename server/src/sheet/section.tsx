/** The section through the worst place: what is left of it, thick; what is lost, hatched. */
import type { Segment } from '../analysis/actions.js';
import type { CheckResult, MemberResult } from '../results.js';
import { setOut, station } from './numbers.js';
import { Drawing } from './drawing/drawing.js';
import { r } from './drawing/frame.js';

const greatest = 110;

export function Section({ member, worst, id }: { readonly member: MemberResult; readonly worst: CheckResult | undefined; readonly id: string }) {
    const at = worst && Number.isFinite(worst.at.value) ? worst.at.value * 1000 : member.length / 2;
    const segment = weakestAt(member.segments, at);
    const { breadth, depth } = member;
    const scale = Math.min(greatest / depth, greatest / breadth);
    const [width, height] = [breadth * scale, depth * scale];
    const left = { x: (breadth / 2 + segment.shiftRight - segment.b / 2) * scale, y: (depth / 2 - segment.shiftUp - segment.h / 2) * scale, width: segment.b * scale, height: segment.h * scale };
    const centre = [left.x + left.width / 2, left.y + left.height / 2] as const;
    const size = `${setOut(segment.b)} × ${setOut(segment.h)} mm`;
    const words = segment.weakened ? `${size} left of ${setOut(breadth)} × ${setOut(depth)} mm` : size;
    const reason = worst ? `where ${worst.check} is worst` : 'at the middle';
    return (
        <figure class="section" data-line={member.source.line}>
            <Drawing id={id} title={`Section of ${member.name} at ${station(at)}`} description={`Seen from the start, ${reason}: ${words}.`} view={{ x: -14, y: -22, width: width + 54, height: height + 54 }}>
                {segment.weakened && <rect class="whole" x={0} y={0} width={r(width)} height={r(height)} />}
                <rect class="residual" x={r(left.x)} y={r(left.y)} width={r(left.width)} height={r(left.height)} />
                <path class="axis" d={`M${r(centre[0])} ${r(left.y - 7)}V${r(left.y + left.height + 7)}M${r(left.x - 7)} ${r(centre[1])}H${r(left.x + left.width + 7)}`} />
                <Width x={0} width={width} y={height + 14} text={setOut(breadth)} />
                <Height y={0} height={height} x={width + 14} text={setOut(depth)} />
                {segment.b < breadth && <Width x={left.x} width={left.width} y={-9} text={setOut(segment.b)} />}
                {segment.h < depth && <Height y={left.y} height={left.height} x={width + 29} text={setOut(segment.h)} />}
            </Drawing>
            <figcaption>Section at {station(at)}, {reason}: {words}, seen from the start.</figcaption>
        </figure>
    );
}

/** Of the segments that meet at a station, the smaller. */
function weakestAt(segments: readonly Segment[], at: number): Segment {
    const here = segments.filter(segment => segment.from - 0.5 <= at && at <= segment.to + 0.5);
    return (here.length > 0 ? here : segments).reduce((least, segment) => segment.b * segment.h < least.b * least.h ? segment : least);
}

interface WidthProps { readonly x: number; readonly width: number; readonly y: number; readonly text: string }

function Width({ x, width, y, text }: WidthProps) {
    return (
        <g class="dimensions">
            <path class="thin" d={`M${r(x)} ${r(y)}h${r(width)}M${r(x)} ${r(y - 4)}v8M${r(x + width)} ${r(y - 4)}v8`} />
            <path class="tick" d={`M${r(x - 2.5)} ${r(y + 2.5)}l5 -5M${r(x + width - 2.5)} ${r(y + 2.5)}l5 -5`} />
            <text x={r(x + width / 2)} y={r(y - 2)} text-anchor="middle">{text}</text>
        </g>
    );
}

interface HeightProps { readonly y: number; readonly height: number; readonly x: number; readonly text: string }

function Height({ y, height, x, text }: HeightProps) {
    return (
        <g class="dimensions">
            <path class="thin" d={`M${r(x)} ${r(y)}v${r(height)}M${r(x - 4)} ${r(y)}h8M${r(x - 4)} ${r(y + height)}h8`} />
            <path class="tick" d={`M${r(x - 2.5)} ${r(y + 2.5)}l5 -5M${r(x - 2.5)} ${r(y + height + 2.5)}l5 -5`} />
            <text transform={`translate(${r(x - 2)} ${r(y + height / 2)}) rotate(-90)`} text-anchor="middle">{text}</text>
        </g>
    );
}
