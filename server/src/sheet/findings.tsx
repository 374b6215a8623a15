import type { Results } from '../results.js';
import { sentence } from './head.js';
import { Block, Line, useLineOf } from './parts.js';

/** What is wrong with the text itself, where it has errors. Failing checks and hazards have their own places. */
export function TextErrors({ results }: { readonly results: Results }) {
    const lineOf = useLineOf();
    const errors = results.understood ? [] : results.findings.filter(({ severity, code }) => severity === 'error' && !ownPlace.has(code));
    return errors.length === 0 ? null : (
        <Block id="errors" title="Errors in the text">
            <ul class="errors">
                {errors.map(({ message, source }) => <li data-line={lineOf(source)}>{sentence(message)} <Line source={source} /></li>)}
            </ul>
        </Block>
    );
}

const ownPlace = new Set(['check-fails', 'requirement-fails']);
