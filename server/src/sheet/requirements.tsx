import type { RequirementResult } from '../results.js';
import { against, percentUp } from './numbers.js';
import type { Outcome } from './outcome.js';
import { Block, Line, OutcomeMark, Table, useLineOf } from './parts.js';

export function Requirements({ requirements }: { readonly requirements: readonly RequirementResult[] }) {
    const lineOf = useLineOf();
    return requirements.length === 0 ? null : (
        <Block id="requirements" title="Requirements">
            <Table name="requirements" caption="Requirements" head={['Required', 'Found', 'Outcome']}>
                {requirements.map(requirement => (
                    <tr data-line={lineOf(requirement.source)}>
                        <th scope="row">{requirement.text} <Line source={requirement.source} /></th>
                        <td class="number">{found(requirement)}</td>
                        <td><OutcomeMark outcome={outcomeOf(requirement)} />{requirement.holds === undefined && requirement.reason && `: ${requirement.reason}`}</td>
                    </tr>
                ))}
            </Table>
        </Block>
    );
}

/** A utilisation that must not be more than something is rounded up, like any other. */
function found({ left, right, requirement: { comparison } }: RequirementResult): string {
    if (!left || !right) {
        return 'not computed';
    }
    const roundsUp = left.unit === '%' && comparison.startsWith('<');
    return roundsUp ? `${percentUp(left.value / 100)} against ${percentUp(right.value / 100)}` : against(left, right);
}

function outcomeOf({ holds }: RequirementResult): Outcome {
    return holds === undefined ? 'incomplete' : holds ? 'pass' : 'fail';
}
