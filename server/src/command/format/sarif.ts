import { version } from '../../../../package.json';
import type { Severity } from '../../../../language/src/model.js';
import type { Results } from '../../results.js';
import type { Format } from './format.js';

const levels: Readonly<Record<Severity, 'error' | 'warning' | 'note'>> = { error: 'error', warning: 'warning', hazard: 'warning', info: 'note' };

interface SarifResult { readonly ruleId: string }

/** OASIS SARIF 2.1.0: one run, its rules the codes of the findings. */
export const sarif: Format = {
    tellsAsked: false,
    part: results => JSON.stringify(resultsOf(results)),
    whole: files => {
        const results = files.flatMap(({ part }) => JSON.parse(part) as SarifResult[]);
        const log = {
            $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json',
            version: '2.1.0',
            runs: [{
                tool: { driver: { name: 'Padstone', semanticVersion: version, rules: [...new Set(results.map(({ ruleId }) => ruleId))].sort().map(id => ({ id })) } },
                columnKind: 'utf16CodeUnits',
                results
            }]
        };
        return `${JSON.stringify(log, undefined, 2)}\n`;
    }
};

function resultsOf({ findings }: Results): readonly SarifResult[] {
    return findings.map(({ severity, code, message, source: { file, line, column } }) => ({
        ruleId: code,
        level: levels[severity],
        message: { text: message },
        locations: [{ physicalLocation: { artifactLocation: { uri: uriOf(file) }, region: { startLine: line, startColumn: column } } }]
    }));
}

/** Relative to where the command was run, as what reads it expects. */
const uriOf = (file: string): string => file.replace(/\\/g, '/').split('/').map(part => part === '' ? '' : encodeURIComponent(part)).join('/');
