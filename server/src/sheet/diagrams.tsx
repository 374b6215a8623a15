import type { DiagramPoint } from '../analysis/actions.js';
import type { MemberResult } from '../results.js';
import { deflection, force, moment } from './numbers.js';
import { Diagram } from './diagram.js';

const kN = 1e-3;
const kNm = 1e-6;
/** kN below which a normal force is no more than the noise of the solution. */
const noNormalForce = 0.05;

/** What a short end past its support lifts by turning with it is not worth a label. */
const turning = 0.1;

/** M on the tension side, V, N where there is any, and both deflections. */
export function Diagrams({ member, id }: { readonly member: MemberResult; readonly id: string }) {
    const { M, V, N, instant, final } = member.diagrams;
    const forces = (points: readonly DiagramPoint[]) => [{ label: '', style: 'solid' as const, smooth: false, points: scaled(points, kN), print: force, slight: 0.02 }];
    const normal = scaled(N, kN);
    return (
        <div class="diagrams">
            <Diagram
                member={member} id={`${id}-M`} title="Bending moment M" caption="ultimate, drawn on the side in tension" positiveDown
                curves={[{ label: '', style: 'solid', smooth: true, points: scaled(M, kNm), print: moment, slight: 0.02 }]}
            />
            <Diagram member={member} id={`${id}-V`} title="Shear force V" caption="ultimate" positiveDown={false} curves={forces(V)} />
            {normal.some(({ min, max }) => min < -noNormalForce || max > noNormalForce) &&
                <Diagram member={member} id={`${id}-N`} title="Normal force N" caption="ultimate, tension positive" positiveDown={false} curves={forces(N)} />}
            <Diagram
                member={member} id={`${id}-w`} title="Deflection w" caption="final (solid) and instantaneous (dashed)" positiveDown
                curves={[
                    { label: 'final', style: 'solid', smooth: true, points: final, print: deflection, slight: turning },
                    { label: 'instant', style: 'dashed', smooth: true, points: instant, print: deflection, slight: turning }
                ]}
            />
        </div>
    );
}

function scaled(points: readonly DiagramPoint[], factor: number): DiagramPoint[] {
    return points.map(({ x, min, max }) => ({ x, min: factor * min, max: factor * max }));
}
