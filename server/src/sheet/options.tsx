/** Ways to do it, side by side. */
import type { OptionResult } from '../results.js';
import { hazardCount } from '../summary.js';
import { amount, deflection, percentUp, spanRatio } from './numbers.js';
import { Block, Line, OutcomeMark, Table, useLineOf } from './parts.js';
import { sentence } from './head.js';

export function Options({ options }: { readonly options: readonly OptionResult[] }) {
    return options.length === 0 ? null : (
        <Block id="options" title="Options">
            <p class="small">Each is the whole calculation with other members. Pieces, masses and parts are of what is brought in, which is all of it where no stage says what is new; bolts, rods and small plates have no part in the mass. Hazards are those that are not answered.</p>
            <Table name="options" caption="Options compared" head={['Option', 'Verdict', 'Worst check', 'Final deflection', 'Mass', 'Heaviest piece', 'Longest piece', 'Parts', 'Hazards']}>
                {options.map(option => <OptionRow option={option} />)}
            </Table>
            <ul>{options.filter(({ verdict }) => verdict !== 'pass').map(({ name, verdictReason }) => <li><b class="name">{name ?? 'As drawn'}</b>: {sentence(verdictReason)}</li>)}</ul>
        </Block>
    );
}

function OptionRow({ option }: { readonly option: OptionResult }) {
    const lineOf = useLineOf();
    const { name, title, verdict, worst, deflection: bent, mass, heaviestPiece, longestPiece, parts, hazards, source } = option;
    return (
        <tr data-line={lineOf(source)}>
            <th scope="row"><span class="name">{name ?? 'as drawn'}</span>{title && <span class="small">{title}</span>} {name !== null && <Line source={source} />}</th>
            <td><OutcomeMark outcome={verdict} /></td>
            <td>{worst ? <>{worst.id} <b class="number">{percentUp(worst.utilisation)}</b></> : 'nothing checked'}</td>
            <td>{bent && <><span class="number">{deflection(bent.final.value)}</span> = <span class="number">{spanRatio(bent.ratio)}</span> <span class="small">{bent.member}</span></>}</td>
            <td class="number">{mass ? amount(mass) : 'not known'}</td>
            <td>{heaviestPiece ? <><span class="number">{amount(heaviestPiece.mass)}</span> <span class="small">{heaviestPiece.mark}</span></> : 'not known'}</td>
            <td>{longestPiece && <><span class="number">{amount(longestPiece.length)}</span> <span class="small">{longestPiece.mark}</span></>}</td>
            <td class="number">{parts}</td>
            <td>{hazardCount(hazards)}</td>
        </tr>
    );
}
