import { expect, test } from 'vitest';
import { job } from '../../../tests/command/results-fixture.js';
import { noResults } from '../no-results.js';
import { exitCodeOf, internalErrorCode } from './exit-code.js';

test.each([
    ['a pass', job(), 0],
    ['a failure', job({ verdict: 'fail' }), 1],
    ['what is incomplete', job({ verdict: 'incomplete' }), 1],
    ['a text with errors, even where a check fails too', job({ verdict: 'fail', understood: false }), 2],
    ['a text with errors, whatever the verdict says', job({ understood: false }), 2],
    ['a defect of the program', noResults('x', internalErrorCode, 'a stack'), 3]
] as const)('%s', (_name, results, code) => {
    expect(exitCodeOf(results)).toBe(code);
});
