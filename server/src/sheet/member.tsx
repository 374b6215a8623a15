/** All that there is to see of one member: drawings, diagrams, what its supports get. */
import type { MemberResult, Results } from '../results.js';
import { Diagrams } from './diagrams.js';
import { frameOf } from './drawing/frame.js';
import { Elevation } from './elevation.js';
import { memberAnchor } from './ids.js';
import { worstOf } from './members-table.js';
import { deflection, force, moment, station } from './numbers.js';
import { memberOutcome } from './outcome.js';
import { OutcomeMark, Table } from './parts.js';
import { Section } from './section.js';

interface Props {
    readonly member: MemberResult;
    readonly results: Results;
    readonly children?: preact.ComponentChildren;
}

export function Member({ member, results, children }: Props) {
    const id = memberAnchor(member);
    const { scale } = frameOf(member);
    return (
        <section class="member" id={id} data-line={member.nameSource.line} aria-labelledby={`${id}-name`}>
            <h3 id={`${id}-name`}>
                <span class="name">{member.name}</span> {member.title && <span class="title">{member.title}</span>} <OutcomeMark outcome={memberOutcome(results, member.name)} />
            </h3>
            <p class="small">{member.description}, {station(member.length)} long, self weight {force(member.weight.value)}{member.stage && <>, stage {member.stage}</>}</p>
            {Number.isFinite(scale) && scale > 0
                ? <div class="drawings">
                    <Elevation member={member} id={`${id}-elevation`} />
                    <Section member={member} worst={worstOf(results, member)} id={`${id}-section`} />
                </div>
                : <p>Not drawn: its size is not a number that a drawing can show.</p>}
            <Diagrams member={member} id={id} />
            <Reactions member={member} />
            {children}
        </section>
    );
}

function Reactions({ member }: { readonly member: MemberResult }) {
    const { moment: moments, shear, deflection: deflections } = member;
    return (
        <>
            <Table name="reactions" head={['Support', 'At', 'Reaction, ultimate']}>
                {member.reactions.map(({ support, at, min, max }) => (
                    <tr>
                        <th scope="row"><span class="name">{support}</span></th>
                        <td class="number">{station(at.value * 1000)}</td>
                        <td class="number">{force(min.value)} to {force(max.value)}{min.value < 0 && <b> uplift</b>}</td>
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
