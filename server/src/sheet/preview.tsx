import { renderToString } from 'preact-render-to-string';
import type { Results } from '../results.js';
import { Calculations } from './calculations.js';
import { Cautions } from './cautions.js';
import { Patterns } from './drawing/drawing.js';
import { plainDisplay, shownAs } from './display.js';
import { TextErrors } from './findings.js';
import { Hazards } from './hazards.js';
import { subjectAnchors } from './ids.js';
import { Head } from './head.js';
import { Hangers } from './hangers.js';
import { Ledger } from './ledger.js';
import { Members } from './member.js';
import { MembersTable } from './members-table.js';
import { Block, ViewContext } from './parts.js';
import { Options } from './options.js';
import { OrderOfWork } from './order-of-work.js';
import { Requirements } from './requirements.js';
import { sheetStyle } from './style/index.js';
import { Unchecked } from './unchecked.js';

/** The fragment that the preview pane shows, and its rules. Pure; everything from the text is escaped. */
export function renderPreview(results: Results, display = plainDisplay): { html: string; css: string } {
    return { html: shownAs(display, () => renderToString(<Preview results={results} />)), css: sheetStyle };
}

function Preview({ results }: { readonly results: Results }) {
    const drawn = new Set([...results.members, ...results.hangers].map(({ name }) => name));
    const others = results.checks.filter(check => !drawn.has(check.subject));
    return (
        <ViewContext.Provider value={{ file: results.file, folded: true, subjects: subjectAnchors(results) }}>
            <div class="padstone">
                <Patterns />
                <Head results={results} />
                <TextErrors results={results} />
                <MembersTable results={results} />
                <Hazards hazards={results.hazards} />
                <Requirements requirements={results.requirements} />
                <OrderOfWork stages={results.stages} />
                <Options options={results.options ?? []} />
                {results.members.length > 0 && <Block id="drawings" title="Member by member"><Members results={results} calculated /></Block>}
                {results.hangers.length > 0 && <Block id="hangers" title="Hangers"><Hangers results={results} calculated /></Block>}
                {others.length > 0 && <Block id="others" title="Other checks"><Calculations checks={others} ledger={results.ledger} /></Block>}
                <Ledger results={results} />
                <Unchecked items={results.unchecked} />
                <Cautions />
            </div>
        </ViewContext.Provider>
    );
}
