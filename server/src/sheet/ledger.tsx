/** How sure are we: what is known how, what each guess must not become, what was tested, and what the survey says. */
import type { Results } from '../results.js';
import { GuessedGrades } from './guessed-grades.js';
import { Inputs } from './inputs.js';
import { LoadTests } from './load-test.js';
import { Block, Line, Table, useLineOf } from './parts.js';

export function Ledger({ results }: { readonly results: Results }) {
    const { ledger, certainty, loadTests = [], survey } = results;
    return (
        <Block id="ledger" title="How sure are we">
            {ledger.length === 0 ? <p>This file gives no input.</p> : <Inputs inputs={ledger} certainty={certainty} />}
            {certainty && <GuessedGrades sensitivities={certainty.sensitivities} />}
            <LoadTests tests={loadTests} />
            {survey.length > 0 && <Survey items={survey} />}
        </Block>
    );
}

function Survey({ items }: { readonly items: Results['survey'] }) {
    const lineOf = useLineOf();
    return (
        <>
            <h3>Survey</h3>
            <Table name="survey" caption="Survey" head={['Subject', 'State']}>
                {items.map(({ subject, state, note, source }) => (
                    <tr data-line={lineOf(source)}><th scope="row"><span class="name">{subject}</span></th><td>{state}{note && `: ${note}`} <Line source={source} /></td></tr>
                ))}
            </Table>
        </>
    );
}
