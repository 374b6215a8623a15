/** What each leaf takes for itself, one under the other to one scale. */
import { useContext } from 'preact/hooks';
import type { LeafResult, MemberResult } from '../results.js';
import { Diagram } from './diagram.js';
import { forceCurve, momentCurve } from './diagrams.js';
import { extentOf } from './drawing/extent.js';
import { ViewContext } from './parts.js';

interface Props {
    readonly member: MemberResult;
    readonly leaves: readonly LeafResult[];
    readonly id: string;
}

export function LeafDiagrams({ member, leaves, id }: Props) {
    const { folded } = useContext(ViewContext);
    const kinds = [
        { key: 'M', title: 'Bending moment M', positiveDown: true, curvesOf: ({ diagrams }: LeafResult) => [momentCurve(diagrams.M)] },
        { key: 'V', title: 'Shear force V', positiveDown: false, curvesOf: ({ diagrams }: LeafResult) => [forceCurve(diagrams.V)] }
    ];
    return (
        <details id={id} open={!folded}>
            <summary><b>What each leaf takes</b>{member.stage !== null && <> in stage {member.stage}</>}</summary>
            {kinds.map(({ key, title, positiveDown, curvesOf }) => {
                const extent = extentOf(leaves.flatMap(curvesOf));
                return (
                    <div class="multiples">
                        {leaves.map(leaf => (
                            <Diagram
                                member={member} id={`${id}-${leaf.leaf}-${key}`} title={title} caption={`of leaf ${leaf.leaf}, ultimate`} small
                                extent={extent} positiveDown={positiveDown} curves={curvesOf(leaf)}
                            />
                        ))}
                    </div>
                );
            })}
        </details>
    );
}
