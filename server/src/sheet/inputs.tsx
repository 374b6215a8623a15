/** The ledger of inputs: guesses first, by how near they sit to where a check fails; then what is known. */
import type { EvidenceWord, Given } from '../../../language/src/model.js';
import { units } from '../../../language/src/units.js';
import { unitOf, type Certainty } from '../certainty/index.js';
import type { Results } from '../results.js';
import { evidenceInWords } from '../summary.js';
import { sentence } from './head.js';
import { inputAnchor } from './ids.js';
import { amount } from './numbers.js';
import { Line, Table, useLineOf } from './parts.js';

interface Props {
    readonly inputs: Results['ledger'];
    /** Undefined until it is found. */
    readonly certainty: Certainty | undefined;
}

export function Inputs({ inputs, certainty }: Props) {
    const guessed = inputs.filter(({ evidence }) => evidence.word === 'assumed' || evidence.word === 'judged').length;
    return (
        <>
            <p>{guessed} of {inputs.length} inputs are only assumed or judged.</p>
            {certainty ? <WithLimits certainty={certainty} /> : <Known inputs={[...inputs].sort((a, b) => rank(a) - rank(b))} caption="Inputs and how they are known" />}
        </>
    );
}

/** Whatever has a limit, or is a guess and should have one, stands with it. */
function WithLimits({ certainty: { ledger, asked, left } }: { readonly certainty: Certainty }) {
    const lineOf = useLineOf();
    const first = ledger.filter(({ guess, breakEvens }) => guess || breakEvens.length > 0);
    const rest = ledger.filter(entry => !first.includes(entry)).map(({ input }) => input);
    const shown = new Set(first.flatMap(({ breakEvens }) => breakEvens));
    return (
        <>
            {first.length > 0 && (
                <>
                    <p>Each is varied by itself, all else as given. Guesses come first, the nearest to its limit before all; then how deep losses were found to be, and what else the file asks for.</p>
                    <Table name="ledger limits" caption="Inputs with the value at which a check fails" head={['Input', 'Known by', 'At what value a check fails']}>
                        {first.map(({ input, guess, breakEvens }) => (
                            <tr id={inputAnchor(input.path)} data-line={lineOf(input.source)} class={input.evidence.word}>
                                <th scope="row"><span class="name">{input.path}</span> <span class="number">{valueOf(input)}</span> <Line source={input.source} /></th>
                                <td>{evidenceInWords(input.evidence)}</td>
                                <td>{breakEvens.length === 0 && guess ? without(input.path, left) : breakEvens.map(one => <p>{sentence(one.sentence)}</p>)}</td>
                            </tr>
                        ))}
                    </Table>
                </>
            )}
            {asked.filter(one => !shown.has(one)).map(({ path, sentence: said }) => <p><b class="name">{path}</b> {sentence(said)}</p>)}
            {rest.length > 0 && <Known inputs={rest} caption="Other inputs and how they are known" />}
        </>
    );
}

function without(path: string, left: readonly string[]): string {
    const [member] = path.split('.');
    const isLeft = left.some(one => one === path || (path.endsWith('.section') && one.startsWith(`${member}.`) && /\.(depth|breadth)$/.test(one)));
    return isLeft ? 'Not looked for, for there are too many guesses: a breakeven line asks for it.' : 'It has no value that can be varied.';
}

function Known({ inputs, caption }: { readonly inputs: Results['ledger']; readonly caption: string }) {
    const lineOf = useLineOf();
    return (
        <Table name="ledger" caption={caption} head={['Input', 'Value', 'Known by']}>
            {inputs.map(given => (
                <tr id={inputAnchor(given.path)} data-line={lineOf(given.source)} class={given.evidence.word}>
                    <th scope="row"><span class="name">{given.path}</span></th>
                    <td class="number">{valueOf(given)} <Line source={given.source} /></td>
                    <td>{evidenceInWords(given.evidence)}</td>
                </tr>
            ))}
        </Table>
    );
}

/** In the unit that the file has it in as a rule: a moisture in per cent. */
function valueOf(given: Given<number | string>): string {
    const unit = unitOf(given);
    const sides = given.band ? [given.band.low, given.band.high] : [given.value];
    return sides.map(one => typeof one === 'string' ? one : amount({ value: one / (units.get(unit)?.factor ?? 1), unit })).join(' .. ');
}

const leastKnownFirst: readonly EvidenceWord[] = ['assumed', 'judged', 'documented', 'graded', 'tested', 'probed', 'measured'];

const rank = ({ evidence }: Given<number | string>): number => 2 * leastKnownFirst.indexOf(evidence.word) + (evidence.stated ? 1 : 0);
