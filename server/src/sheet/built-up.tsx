/** What is to be known of a member of leaves: how to set it out, what its bolts carry, what the leaves are worth together. */
import { useContext } from 'preact/hooks';
import type { BoltDistance, BoltResult, MemberResult } from '../results.js';
import { amount, decimal, dimensionsIn, heightWords, setOut } from './numbers.js';
import { Table, ViewContext, useLineOf } from './parts.js';
import { LeafDiagrams } from './leaf-diagrams.js';
import { distanceWords, numbered, tightest } from './drawing/distances.js';
import { lanesOf } from './drawing/lanes.js';
import { Pattern } from './pattern.js';
import { SettingOut } from './setting-out.js';

export function BuiltUp({ member, id }: { readonly member: MemberResult; readonly id: string }) {
    const { leaves, bolts = [], stiffnessRatio } = member;
    const lanes = lanesOf(member);
    return lanes.length < 2 ? null : (
        <>
            <SettingOut member={member} lanes={lanes} id={`${id}-setting-out`} />
            <Pattern member={member} id={`${id}-pattern`} />
            {leaves && stiffnessRatio !== undefined && <p class="worth">{worth(leaves.length, stiffnessRatio)}</p>}
            {bolts.length > 0 && <Bolts member={member} bolts={bolts} id={`${id}-bolts`} />}
            {leaves && <LeafDiagrams member={member} leaves={leaves} id={`${id}-leaves`} />}
        </>
    );
}

/** Three bolted leaves by the trade's rule. */
const rule = { leaves: 3, worth: 2 };

/** What the leaves are worth, rounded down, against the trade's rule where there is one for their number. */
export function worth(leaves: number, ratio: number): string {
    const least = Math.floor(ratio * 100 + 1e-9) / 100;
    const said = `These ${leaves} leaves with their butts and bolts are worth ${decimal(least.toFixed(2))} of one unbroken leaf: that leaf alone would bend ${decimal(least.toFixed(2))} times as far under the same load (instant, middle of the longest span, without self weight).`;
    if (leaves !== rule.leaves) {
        return said;
    }
    const trade = 'A rule of the trade has it that three bolted leaves are worth about two of one (common practice, no source)';
    return `${said} ${trade}: ${least >= rule.worth ? 'here they are' : 'here they are worth less'}.`;
}

function Bolts({ member: { name, distances = [] }, bolts, id }: { readonly member: MemberResult; readonly bolts: readonly BoltResult[]; readonly id: string }) {
    const lineOf = useLineOf();
    const { folded } = useContext(ViewContext);
    const planes = [...new Set(bolts.flatMap(bolt => bolt.planes.map(({ plane }) => plane)))].sort((a, b) => a - b);
    return (
        <details class="bolts" id={id} open={!folded}>
            <summary><b>{bolts.length} bolts</b> {[...new Set(bolts.map(({ size, grade }) => [size, grade].filter(Boolean).join(' grade ')))].join(', ')}</summary>
            <p class="small">
                Heights from the axis, in {dimensionsIn()} as the stations.
                {distances.length > 0 && ' Distances by EN 1995-1-1 Table 8.4, the tightest of all leaves: what is there against the least under the bolt\'s forces.'}
                {planes.length > 0 && ' Forces: the greatest of the ultimate combinations, in each plane between neighbouring leaves, and its angle to the grain.'}
            </p>
            <Table name="bolts" caption={`Bolts of ${name}`} head={['Bolt', 'At', 'Height', ...planes.map(plane => `Leaf ${plane} to ${plane + 1}`), ...distances.length > 0 ? ['To a bolt', 'To an end', 'To an edge'] : []]}>
                {numbered(bolts).map((bolt, i) => (
                    <tr data-line={lineOf(bolt.source)}>
                        <th scope="row">{i + 1}</th>
                        <td class="number">{setOut(bolt.x)}</td>
                        <td class="number">{heightWords(bolt.height)}</td>
                        {planes.map(plane => <td class="number">{planeWords(bolt, plane)}</td>)}
                        {distances.length > 0 && <Distances distances={distances.filter(({ x, height }) => x === bolt.x && height === bolt.height)} />}
                    </tr>
                ))}
            </Table>
        </details>
    );
}

/** The tightest of each kind, over all leaves. */
function Distances({ distances }: { readonly distances: readonly BoltDistance[] }) {
    const kinds = [distances.filter(({ rule }) => rule === 'a1' || rule === 'a2'), ...['a3', 'a4'].map(rule => distances.filter(distance => distance.rule.startsWith(rule)))];
    return (
        <>
            {kinds.map(kind => {
                const least = tightest(kind, '');
                return <td class="number">{least && <>{distanceWords(least)} {!least.ok && <b class="outcome fail"><span aria-hidden="true">✗ </span>too little</b>}</>}</td>;
            })}
        </>
    );
}

function planeWords({ planes }: BoltResult, wanted: number): string {
    const found = planes.find(({ plane }) => plane === wanted);
    return found ? `${amount(found.force)}, ${Math.round(found.angle)}°` : '';
}
