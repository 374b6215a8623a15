import type { Results } from '../../results.js';
import { clip } from '../drawing/labels.js';
import type { Meta } from '../head.js';

/**
 * The sheet by itself: screen and paper. The paper's size is the printer's own (A4 or Letter); job, revision,
 * verdict and page number stand on every page, so that none speaks for the others.
 */
export function pageStyle({ job, verdict }: Results, meta: Meta): string {
    const revision = job?.revision ? `revision ${job.revision.mark}` : 'no revision';
    return `
body { margin: 0; background: light-dark(#fff, #1c1d1f); }
:root { color-scheme: light dark; }
.sheet { max-width: 60rem; margin: 0 auto; padding: 1rem 1.2rem 3rem; }
@page {
    margin: 16mm 14mm 15mm;
    @top-left { content: ${cssString(`${clip(job?.title || 'Untitled job', 70)} · ${clip(revision, 20)}`)}; font: 8pt sans-serif; }
    @top-right { content: ${cssString(verdict)}; font: 8pt sans-serif; }
    @bottom-left { content: ${cssString(footer(meta))}; font: 8pt sans-serif; }
    @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; }
}
@media print {
    :root, .padstone { color-scheme: light; }
    .sheet { max-width: none; padding: 0; font-size: 9pt; }
    .padstone .step { margin: 0.25em 0 0.25em 0.6em; }
    .padstone .where { margin: 0.4em 0 0.3em 0.6em; }
    .padstone th, .padstone td { padding-top: 0.12em; padding-bottom: 0.12em; }
    .padstone h2 { margin-top: 1.2em; }
    .padstone table.parameters, .padstone table.ledger { font-size: 0.93em; }
    h1, h2, h3, .member > p:first-of-type, .of-stages > p, summary, .governs { break-after: avoid; }
    thead tr { break-after: avoid; }
    tbody { break-before: avoid; }
    figure, tr, .step, .begin, .table.short, .hazards li, .stages > li, .signature, .verdict, .facts { break-inside: avoid; }
    .padstone .drawings { flex-wrap: nowrap; gap: 0 6mm; break-inside: avoid; }
    .padstone .drawings .elevation { flex: 0 1 118mm; }
    .padstone .drawings .section { flex: 0 0 48mm; }
    .diagram .drawing, .setting-out .drawing, .pattern .drawing { max-width: min(100%, 118mm); }
    .section .drawing { max-width: 42mm; }
    .padstone .worked, .padstone .table { overflow: visible; }
    .padstone math { font-size: 1em; }
    .padstone .math.long math { font-size: 0.9em; }
    summary { list-style: none; }
    details::details-content { content-visibility: visible; display: block; }
    a { color: inherit; }
    #unchecked, #signature { break-inside: avoid; }
}
`;
}

/** Which text it is of, when and by what it was calculated. */
export function footer({ sourceHash, version, date }: Meta): string {
    return [`source ${clip(sourceHash, 20)}`, version && `Padstone ${clip(version, 20)}`, date && clip(date, 30)].filter(Boolean).join(' · ');
}

/** A CSS string that holds any text: all but plain characters escaped, so that nothing ends it or the style element. */
function cssString(text: string): string {
    return `"${text.replace(/[^A-Za-z0-9 ]/gu, character => `\\${character.codePointAt(0)!.toString(16)} `)}"`;
}
