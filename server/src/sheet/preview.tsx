import { renderToString } from 'preact-render-to-string';
import type { Results } from '../results.js';
import { Calculation } from './calculation.js';
import { Cautions } from './cautions.js';
import { Patterns } from './drawing/drawing.js';
import { TextErrors } from './findings.js';
import { Hazards } from './hazards.js';
import { Head } from './head.js';
import { Member } from './member.js';
import { MembersTable } from './members-table.js';
import { Block, ViewContext } from './parts.js';
import { Requirements } from './requirements.js';
import { sheetStyle } from './style/index.js';
import { Unchecked } from './unchecked.js';

/** The fragment that the preview pane shows, and its rules. Pure; everything from the text is escaped. */
export function renderPreview(results: Results): { html: string; css: string } {
    return { html: renderToString(<Preview results={results} />), css: sheetStyle };
}

function Preview({ results }: { readonly results: Results }) {
    return (
        <ViewContext.Provider value={{ file: results.file, folded: true }}>
            <div class="padstone">
                <Patterns />
                <Head results={results} />
                <TextErrors results={results} />
                <MembersTable results={results} />
                <Hazards hazards={results.hazards} />
                <Requirements requirements={results.requirements} />
                {results.members.length > 0 && (
                    <Block id="drawings" title="Member by member">
                        {results.members.map(member => (
                            <Member member={member} results={results}>
                                {results.checks.filter(check => check.subject === member.name && check.stage === member.stage)
                                    .map(check => <Calculation check={check} ledger={results.ledger} />)}
                            </Member>
                        ))}
                    </Block>
                )}
                <Unchecked items={results.unchecked} />
                <Cautions />
            </div>
        </ViewContext.Provider>
    );
}
