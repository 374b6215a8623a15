/** What a member does in every stage, one under the other: its reactions, forces and deflections. */
import type { MemberResult, Reaction } from '../results.js';
import { forceRange } from '../summary.js';
import { deflection, moment, range, station } from './numbers.js';
import { Table } from './parts.js';

export function StagesTable({ stages }: { readonly stages: readonly MemberResult[] }) {
    const supports = [...new Set(stages.flatMap(({ reactions }) => reactions.map(nameOf)))];
    return (
        <Table name="stages" caption={`Forces and deflections of ${stages[0]!.name} in every stage`} head={['Stage', ...supports, 'Moment', 'Shear', 'Instant', 'Final']}>
            {stages.map(({ stage, reactions, moment: moments, shear, deflection: { instant, final } }) => (
                <tr>
                    <th scope="row"><span class="name">{stage}</span></th>
                    {supports.map(support => {
                        const reaction = reactions.find(candidate => nameOf(candidate) === support);
                        return <td class="number">{reaction && <>{forceRange(reaction.min.value, reaction.max.value)}{reaction.min.value < 0 && <b> uplift</b>}</>}</td>;
                    })}
                    <td class="number">{momentRange(moments.min.value, moments.max.value)}</td>
                    <td class="number">{forceRange(shear.min.value, shear.max.value)}</td>
                    <td class="number">{deflection(instant.value)}</td>
                    <td class="number">{deflection(final.value)}</td>
                </tr>
            ))}
        </Table>
    );
}

const nameOf = ({ support, at }: Reaction): string => `${support} ${station(at.value * 1000)}`;

function momentRange(min: number, max: number): string {
    return range(moment(min), moment(max));
}
