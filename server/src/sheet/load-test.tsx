/** Proof loads: what was read against what was predicted, and what that is worth. */
import type { Amount, LoadTestResult } from '../results.js';
import { sentence } from './head.js';
import { LoadTestPlot } from './load-test-plot.js';
import { amount, deflection } from './numbers.js';
import { Line, Table, useLineOf } from './parts.js';
import { prose } from './prose.js';

export function LoadTests({ tests }: { readonly tests: readonly LoadTestResult[] }) {
    return <>{tests.map(test => <LoadTest test={test} />)}</>;
}

function LoadTest({ test }: { readonly test: LoadTestResult }) {
    const lineOf = useLineOf();
    const { name, title, verdict, outcome, unseen, proves, doesNotProve, assumptions, cautions, source } = test;
    return (
        <section class="load-test" data-line={lineOf(source)} aria-label={`Proof load ${name}`}>
            <h3>Proof load <span class="name">{name}</span>{title && <span class="title">: {title}</span>} <Line source={source} /></h3>
            <p class={outcome === 'in doubt' || outcome === 'not computed' ? 'outcome-said doubted' : 'outcome-said'}><strong>{sentence(verdict)}</strong></p>
            {unseen && <p>{prose(unseen)}</p>}
            <LoadTestPlot test={test} />
            <Readings test={test} />
            <Figures test={test} />
            <Listed title="What it proves" items={proves} />
            <Listed title="What it does not prove" items={doesNotProve} />
            <Listed title="What the numbers rest on" items={assumptions} />
            <Listed title="How it is done" items={cautions} />
        </section>
    );
}

function Readings({ test: { name, points, blocks } }: { readonly test: LoadTestResult }) {
    return points.length === 0 ? null : (
        <>
            <p class="small">On blocks at {blocks.map(block => amount(block)).join(' and ')}; sinking where the weight stands.</p>
            <Table name="readings" caption={`Proof load ${name}: predicted and read`} head={['Weight', 'At', 'Predicted', 'Nine pieces in ten between', 'Read']}>
                {points.map(({ weight, at, spread, predicted, low, high, read }) => (
                    <tr>
                        <th scope="row" class="number">{amount(weight)}</th>
                        <td class="number">{amount(at)}{spread && `, over ${amount(spread)}`}</td>
                        <td class="number">{deflection(predicted.value)}</td>
                        <td class="number">{deflection(low.value)} and {deflection(high.value)}</td>
                        <td class="number">{read ? deflection(read.value) : 'not read'}</td>
                    </tr>
                ))}
            </Table>
        </>
    );
}

function Figures({ test }: { readonly test: LoadTestResult }) {
    const { E, EScatter, EMean, recovery, residual, momentShareService, shearShareService, momentShareDesign, shearShareDesign } = test;
    const facts: readonly (readonly [string, string | undefined])[] = [
        ['Modulus', E && `${modulus(E)}${EScatter ? ` ± ${modulus(EScatter)} (one standard error)` : ' by one reading'} back-figured${EMean ? `; its class has ${modulus(EMean)} in the mean` : ''}`],
        ['Recovery', recovery && `${whole(recovery.value / 100)} of the greatest sinking${residual ? `, ${deflection(residual.value)} stayed` : ''}`],
        ['In service', shares(momentShareService, shearShareService)],
        ['In design', shares(momentShareDesign, shearShareDesign)]
    ];
    const shown = facts.filter(([, words]) => words !== undefined);
    return shown.length === 0 ? null : <dl class="facts">{shown.map(([name, words]) => <div><dt>{name}</dt><dd>{prose(words!)}</dd></div>)}</dl>;
}

function shares(moment: number | undefined, shear: number | undefined): string | undefined {
    return moment === undefined || shear === undefined ? undefined : `the test reached ${whole(moment)} of the member's moment and ${whole(shear)} of its shear`;
}

/** To 10 MPa: no test tells it better. Common practice, no source. */
const modulus = ({ value, unit }: Amount): string => `${10 * Math.round(value / 10)} ${unit}`;

/** A share of what was borne is never rounded up. */
const whole = (share: number): string => `${Math.floor(100 * share + 1e-9)} %`;

function Listed({ title, items }: { readonly title: string; readonly items: readonly string[] }) {
    return items.length === 0 ? null : <><h4>{title}</h4><ul>{items.map(item => <li>{sentence(item)}</li>)}</ul></>;
}
