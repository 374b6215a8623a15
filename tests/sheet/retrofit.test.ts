import { describe, expect, it } from 'vitest';
import { renderPreview, renderSheet } from '../../server/src/sheet/index.js';
import { percentUp } from '../../server/src/sheet/numbers.js';
import { partsOf, rolledPath } from '../../server/src/sheet/drawing/section-parts.js';
import { worth } from '../../server/src/sheet/built-up.js';
import type { BoltDistance } from '../../server/src/results.js';
import { meta } from './fixture.js';
import { attribute, byId, parseHtml, textOf } from './html.js';
import { bolts, builtUp, checks, retrofit, rolled } from './retrofit-fixture.js';

const page = (html: string): string => `<!DOCTYPE html><html><head><title>x</title></head><body>${html}</body></html>`;
const preview = parseHtml(page(renderPreview(retrofit).html));
const sheet = parseHtml(renderSheet(retrofit, meta));
const described = (id: string): string => textOf(byId(preview, `${id}-desc`));

it.each([['preview', preview], ['sheet', sheet]])('makes a well formed %s with every id once', (_, parsed) => {
    expect(parsed.errors).toEqual([]);
    const ids = parsed.elements.flatMap(element => attribute(element, 'id') ?? []);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    const targets = parsed.elements.flatMap(element => attribute(element, 'href') ?? []).map(href => href.slice(1));
    expect(targets.filter(target => !ids.includes(target))).toEqual([]);
    expect(textOf(parsed.elements[0]!)).not.toMatch(/NaN|Infinity|undefined|\[object/);
});

describe('stages', () => {
    it('give a member one row with its worst over all of them, and name the stage', () => {
        const rows = preview.elements.filter(element => attribute(element, 'id')?.startsWith('row-member-'));
        expect(rows.map(row => attribute(row, 'id'))).toEqual(['T2', 'R1', 'S1', 'S2', 'F1'].map(name => `row-member-${name}`));
        const row = textOf(rows[0]!);
        expect(row).toContain('bending 131 % ✗ FAILS');
        expect(row).toContain('stage found, by 1.35 G + 1.5 storage');
        expect(row).toContain('14.0 mm = L/335 (found) instant 8.4 mm');
        expect(textOf(rows[1]!)).toContain('final 92 %');
    });

    it('are drawn side by side, each with its name and peaks', () => {
        for (const [stage, moment] of [['found', '10.8'], ['propped', '3.31'], ['hung', '3.04'], ['relieved', '6.63']]) {
            expect(textOf(byId(preview, `member-T2-M-${stage}-title`))).toBe(`Bending moment M of T2, ${stage}`);
            expect(described(`member-T2-M-${stage}`)).toContain(`greatest ${moment} kN·m at 2.45 m`);
        }
    });

    it('share one scale', () => {
        const depthOf = (stage: string): number => {
            const svg = preview.elements.find(element => attribute(element, 'aria-labelledby') === `member-T2-M-${stage}-title`)!;
            const inside = elementsOf(svg);
            return Number(attribute(inside.find(element => attribute(element, 'class') === 'peak')!, 'cy'));
        };
        expect(depthOf('propped') / depthOf('found')).toBeCloseTo(1.2 / 3.9, 1);
        expect(depthOf('relieved') / depthOf('found')).toBeCloseTo(2.4 / 3.9, 1);
    });

    it('are listed as the order of work', () => {
        expect(textOf(byId(sheet, 'stages'))).toMatch(/found line 80 T2 stands as it was found propped line 81 prop T2 at 2\.15 m, lift 3 mm hung : beam and rods line 82 add R1, H1, H2 tighten H1, H2 to 2\.5 kN relieved/);
    });

    it('show a check in full where it is worst, and what it is in the others', () => {
        const blocks = sheet.elements.filter(element => element.tagName === 'details' && attribute(element, 'id')?.startsWith('check-T2.bending'));
        expect(blocks.map(block => attribute(block, 'id'))).toEqual(['check-T2.bending-found']);
        const block = textOf(blocks[0]!);
        expect(block).toContain('✗ FAILS stage found, EN 1995-1-1 6.1.6');
        for (const check of checks.filter(({ id }) => id === 'T2.bending')) {
            expect(block).toContain(`${check.stage} ${percentUp(check.utilisation)} ${check.pass ? '✓ holds' : '✗ FAILS'}`);
        }
    });

    it('tell a failure in a stage that is not the worst, too', () => {
        const failing = retrofit.checks.map(check => check.id === 'T2.bending' && check.stage === 'hung' ? { ...check, utilisation: 1.1, pass: false } : check);
        const parsed = parseHtml(renderSheet({ ...retrofit, checks: failing }, meta));
        expect(textOf(byId(parsed, 'check-T2.bending-found'))).toContain('hung 110 % ✗ FAILS');
    });

    it('lose a prop in the end, but not from the drawing', () => {
        expect(described('member-T2-elevation')).toContain('A prop, lift 3 (propped, hung) at 2150 mm.');
    });
});

describe('leaves', () => {
    it('are set out with their butts and every bolt', () => {
        const words = described('member-R1-setting-out');
        expect(words).toContain('From the left 63 mm timber, 63 mm timber, 63 mm timber, 4900 mm long.');
        expect(words).toContain('Leaf 1, 3 broken at 1900 mm. Leaf 2 broken at 3000 mm.');
        expect(words).toContain('Bolts at 84 (+50), 448 (0), 812 (−50), 1176 (0)');
        const texts = elementsOf(preview.elements.find(element => attribute(element, 'aria-labelledby') === 'member-R1-setting-out-title')!)
            .filter(({ tagName }) => tagName === 'text').map(textOf);
        for (const { x } of builtUp[0]!.bolts!) {
            expect(texts).toContain(String(Math.round(x)));
        }
        expect(texts.filter(text => text === '1900').length).toBeGreaterThan(2);
    });

    it('have a table of their bolts with the force in each plane', () => {
        const table = textOf(byId(sheet, 'member-R1-bolts'));
        expect(table).toContain('14 bolts M12 grade 8.8');
        expect(table).toContain('Bolt At Height Leaf 1 to 2 Leaf 2 to 3');
        expect(table).toContain('1 84 +50 0.71 kN, 90° 1.02 kN, 90°');
        expect(attribute(byId(preview, 'member-R1-bolts'), 'open')).toBeUndefined();
        expect(attribute(byId(sheet, 'member-R1-bolts'), 'open')).toBeDefined();
    });

    it('show where the pattern is tightest, with what is there and what is required, and in the table every bolt\'s', () => {
        const { x, height } = bolts[0]!;
        const distances: readonly BoltDistance[] = [
            { x, height, leaf: 2, rule: 'a3,t', to: { x: 0, height }, towards: 'to the end of the member', required: 84, provided: 84, ok: true },
            { x, height, leaf: 1, rule: 'a4,t', to: { x, height: 100 }, towards: 'to the top edge', required: 51.2, provided: 50.9, ok: false },
            { x, height, leaf: 1, rule: 'a1', to: { x: bolts[1]!.x, height: 0 }, towards: 'to the next', required: 60, provided: bolts[1]!.x - x, ok: true }
        ];
        const parsed = parseHtml(page(renderPreview({ ...retrofit, members: [{ ...builtUp[1]!, stage: null, distances }], stages: [] }).html));
        const words = textOf(byId(parsed, 'member-R1-pattern-desc'));
        expect(words).toContain('bolt 1 in leaf 2, to the end of the member: a3,t 84 ≥ 84; bolt 1 in leaf 1, to the top edge: a4,t 50 < 52, too little');
        expect(textOf(byId(parsed, 'member-R1-bolts'))).toMatch(/1 84 \+50 .*a1 364 ≥ 60 a3,t 84 ≥ 84 a4,t 50 < 52 ✗ too little/);
        expect(textOf(byId(parsed, 'member-R1-setting-out-desc'))).toContain('Too near an end, an edge or one another: the bolts at 84 (+50) mm.');
    });

    it('say which station the table alone has where there are too many bolts for the drawing', () => {
        const many = { ...builtUp[1]!, stage: null, bolts: Array.from({ length: 60 }, (_, i) => ({ ...builtUp[1]!.bolts![0]!, x: 80 * (i + 0.5) })) };
        const parsed = parseHtml(page(renderPreview({ ...retrofit, members: [many], stages: [] }).html));
        expect(textOf(byId(parsed, 'member-R1'))).toContain('The stations of all bolts are in the table.');
    });

    it('show what each takes', () => {
        expect(described('member-R1-leaves-2-M')).toContain('greatest 3.31 kN·m at 2.45 m');
        expect(described('member-R1-leaves-3-M')).toContain('greatest 1.38 kN·m at 2.45 m');
    });

    it('are worth no more than they are, against the rule of the trade', () => {
        expect(textOf(byId(preview, 'member-R1'))).toContain('worth 1.42 of one unbroken leaf');
        expect(worth(3, 1.427)).toContain('common practice, no source');
        expect(worth(3, 1.999)).toMatch(/worth 1\.99 of.*here they are worth less\.$/);
        expect(worth(3, 2)).toMatch(/worth 2\.00 of.*here they are\.$/);
        expect(worth(2, 1.1)).not.toContain('rule of the trade');
    });

    it('are drawn side by side in the section, at the worst check of strength', () => {
        expect(described('member-R1-section')).toBe('Seen from the start, where bending is worst: 3 leaves, 189 × 200 mm over all.');
    });
});

describe('the section', () => {
    it('is taken where the section itself is worst, not where the deflection is', () => {
        const bent = retrofit.checks.map(check => check.id === 'T2.final' ? { ...check, utilisation: 2, pass: false } : check);
        const parsed = parseHtml(page(renderPreview({ ...retrofit, checks: bent }).html));
        expect(textOf(byId(parsed, 'member-T2-section-title'))).toBe('Section of T2 at 2.21 m');
    });

    it('of a rolled beam has its true outline', () => {
        // Over the upper flange, round the root into the web, and so on: half the breadth lies on either side.
        expect(rolledPath({ ...rolled.rolled!, h: 100, b: 100, tw: 10, tf: 10, r: 5 }, 1))
            .toBe('M0 0H100V10H60A5 5 0 0 0 55 15V85A5 5 0 0 0 60 90H100V100H0V90H40A5 5 0 0 0 45 85V15A5 5 0 0 0 40 10H0Z');
        expect(rolledPath({ designation: '190 x 10', form: 'plate', h: 190, b: 10, tw: 10, tf: 0, r: 0 }, 1)).toBe('M0 0H10V190H0Z');
        expect(described('member-S1-section')).toContain('HEA 140');
    });

    it('of a flitch beam has its plates between the leaves', () => {
        const order = (leaves: number, count: number): string =>
            partsOf({ leaves, leafBreadth: 63, count, thickness: 10, depth: 180, steel: 'S275' }).map(({ steel }) => steel ? 's' : 't').join('');
        expect([order(2, 1), order(3, 2), order(2, 3), order(1, 2), order(3, 1)]).toEqual(['tst', 'tstst', 'ststs', 'sts', 'ttst']);
        expect(partsOf({ leaves: 2, leafBreadth: 63, count: 1, thickness: 10, depth: 180, steel: 'S275' }).map(({ x }) => x)).toEqual([0, 63, 73]);
        expect(described('member-F1-section')).toContain('2 leaves 63 × 200 mm with 1 plate 10 × 180 mm S275, 136 × 200 mm over all');
    });
});

describe('hangers', () => {
    it('have a row with their worst check and the range of their force', () => {
        const row = textOf(byId(preview, 'row-hanger-H1'));
        expect(row).toContain('H1 T2 from R1 grain 62 % ✓ holds');
        expect(row).toContain('2.5 to 6.2 kN');
    });

    it('have a block with each stage, and both places they come from', () => {
        const block = textOf(byId(preview, 'hanger-H2'));
        expect(block).toContain('Carries T2 at 2.80 m from R1 at 2.80 m: 2 rods M12 grade 4.6');
        expect(block).toContain('line 60 , made by hangers.padstone line 2');
        expect(block).toMatch(/hung 2\.5 kN 2\.5 kN grain 40 % ✓ holds relieved 3\.1 to 6\.2 kN grain 62 %/);
        expect(block).toContain('H2.rods 24 % ✓ holds');
    });

    it('and members that rest on it are drawn on what they meet', () => {
        expect(described('member-T2-elevation')).toContain('Hanger H1 from R1 at 1500 mm.');
        expect(described('member-T2-elevation')).toContain('J4 rests on it at 3400 mm.');
        expect(described('member-R1-elevation')).toContain('Hanger H2 carries T2 at 2800 mm.');
    });

    it('follow the cursor to where their detail is used, not to a line of another file', () => {
        expect(attribute(byId(preview, 'hanger-H1'), 'data-line')).toBe('60');
        const elsewhere = { ...retrofit, hangers: retrofit.hangers.map(hanger => ({ ...hanger, usedAt: undefined })) };
        expect(attribute(byId(parseHtml(page(renderPreview(elsewhere).html)), 'hanger-H1'), 'data-line')).toBeUndefined();
    });
});

it('clips long combinations in tables, with the whole at hand', () => {
    const clipped = sheet.elements.find(element => attribute(element, 'title')?.startsWith('1.35 G + 1.5 storage + 0.75 valley + 1.05 (bench'))!;
    expect(attribute(clipped, 'title')).toMatch(/ropes\)$/);
    expect(textOf(clipped).length).toBeLessThan(70);
    expect(textOf(byId(sheet, 'check-R1.bending-relieved'))).toContain('+ sails + ropes)');
});

function elementsOf(root: (typeof preview.elements)[number]): readonly (typeof preview.elements)[number][] {
    return root.childNodes.flatMap(child => 'tagName' in child ? [child, ...elementsOf(child)] : []);
}
