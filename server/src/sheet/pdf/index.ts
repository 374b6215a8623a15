/** The sheet as a PDF, drawings as vectors. Needs the files of its font; everything else comes from the results. */
import pdfmake from 'pdfmake';
import type { Results } from '../../results.js';
import { sheetBlocks } from '../document/index.js';
import { linksIn } from '../document/links.js';
import { idsIn } from '../document/places.js';
import { printable } from '../document/plain-text.js';
import { clip } from '../drawing/labels.js';
import type { Display } from '../display.js';
import type { Meta } from '../head.js';
import { footer } from '../style/page.js';
import { colours } from './colours.js';
import { ContentWriter } from './content.js';
import { fontFamily, fontFiles } from './fonts.js';
import { nearFoot } from './together.js';

export type Paper = 'A4' | 'Letter';

/** Points. */
const pageWidth: Readonly<Record<Paper, number>> = { A4: 595.28, Letter: 612 };
const margin = { side: 43, top: 56, bottom: 52 };

export interface PdfOptions {
    readonly paper: Paper;
    /** The folder of the font's files. */
    readonly fonts: string;
}

export async function renderPdf(results: Results, meta: Meta, display: Display, { paper, fonts }: PdfOptions): Promise<Uint8Array> {
    const files = fontFiles(fonts);
    const allowed = new Set(Object.values(files).flatMap(family => Object.values(family)));
    pdfmake.setFonts(files);
    pdfmake.setUrlAccessPolicy(() => false);
    pdfmake.setLocalAccessPolicy(path => allowed.has(path));
    return await pdfmake.createPdf(documentOf(results, meta, paper, display)).getBuffer();
}

type Definition = Parameters<typeof pdfmake.createPdf>[0];

function documentOf(results: Results, meta: Meta, paper: Paper, display: Display): Definition {
    const { job, verdict } = results;
    const blocks = sheetBlocks(results, meta, display);
    const places = { linked: linksIn(blocks), defined: idsIn(blocks) };
    const title = clip(printable(job?.title || 'Untitled job'), 70);
    const revision = job?.revision ? `revision ${clip(printable(job.revision.mark), 20)}` : 'no revision';
    const small = { fontSize: 7.5, color: colours.soft };
    return {
        pageSize: paper === 'A4' ? 'A4' : 'LETTER',
        pageMargins: [margin.side, margin.top, margin.side, margin.bottom],
        info: { title: `${title}: calculation sheet`, subject: `${title}, ${revision}`, creator: 'Padstone', producer: 'Padstone' },
        language: 'en',
        displayTitle: true,
        defaultStyle: { font: fontFamily, fontSize: 9, color: colours.ink, lineHeight: 1.12 },
        content: new ContentWriter(places, pageWidth[paper] - 2 * margin.side).write(blocks),
        header: () => ({ columns: [{ text: `${title} · ${revision}`, width: '*' }, { text: verdict, width: 'auto' }], ...small, margin: [margin.side, 28, margin.side, 0] }),
        footer: (page, pages) => ({ columns: [{ text: footer(meta), width: '*' }, { text: `page ${page} of ${pages}`, width: 'auto' }], ...small, margin: [margin.side, 18, margin.side, 0] }),
        pageBreakBefore: nearFoot
    };
}
