/** All that there is to see of one member: drawings, diagrams of every stage, what its supports get. */
import type { MemberResult, Results } from '../results.js';
import { forceRange, memberSummaries, type MemberSummary } from '../summary.js';
import { BuiltUp } from './built-up.js';
import { Calculations } from './calculations.js';
import { Diagrams } from './diagrams.js';
import { frameOf } from './drawing/frame.js';
import { propsOf } from './drawing/props.js';
import { Elevation } from './elevation.js';
import { memberAnchor } from './ids.js';
import { deflection, force, moment, station } from './numbers.js';
import { outcomeOfState } from './outcome.js';
import { Line, OutcomeMark, Table, useLineOf } from './parts.js';
import { Section } from './section.js';
import { StagesTable } from './stages-table.js';
import { prose } from './prose.js';

/** @param calculated whether each member's checks stand with it */
export function Members({ results, calculated }: { readonly results: Results; readonly calculated: boolean }) {
    return (
        <>
            {memberSummaries(results).filter(({ stages }) => stages.length > 0).map(member => (
                <Member member={member}>{calculated && <Calculations checks={results.checks.filter(check => check.subject === member.name)} ledger={results.ledger} />}</Member>
            ))}
        </>
    );
}

function Member({ member: { name, state, checks, stages }, children }: { readonly member: MemberSummary; readonly children: preact.ComponentChildren }) {
    const lineOf = useLineOf();
    const last = stages.at(-1)!;
    const id = memberAnchor(last);
    const { scale } = frameOf(last);
    return (
        <section class="member" id={id} data-line={lineOf(last.nameSource)} aria-labelledby={`${id}-name`}>
            <h3 id={`${id}-name`}>
                <span class="name">{name}</span> {last.title && <span class="title">{last.title}</span>} <OutcomeMark outcome={outcomeOfState(state)} /> <Line source={last.nameSource} />
            </h3>
            <p class="small">{prose(last.description)}, {station(last.length)} long, self weight {force(last.weight.value)}</p>
            {Number.isFinite(scale) && scale > 0
                ? <>
                    <div class="drawings">
                        <Elevation member={last} props={propsOf(stages)} id={`${id}-elevation`} />
                        <Section member={last} checks={checks} id={`${id}-section`} />
                    </div>
                    <BuiltUp member={last} id={id} />
                </>
                : <p>Not drawn: its size is not a number that a drawing can show.</p>}
            <Diagrams stages={stages} id={id} />
            {stages.length > 1 ? <StagesTable stages={stages} /> : <Reactions member={last} />}
            {children}
        </section>
    );
}

function Reactions({ member }: { readonly member: MemberResult }) {
    const { moment: moments, shear, deflection: deflections } = member;
    return (
        <>
            <Table name="reactions" caption={`Reactions of ${member.name}`} head={['Support', 'At', 'Reaction, ultimate']}>
                {member.reactions.map(({ support, at, min, max }) => (
                    <tr>
                        <th scope="row"><span class="name">{support}</span></th>
                        <td class="number">{station(at.value * 1000)}</td>
                        <td class="number">{forceRange(min.value, max.value)}{min.value < 0 && <b> uplift</b>}</td>
                    </tr>
                ))}
            </Table>
            <p class="small">
                Moment {moment(moments.min.value)} to {moment(moments.max.value)}, shear {force(shear.min.value)} to {force(shear.max.value)};
                deflection instant {deflection(deflections.instant.value)}, final {deflection(deflections.final.value)}, characteristic loads with creep {deflection(deflections.total.value)}.
            </p>
        </>
    );
}
