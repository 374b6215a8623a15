/** The page that matters: every member with its worst check, its deflection, and what governs. */
import type { CheckResult, MemberResult, Results } from '../results.js';
import { Bar } from './bar.js';
import { checkAnchor, memberAnchor } from './ids.js';
import { deflection, percentUp, spanRatio, station } from './numbers.js';
import { memberOutcome, type Outcome } from './outcome.js';
import { Block, Line, OutcomeMark, Table } from './parts.js';

export function MembersTable({ results }: { readonly results: Results }) {
    const { members, missing } = results;
    return (
        <Block id="members" title="Members">
            {members.length + missing.length === 0
                ? <p>There is no member in this file.</p>
                : <Table name="members" head={['Member', 'Worst check', 'Final deflection']}>
                    {members.map(member => <MemberRow member={member} worst={worstOf(results, member)} outcome={memberOutcome(results, member.name)} />)}
                    {missing.map(({ name, reason, source }) => (
                        <tr id={memberAnchor({ name })} data-line={source.line}>
                            <th scope="row"><span class="name">{name}</span></th>
                            <td colSpan={2}><b class="outcome incomplete"><span aria-hidden="true">? </span>not computed</b>: {reason} <Line source={source} /></td>
                        </tr>
                    ))}
                </Table>}
        </Block>
    );
}

export function worstOf(results: Results, member: MemberResult): CheckResult | undefined {
    return results.checks.find(check => check.id === member.worst && check.stage === member.stage);
}

interface RowProps {
    readonly member: MemberResult;
    readonly worst: CheckResult | undefined;
    readonly outcome: Outcome;
}

function MemberRow({ member, worst, outcome }: RowProps) {
    const { name, title, description, deflection: deflections, nameSource } = member;
    return (
        <tr data-line={nameSource.line} id={`row-${memberAnchor(member)}`}>
            <th scope="row">
                <a class="name" href={`#${memberAnchor(member)}`}>{name}</a>
                {title && <span class="title">{title}</span>}
                <span class="small">{description}</span>
            </th>
            <td>
                {worst
                    ? <>
                        <a href={`#${checkAnchor(worst)}`}>{worst.check}</a> <b class="number">{percentUp(worst.utilisation)}</b> <OutcomeMark outcome={outcome} />
                        <Bar utilisation={worst.utilisation} />
                        <span class="small">by {worst.combination}, {worst.duration}, at {station(worst.at.value * 1000)}</span>
                    </>
                    : <OutcomeMark outcome={outcome} />}
            </td>
            <td>
                <span class="number">{deflection(deflections.final.value)}</span>
                {Number.isFinite(deflections.ratio) && <> <span class="number">= {spanRatio(deflections.ratio)}</span></>}
                <span class="small">instant {deflection(deflections.instant.value)}</span>
            </td>
        </tr>
    );
}
