/** What was carried, how it was made up, and which combination governs which check. */
import type { Action } from '../../../language/src/model.js';
import type { CheckResult, LoadResult, ParameterUse, Results } from '../results.js';
import { worstOfEach } from '../summary.js';
import { checkAnchor } from './ids.js';
import { significant } from './numbers.js';
import { Block, Combination, Line, Table, useLineOf } from './parts.js';
import { prose } from './prose.js';

export function Loads({ results }: { readonly results: Results }) {
    const { loads, checks, parameters } = results;
    return (
        <Block id="loads" title="Loads and combinations">
            {loads.length === 0
                ? <p>No load is given in this file: only self weight was counted.</p>
                : <Table name="loads" caption="Loads" head={['Load', 'Action', 'On', 'Amount', 'Lasting', 'ψ0 · ψ1 · ψ2']}>{loads.map(load => <LoadRow result={load} />)}</Table>}
            {checks.length > 0 && <Governing checks={worstOfEach(checks)} />}
            {parameters.length > 0 && <Parameters parameters={parameters} />}
        </Block>
    );
}

function LoadRow({ result: { load, duration, psi, account } }: { readonly result: LoadResult }) {
    const lineOf = useLineOf();
    const permanent = load.action.kind === 'permanent';
    return (
        <tr data-line={lineOf(load.source)}>
            <th scope="row"><span class="name">{load.name}</span> <Line source={load.source} /></th>
            <td>{actionWords(load.action)}</td>
            <td><span class="name">{load.member}</span></td>
            <td>{prose(account)}<span class="small">{load.fromMass && 'a mass times g = 9.80665 m/s², '}{load.amount.evidence.word}{load.amount.evidence.note && `: ${load.amount.evidence.note}`}</span></td>
            <td class="number">{duration}</td>
            <td class="number">{permanent ? '' : psi.map(factor => significant(factor)).join(' · ')}</td>
        </tr>
    );
}

function actionWords(action: Action): string {
    return action.kind === 'imposed' ? `imposed ${action.category}` : action.kind;
}

/** Every combination that governs a check, in the order of the checks. */
function Governing({ checks }: { readonly checks: readonly CheckResult[] }) {
    const groups = new Map<string, CheckResult[]>();
    for (const check of checks) {
        const key = `${check.combination}\n${check.duration}`;
        groups.set(key, [...groups.get(key) ?? [], check]);
    }
    return (
        <>
            <h3>Combinations that govern</h3>
            <p class="small">Every variable action led in turn, with permanent actions favourable and unfavourable, on the spans where it is worst. Of all of them, these govern.</p>
            <Table name="combinations" caption="Combinations that govern" head={['Combination', 'Load duration', 'Governs']}>
                {[...groups.values()].map(group => (
                    <tr>
                        <th scope="row"><Combination label={group[0]!.combination} /></th>
                        <td class="number">{group[0]!.duration}</td>
                        <td>{group.map((check, i) => <>{i > 0 && ', '}<a href={`#${checkAnchor(check)}`}>{check.id}</a>{check.stage !== null && ` (${check.stage})`}</>)}</td>
                    </tr>
                ))}
            </Table>
        </>
    );
}

function Parameters({ parameters }: { readonly parameters: readonly ParameterUse[] }) {
    return (
        <>
            <h3>Values of the basis that were used</h3>
            <Table name="parameters" caption="Values of the basis" head={['Parameter', 'Value', 'Origin']}>
                {parameters.map(({ name, value, origin }) => <tr><th scope="row">{name}</th><td class="number">{significant(value)}</td><td>{origin}</td></tr>)}
            </Table>
        </>
    );
}
