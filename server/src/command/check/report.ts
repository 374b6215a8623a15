/** What a run keeps of one file: little enough to be sent from a worker, or to lie in a cache. */
import type { Results, Verdict } from '../../results.js';
import { computeVerdict } from '../../whole.js';
import { evaluateFile, type ReadFile } from '../calculate-file.js';
import { exitCodeOf } from '../exit-code.js';
import { formats, type FormatName } from '../format/index.js';
import type { Page } from '../format/page.js';
import { isLibrary } from '../libraries.js';

export interface Report {
    readonly file: string;
    readonly verdict: Verdict;
    readonly verdictReason: string;
    readonly understood: boolean;
    readonly exitCode: number;
    /** It holds details or values for other files: by itself there is nothing of it to compute. */
    readonly library: boolean;
    /** What is not as it should be, for a baseline. */
    readonly shortcomings: Shortcomings;
    /** The file's part of what is printed. */
    readonly part: string;
    /** All that was read, the file itself first: name, and text where there is such a file. */
    readonly texts: readonly (readonly [file: string, text: string | null])[];
}

export interface Shortcomings {
    /** Checks that fail, as `T2.bending in relieved`, with their utilisation (1e9 where there is no number), and requirements (0). */
    readonly fails: Readonly<Record<string, number>>;
    /** Hazards that stop, and what is not computed though the file says it. */
    readonly open: readonly string[];
}

export function reportOn(file: string, format: FormatName, page: Page, read: ReadFile): Report {
    const texts: (readonly [string, string | null])[] = [];
    const { evaluation, calculated } = evaluateFile(file, path => {
        const found = read(path);
        texts.push([path, typeof found === 'string' ? found : null]);
        return found;
    });
    const { results } = formats[format].tellsAsked ? calculated() : calculated(computeVerdict);
    const { verdict, verdictReason, understood } = results;
    return {
        file, verdict, verdictReason, understood, texts,
        exitCode: exitCodeOf(results), library: isLibrary(evaluation), shortcomings: shortcomingsOf(results), part: formats[format].part(results, page)
    };
}

function shortcomingsOf({ checks, requirements, hazards, unchecked, missing }: Results): Shortcomings {
    const failing = checks.filter(({ pass }) => !pass).map(({ id, stage, option, utilisation }) => (
        [`${id}${stage === null ? '' : ` in ${stage}`}${option === null ? '' : `, option ${option}`}`, Number.isFinite(utilisation) ? utilisation : 1e9] as const
    ));
    const broken = requirements.filter(({ holds }) => holds === false).map(({ text }) => [`require ${text}`, 0] as const);
    return {
        fails: Object.fromEntries([...failing, ...broken]),
        open: [
            ...hazards.filter(({ severity, answer }) => severity === 'stop' && answer === undefined).map(({ code, subject }) => `${subject}: ${code}`),
            ...unchecked.filter(({ blocking }) => blocking).map(({ text }) => text),
            ...missing.map(({ name }) => `${name} is not computed`)
        ]
    };
}
