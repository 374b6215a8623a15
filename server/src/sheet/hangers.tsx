/** Each hanger: what it carries, its force in every stage, and its checks. */
import type { CheckResult, HangerResult, Results } from '../results.js';
import { forceRange, hangerSummaries, type HangerSummary } from '../summary.js';
import { Calculations } from './calculations.js';
import { hangerAnchor } from './ids.js';
import { force, percentUp, station } from './numbers.js';
import { outcomeOf, outcomeOfState } from './outcome.js';
import { Line, OutcomeMark, Table, useLineOf } from './parts.js';
import { prose } from './prose.js';

/** @param calculated whether each hanger's checks stand with it */
export function Hangers({ results, calculated }: { readonly results: Results; readonly calculated: boolean }) {
    return (
        <>
            {hangerSummaries(results).map(hanger => (
                <Hanger hanger={hanger}>{calculated && <Calculations checks={results.checks.filter(check => check.subject === hanger.name)} ledger={results.ledger} />}</Hanger>
            ))}
        </>
    );
}

function Hanger({ hanger, children }: { readonly hanger: HangerSummary; readonly children: preact.ComponentChildren }) {
    const lineOf = useLineOf();
    const { name, state, stages, checks } = hanger;
    const { carries, carriesAt, from, fromAt, description, source, usedAt } = stages.at(-1)!;
    const id = hangerAnchor(hanger);
    return (
        <section class="hanger" id={id} data-line={lineOf(usedAt ?? source)} aria-labelledby={`${id}-name`}>
            <h3 id={`${id}-name`}><span class="name">{name}</span> <OutcomeMark outcome={outcomeOfState(state)} /></h3>
            <p>
                Carries <span class="name">{carries}</span> at {station(carriesAt)} from <span class="name">{from}</span> at {station(fromAt)}: {prose(description)}.{' '}
                {usedAt ? <><Line source={usedAt} />, made by <Line source={source} /></> : <Line source={source} />}
            </p>
            <Table name="by-stage" caption={`Tension of ${name}`} head={['Stage', 'Tension of all rods, ultimate', 'Tightened to', 'Worst check']}>
                {stages.map(stage => <StageRow hanger={stage} worst={checks.find(check => check.stage === stage.stage)} />)}
            </Table>
            {children}
        </section>
    );
}

function StageRow({ hanger: { stage, force: { min, max }, tightening }, worst }: { readonly hanger: HangerResult; readonly worst: CheckResult | undefined }) {
    return (
        <tr>
            <th scope="row"><span class="name">{stage ?? 'as it stands'}</span></th>
            <td class="number">{forceRange(min.value, max.value)}</td>
            <td class="number">{tightening && force(tightening.value)}</td>
            <td>{worst && <>{worst.check} <b class="number">{percentUp(worst.utilisation)}</b> <OutcomeMark outcome={outcomeOf(worst)} /></>}</td>
        </tr>
    );
}
