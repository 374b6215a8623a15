/** What a grade by judgement is worth: one class lower, and as soft as one piece in twenty of its class. */
import type { Sensitivity, Variant } from '../certainty/index.js';
import { percentUp } from './numbers.js';
import { Table } from './parts.js';

export function GuessedGrades({ sensitivities }: { readonly sensitivities: readonly Sensitivity[] }) {
    return sensitivities.length === 0 ? null : (
        <>
            <h3>Grades that were guessed</h3>
            <Table name="grades" caption="What lower grades do" head={['Grade', 'As given', 'One class lower', 'Deflection as soft as one in twenty (E₀,₀₅)']}>
                {sensitivities.map(({ path, grade, given, givenDeflection, lowerClass, lowModulus }) => (
                    <tr>
                        <th scope="row"><span class="name">{path}</span> {grade}</th>
                        <td>{worst(given)}{givenDeflection.check !== given.check && `; ${worst(givenDeflection)}`}</td>
                        <td>{lowerClass ? <><b>{lowerClass.with}</b>: <Found variant={lowerClass} /></> : `${grade} is the lowest of its list`}</td>
                        <td>{lowModulus && <Found variant={lowModulus} />}</td>
                    </tr>
                ))}
            </Table>
        </>
    );
}

function Found({ variant: { worst: found, changesVerdict } }: { readonly variant: Variant }) {
    return <>{worst(found)}{changesVerdict && <>: <b>changes the verdict</b></>}</>;
}

function worst({ check, utilisation, stage }: Variant['worst']): string {
    return check === '' ? 'no check depends on it' : `${check} ${percentUp(utilisation)}${stage === undefined ? '' : ` in ${stage}`}`;
}
