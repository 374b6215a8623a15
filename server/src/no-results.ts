/** Results of a file that has none. */
import type { Finding } from '../../language/src/model.js';
import type { Results } from './results.js';

/** One error at the beginning of the file says why; the verdict is never a pass. */
export function noResults(file: string, code: string, message: string): Results {
    const finding: Finding = { severity: 'error', code, message, source: { file, start: 0, end: 0, line: 1, column: 1 } };
    return {
        file,
        job: undefined,
        verdict: 'incomplete',
        verdictReason: message,
        understood: false,
        findings: [finding],
        checks: [],
        members: [],
        hangers: [],
        stages: [],
        missing: [],
        requirements: [],
        loads: [],
        parameters: [],
        hazards: [],
        survey: [],
        ledger: [],
        unchecked: []
    };
}
