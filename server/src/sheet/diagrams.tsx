/** M on the tension side, V, N where there is any, and both deflections: of every stage, those of one kind to one scale. */
import type { DiagramPoint } from '../analysis/actions.js';
import type { MemberResult } from '../results.js';
import { deflection, force, moment } from './numbers.js';
import { Diagram } from './diagram.js';
import { extentOf } from './drawing/extent.js';
import type { Curve } from './drawing/peaks.js';
import { anchor } from './ids.js';

/** N below which a normal force is no more than the noise of the solution. */
const noNormalForce = 50;

/** What a short end past its support lifts by turning with it is not worth a label. */
const turning = 0.1;

interface Kind {
    readonly key: string;
    readonly title: string;
    readonly caption: string;
    readonly positiveDown: boolean;
    readonly curvesOf: (member: MemberResult) => readonly Curve[];
}

const kinds: readonly Kind[] = [
    {
        key: 'M', title: 'Bending moment M', caption: 'ultimate, drawn on the side in tension', positiveDown: true,
        curvesOf: ({ diagrams }) => [momentCurve(diagrams.M)]
    },
    { key: 'V', title: 'Shear force V', caption: 'ultimate', positiveDown: false, curvesOf: ({ diagrams }) => [forceCurve(diagrams.V)] },
    {
        key: 'N', title: 'Normal force N', caption: 'ultimate, tension positive', positiveDown: false,
        curvesOf: ({ diagrams }) => diagrams.N.some(({ min, max }) => min < -noNormalForce || max > noNormalForce) ? [forceCurve(diagrams.N)] : []
    },
    {
        key: 'w', title: 'Deflection w', caption: 'final (solid) and instantaneous (dashed)', positiveDown: true,
        curvesOf: ({ diagrams: { instant, final } }) => [
            { label: 'final', style: 'solid', points: final, print: deflection, slight: turning },
            { label: 'instant', style: 'dashed', points: instant, print: deflection, slight: turning }
        ]
    }
];

export function Diagrams({ stages, id }: { readonly stages: readonly MemberResult[]; readonly id: string }) {
    return (
        <div class="diagrams">
            {kinds.map(kind => {
                const shown = stages.map(member => ({ member, curves: kind.curvesOf(member) })).filter(({ curves }) => curves.length > 0);
                return shown.length === 0 ? null
                    : stages.length === 1 ? <Diagram {...kind} {...shown[0]!} id={`${id}-${kind.key}`} extent={extentOf(shown[0]!.curves)} />
                        : <OfStages kind={kind} shown={shown} id={id} />;
            })}
        </div>
    );
}

interface OfStagesProps {
    readonly kind: Kind;
    readonly shown: readonly { readonly member: MemberResult; readonly curves: readonly Curve[] }[];
    readonly id: string;
}

function OfStages({ kind, shown, id }: OfStagesProps) {
    const extent = extentOf(shown.flatMap(({ curves }) => curves));
    return (
        <div class="of-stages" role="group" aria-label={`${kind.title} of ${shown[0]!.member.name} in every stage`}>
            <p class="small"><b>{kind.title}</b> {kind.caption}, all stages to one scale</p>
            <div class="multiples">
                {shown.map(({ member, curves }) => (
                    <Diagram
                        {...kind} member={member} curves={curves} id={`${id}-${anchor(kind.key, member.stage)}`} small extent={extent}
                        title={member.stage ?? ''} caption="" subject={kind.title}
                    />
                ))}
            </div>
        </div>
    );
}

export function momentCurve(points: readonly DiagramPoint[]): Curve {
    return { label: '', style: 'solid', points: scaled(points, 1e-6), print: moment, slight: 0.02 };
}

export function forceCurve(points: readonly DiagramPoint[]): Curve {
    return { label: '', style: 'solid', points: scaled(points, 1e-3), print: force, slight: 0.02 };
}

function scaled(points: readonly DiagramPoint[], factor: number): DiagramPoint[] {
    return points.map(({ x, min, max }) => ({ x, min: factor * min, max: factor * max }));
}
