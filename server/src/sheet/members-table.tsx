/** The page that matters: every member and hanger with its worst check over all stages, and what governs. */
import type { Results } from '../results.js';
import { hangerSummaries, memberSummaries, type HangerSummary, type MemberSummary } from '../summary.js';
import { Bar } from './bar.js';
import { checkAnchor, hangerAnchor, memberAnchor } from './ids.js';
import { percentUp, station } from './numbers.js';
import { outcomeOfState } from './outcome.js';
import { Block, Combination, Line, OutcomeMark, Table, useLineOf } from './parts.js';
import { prose } from './prose.js';

export function MembersTable({ results }: { readonly results: Results }) {
    const members = memberSummaries(results);
    const hangers = hangerSummaries(results);
    return (
        <Block id="members" title="Members">
            {results.bands && <p>{prose(results.bands.sentence)}.</p>}
            {members.length === 0
                ? <p>There is no member in this file.</p>
                : <Table name="members" caption="Members with their worst checks" head={['Member', 'Worst check', 'Final deflection']}>
                    {members.map(member => member.stages.length > 0 ? <MemberRow member={member} /> : <MissingRow member={member} />)}
                </Table>}
            {hangers.length > 0 && (
                <Table name="members" caption="Hangers with their worst checks" head={['Hanger', 'Worst check', 'Force']}>{hangers.map(hanger => <HangerRow hanger={hanger} />)}</Table>
            )}
        </Block>
    );
}

function MissingRow({ member: { name, open, source } }: { readonly member: MemberSummary }) {
    const lineOf = useLineOf();
    return (
        <tr id={memberAnchor({ name })} data-line={lineOf(source)}>
            <th scope="row"><span class="name">{name}</span></th>
            <td colSpan={2}><b class="outcome incomplete"><span aria-hidden="true">? </span>not computed</b>: {open.join('; ')} <Line source={source} /></td>
        </tr>
    );
}

function MemberRow({ member }: { readonly member: MemberSummary }) {
    const lineOf = useLineOf();
    const last = member.stages.at(-1)!;
    return (
        <tr data-line={lineOf(member.source)} id={`row-${memberAnchor(member)}`}>
            <th scope="row">
                <a class="name" href={`#${memberAnchor(member)}`}>{member.name}</a>
                {last.title && <span class="title">{last.title}</span>}
                <span class="small">{last.description && prose(last.description)}</span>
            </th>
            <td><Worst of={member} /></td>
            <td>
                {member.deflection?.split(' = ').map((part, i) => <>{i > 0 && ' = '}<span class="number">{part}</span></>)}
                <span class="small">instant {member.instant}</span>
            </td>
        </tr>
    );
}

function HangerRow({ hanger }: { readonly hanger: HangerSummary }) {
    const lineOf = useLineOf();
    const { carries, from, source } = hanger.stages.at(-1)!;
    return (
        <tr data-line={lineOf(source)} id={`row-${hangerAnchor(hanger)}`}>
            <th scope="row">
                <a class="name" href={`#${hangerAnchor(hanger)}`}>{hanger.name}</a>
                <span class="small">{carries} from {from}</span>
            </th>
            <td><Worst of={hanger} /></td>
            <td><span class="number">{hanger.force}</span></td>
        </tr>
    );
}

function Worst({ of: { checks: [worst], state, stages } }: { readonly of: MemberSummary | HangerSummary }) {
    const outcome = <OutcomeMark outcome={outcomeOfState(state)} />;
    return !worst ? outcome : (
        <>
            <a href={`#${checkAnchor(worst)}`}>{worst.check}</a> <b class="number">{percentUp(worst.utilisation)}</b> {outcome}
            <Bar utilisation={worst.utilisation} />
            <span class="small">
                {stages.length > 1 && worst.stage !== null && <>stage {worst.stage}, </>}
                by <Combination label={worst.combination} />{worst.duration && `, ${worst.duration}`}, <span class="number">at {station(worst.at.value * 1000)}</span>{worst.corner && <>, {prose(worst.corner.sentence)}</>}
            </span>
        </>
    );
}
