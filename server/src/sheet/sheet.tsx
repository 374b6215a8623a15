import { renderToString } from 'preact-render-to-string';
import type { Results } from '../results.js';
import { Calculations } from './calculations.js';
import { Cautions, Signature } from './cautions.js';
import { Patterns } from './drawing/drawing.js';
import { plainDisplay, shownAs, type Display } from './display.js';
import { TextErrors } from './findings.js';
import { Hazards } from './hazards.js';
import { subjectAnchors } from './ids.js';
import { Head, type Meta } from './head.js';
import { Ledger } from './ledger.js';
import { Loads } from './loads.js';
import { Hangers } from './hangers.js';
import { Members } from './member.js';
import { MembersTable } from './members-table.js';
import { Block, ViewContext } from './parts.js';
import { Options } from './options.js';
import { Requirements } from './requirements.js';
import { OrderOfWork } from './order-of-work.js';
import { pageStyle, sheetStyle } from './style/index.js';
import { Unchecked } from './unchecked.js';

/** The whole sheet as a page that needs neither script nor network. Pure; everything from the text is escaped. */
export function renderSheet(results: Results, meta: Meta, display = plainDisplay): string {
    return shownAs(display, () => `<!DOCTYPE html>\n${renderToString(<Page results={results} meta={meta} />)}\n`);
}

/** What stands on the sheet, as HTML with formulas as text: what its other forms are made from. */
export function renderContent(results: Results, meta: Meta, display: Display): string {
    return shownAs(display, () => renderToString(
        <ViewContext.Provider value={{ file: results.file, folded: false, plainMath: true, subjects: subjectAnchors(results) }}>
            <main class="padstone sheet"><Sheet results={results} meta={meta} /></main>
        </ViewContext.Provider>
    ));
}

function Page({ results, meta }: { readonly results: Results; readonly meta: Meta }) {
    const title = results.job?.title || 'Untitled job';
    return (
        <html lang="en">
            <head>
                <meta charset="utf-8" />
                <meta name="viewport" content="width=device-width" />
                <meta name="color-scheme" content="light dark" />
                <title>{`${title}: calculation sheet`}</title>
                <style dangerouslySetInnerHTML={{ __html: sheetStyle + pageStyle(results, meta) }} />
            </head>
            <body>
                <ViewContext.Provider value={{ file: results.file, folded: false, subjects: subjectAnchors(results) }}>
                    <main class="padstone sheet"><Sheet results={results} meta={meta} /></main>
                </ViewContext.Provider>
            </body>
        </html>
    );
}

function Sheet({ results, meta }: { readonly results: Results; readonly meta: Meta }) {
    const { members, hangers, checks, ledger } = results;
    return (
        <>
            <Patterns />
            <Head results={results} meta={meta} />
            <TextErrors results={results} />
            <MembersTable results={results} />
            <Hazards hazards={results.hazards} />
            <OrderOfWork stages={results.stages} />
            <Options options={results.options ?? []} />
            {members.length > 0 && <Block id="drawings" title="Drawings and diagrams"><Members results={results} calculated={false} /></Block>}
            {hangers.length > 0 && <Block id="hangers" title="Hangers"><Hangers results={results} calculated={false} /></Block>}
            <Loads results={results} />
            {checks.length > 0 && <Block id="calculation" title="Calculation"><Calculations checks={checks} ledger={ledger} /></Block>}
            <Requirements requirements={results.requirements} />
            <Ledger results={results} />
            <Unchecked items={results.unchecked} />
            <Cautions />
            <Signature />
        </>
    );
}
