/** How sure are we: every input with how it is known, what is least known first, and what the survey says. */
import type { EvidenceWord, Given, SurveyItem } from '../../../language/src/model.js';
import { inputAnchor } from './ids.js';
import { quantity } from './numbers.js';
import { Block, Line, Table, useLineOf } from './parts.js';

const leastKnownFirst: readonly EvidenceWord[] = ['assumed', 'judged', 'documented', 'graded', 'tested', 'probed', 'measured'];

interface Props {
    readonly ledger: readonly Given<number | string>[];
    readonly survey: readonly SurveyItem[];
}

export function Ledger({ ledger, survey }: Props) {
    const lineOf = useLineOf();
    const sorted = [...ledger].sort((a, b) => rank(a) - rank(b));
    const guessed = ledger.filter(({ evidence }) => evidence.word === 'assumed' || evidence.word === 'judged').length;
    return (
        <Block id="ledger" title="How sure are we">
            {ledger.length === 0
                ? <p>This file gives no input.</p>
                : <>
                    <p>{guessed} of {ledger.length} inputs are only assumed or judged.</p>
                    <Table name="ledger" caption="Inputs and how they are known" head={['Input', 'Value', 'Known by']}>{sorted.map(given => <InputRow given={given} />)}</Table>
                </>}
            {survey.length > 0 && (
                <>
                    <h3>Survey</h3>
                    <Table name="survey" caption="Survey" head={['Subject', 'State']}>
                        {survey.map(({ subject, state, note, source }) => (
                            <tr data-line={lineOf(source)}><th scope="row"><span class="name">{subject}</span></th><td>{state}{note && `: ${note}`} <Line source={source} /></td></tr>
                        ))}
                    </Table>
                </>
            )}
        </Block>
    );
}

const rank = ({ evidence }: Given<number | string>): number => 2 * leastKnownFirst.indexOf(evidence.word) + (evidence.stated ? 1 : 0);

function InputRow({ given }: { readonly given: Given<number | string> }) {
    const lineOf = useLineOf();
    const { path, value, dimension, evidence, source } = given;
    return (
        <tr id={inputAnchor(path)} data-line={lineOf(source)} class={evidence.word}>
            <th scope="row"><span class="name">{path}</span></th>
            <td class="number">{typeof value === 'string' ? value : dimension ? quantity({ value, dimension }) : ''} <Line source={source} /></td>
            <td>{evidence.stated ? evidence.word : 'assumed: nothing is said'}{evidence.note && `: ${evidence.note}`}</td>
        </tr>
    );
}
