import type { Results } from '../results.js';
import { marks, verdictWords } from './outcome.js';
import { Line, useLineOf } from './parts.js';
import { prose } from './prose.js';

export interface Meta {
    readonly sourceHash: string;
    /** Of Padstone, and the date as it is to be printed; neither where the same text has to make the same sheet. */
    readonly version?: string;
    readonly date?: string;
    /** Files that the calculation includes; the hash is of them too. */
    readonly included: readonly string[];
}

/** Which job, and the verdict in words with what stops it. */
export function Head({ results, meta }: { readonly results: Results; readonly meta?: Meta }) {
    const lineOf = useLineOf();
    const { job, verdict, verdictReason, understood, hazards } = results;
    const stop = hazards.find(hazard => hazard.severity === 'stop');
    return (
        <header id="head" data-line={lineOf(job?.source)}>
            <h1>{job?.title || 'Untitled job'}</h1>
            <p class="revision">
                {job?.revision ? <><b>Revision {job.revision.mark}</b>{job.revision.note && <>: {job.revision.note}</>}</> : 'No revision stated'}
            </p>
            <div class={`verdict ${verdict}`}>
                <p><strong><span aria-hidden="true">{marks[verdict]} </span>{verdictWords[verdict]}</strong></p>
                <p>{sentence(verdictReason)}</p>
                {!understood && <p><strong>The text has errors.</strong> What follows is only what could be computed of the rest.</p>}
                {stop && <p><strong>Stopped by:</strong> {sentence(stop.message)} <Line source={stop.source} /></p>}
            </div>
            <dl class="facts">
                {job && <Fact name="Basis">{job.basis}, service class {job.serviceClass}{job.serviceClassStated ? '' : ' (assumed)'}, combinations by EN 1990 ({job.combinations})</Fact>}
                {meta?.date && <Fact name="Calculated">{meta.date}, Padstone {meta.version}</Fact>}
                {meta && <Fact name="Source">{[results.file, ...meta.included].map((file, i) => <>{i > 0 && ', '}<span class="file">{fileName(file)}</span></>)}, content hash <code>{meta.sourceHash}</code></Fact>}
            </dl>
        </header>
    );
}

const fileName = (path: string): string => path.split(/[\\/]/).at(-1) ?? path;

function Fact({ name, children }: { readonly name: string; readonly children: preact.ComponentChildren }) {
    return <div><dt>{name}</dt><dd>{children}</dd></div>;
}

/** What the program says, for the reader: a capital first and a stop last. */
export function sentence(text: string): string {
    const trimmed = prose(text.trim());
    const ended = /[.!?…]$/u.test(trimmed) || trimmed === '' ? trimmed : `${trimmed}.`;
    return ended.replace(/^\p{Ll}(?=[\p{Ll}\s])/u, letter => letter.toUpperCase());
}
