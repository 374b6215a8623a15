/** Checks as blocks: in full in the stage where it is worst, with all stages in a table. */
import type { CheckResult, Results } from '../results.js';
import { worstOfEach } from '../summary.js';
import { Calculation } from './calculation.js';
import { against, percentUp, station } from './numbers.js';
import { outcomeOf } from './outcome.js';
import { Combination, OutcomeMark, Table } from './parts.js';

interface Props {
    readonly checks: readonly CheckResult[];
    readonly ledger: Results['ledger'];
}

export function Calculations({ checks, ledger }: Props) {
    return (
        <>
            {worstOfEach(checks).map(check => (
                <Calculation check={check} ledger={ledger}><Stages stages={checks.filter(({ id }) => id === check.id)} /></Calculation>
            ))}
        </>
    );
}

function Stages({ stages }: { readonly stages: readonly CheckResult[] }) {
    return stages.length < 2 ? null : (
        <Table name="by-stage" caption={`${stages[0]!.id} in every stage`} head={['Stage', 'Use', 'Outcome', 'Demand', 'At', 'Governed by']}>
            {stages.map(check => (
                <tr>
                    <th scope="row"><span class="name">{check.stage}</span></th>
                    <td class="number">{percentUp(check.utilisation)}</td>
                    <td><OutcomeMark outcome={outcomeOf(check)} /></td>
                    <td class="number">{against(check.demand, check.capacity)}</td>
                    <td class="number">{station(check.at.value * 1000)}</td>
                    <td><Combination label={check.combination} /></td>
                </tr>
            ))}
        </Table>
    );
}
