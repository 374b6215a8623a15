/** Two revisions side by side: what went in, what came out, and both drawings of each member that has changed. */
import { renderToString } from 'preact-render-to-string';
import type { Comparison } from '../diff/comparison.js';
import { presenceWords, tally, type Row } from '../diff/lines.js';
import { sectionsOf } from '../diff/sections.js';
import type { Results } from '../results.js';
import { overStages } from '../summary.js';
import { Patterns } from './drawing/drawing.js';
import { propsOf } from './drawing/props.js';
import { Elevation } from './elevation.js';
import { Table, ViewContext } from './parts.js';
import { sheetStyle } from './style/index.js';

export interface BothSides {
    readonly comparison: Comparison;
    readonly before?: Results;
    readonly after?: Results;
}

/** Of those that have changed, out of `all` that were compared. Pure; everything from the texts is escaped. */
export function renderComparisons(changed: readonly BothSides[], all: number): string {
    return `<!DOCTYPE html>\n${renderToString(
        <html lang="en">
            <head>
                <meta charset="utf-8" />
                <meta name="viewport" content="width=device-width" />
                <meta name="color-scheme" content="light dark" />
                <title>Two revisions compared</title>
                <style dangerouslySetInnerHTML={{ __html: sheetStyle + style }} />
            </head>
            <body>
                <main class="padstone sheet">
                    <Patterns />
                    <h1>Two revisions compared</h1>
                    <p>{tally(all, changed.length)}.</p>
                    {changed.map((sides, i) => <Job sides={sides} id={`job${i + 1}`} />)}
                </main>
            </body>
        </html>
    )}\n`;
}

function Job({ sides, id }: { readonly sides: BothSides; readonly id: string }) {
    const { comparison, before, after } = sides;
    const presence = presenceWords[comparison.presence];
    const names = membersToDraw(sides);
    return (
        <ViewContext.Provider value={{ file: comparison.file, folded: false }}>
            <section aria-labelledby={`${id}-title`}>
                <h2 id={`${id}-title`}>{comparison.title} <span class="file">{comparison.file}</span>{presence && ` (${presence})`}</h2>
                {sectionsOf(comparison).map(({ title, rows, note }) => (
                    <>
                        <h3>{title}</h3>
                        {rows.length > 0 && <Table name="comparison" caption={title} head={['', 'Before', 'After']}>{rows.map(row => <Sides row={row} />)}</Table>}
                        {note && <p class="small">{note}</p>}
                    </>
                ))}
                {names.map(name => (
                    <>
                        <h3>{name}</h3>
                        <div class="sides">
                            <Drawn results={before} name={name} id={`${id}-${name}-before`} title="Before" />
                            <Drawn results={after} name={name} id={`${id}-${name}-after`} title="After" />
                        </div>
                    </>
                ))}
            </section>
        </ViewContext.Provider>
    );
}

function Sides({ row: { what, before, after } }: { readonly row: Row }) {
    return <tr><th scope="row">{what}</th><td>{before === '' ? '–' : before}</td><td>{after === '' ? '–' : after}</td></tr>;
}

function Drawn({ results, name, id, title }: { readonly results: Results | undefined; readonly name: string; readonly id: string; readonly title: string }) {
    const stages = overStages(results?.members ?? []).find(([first]) => first!.name === name);
    return (
        <div>
            <h4>{title}</h4>
            {stages ? <Elevation member={stages.at(-1)!} props={propsOf(stages)} id={id} /> : <p>Not there, or not computed.</p>}
        </div>
    );
}

/** Those whose own text, loads, hangers or checks have changed. */
function membersToDraw({ comparison, before, after }: BothSides): string[] {
    const all = [...new Set([...after?.members ?? [], ...before?.members ?? []].map(({ name }) => name))];
    const sketch = (results: Results | undefined, name: string) => JSON.stringify(results?.members.filter(member => member.name === name).map(({ segments, supportSketches, loadSketches, hangerSketches, propSketches, crossingSketches, losses, notches, butts, length }) =>
        ({ segments, supportSketches, loadSketches, hangerSketches, propSketches, crossingSketches, losses, notches, butts, length })), (key, value: unknown) => key === 'source' ? undefined : value);
    return all.filter(name => sketch(before, name) !== sketch(after, name) || comparison.checks.some(({ id }) => id.startsWith(`${name}.`)));
}

const style = `
body { margin: 0; background: light-dark(#fff, #1c1d1f); }
:root { color-scheme: light dark; }
.sheet { max-width: 80rem; margin: 0 auto; padding: 1rem 1.2rem 3rem; }
.sides { display: grid; grid-template-columns: 1fr 1fr; gap: 0 1.5rem; }
.sides > div { min-width: 0; }
.padstone table.comparison { width: 100%; table-layout: fixed; }
.padstone table.comparison th, .padstone table.comparison td { text-align: left; vertical-align: top; overflow-wrap: anywhere; }
@media (max-width: 45rem) { .sides { grid-template-columns: 1fr; } }
`;
