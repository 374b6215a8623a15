import { describe, expect, it } from 'vitest';
import type { Results } from '../../server/src/results.js';
import { renderPreview, renderSheet } from '../../server/src/sheet/index.js';
import { percentUp } from '../../server/src/sheet/numbers.js';
import { beam, bending, meta, peaks, results } from './fixture.js';
import { hostile } from './hostile.js';
import { attribute, byId, parseHtml, textOf } from './html.js';

const page = (html: string): string => `<!DOCTYPE html><html lang="en"><head><title>t</title></head><body>${html}</body></html>`;
const preview = (given: Results = results) => parseHtml(page(renderPreview(given).html));
const sheet = (given: Results = results) => parseHtml(renderSheet(given, meta));
const both = { preview, sheet };

describe.each(Object.entries(both))('the %s', (_, render) => {
    it('is well formed, with every id once and every reference answered', () => {
        const parsed = render();
        expect(parsed.errors).toEqual([]);
        const ids = parsed.elements.flatMap(element => attribute(element, 'id') ?? []);
        expect(new Set(ids).size).toBe(ids.length);
        const wanted = parsed.elements.flatMap(element => [
            attribute(element, 'href')?.replace(/^#/, ''), attribute(element, 'aria-labelledby'), attribute(element, 'aria-describedby')
        ].filter(id => id !== undefined));
        expect(wanted.length).toBeGreaterThan(10);
        expect(wanted.filter(id => !ids.includes(id))).toEqual([]);
    });

    it('runs nothing, loads nothing, and needs no inline style', () => {
        const { elements } = render();
        expect(elements.filter(({ tagName }) => ['script', 'link', 'iframe', 'img', 'object', 'form', 'base'].includes(tagName))).toEqual([]);
        const attributes = elements.flatMap(element => element.attrs);
        expect(attributes.filter(({ name }) => name.startsWith('on') || name === 'style' || name === 'src')).toEqual([]);
        expect(attributes.filter(({ name, value }) => /https?:|\/\//.test(value) && name !== 'xmlns')).toEqual([]);
        expect(renderPreview(results).css + renderSheet(results, meta)).not.toMatch(/url\((?!#)|@import|javascript:/);
    });

    it('says the verdict in words and the hazard that stops it', () => {
        const head = textOf(byId(render(), 'head'));
        expect(head).toContain('Granary, floor under the hoist');
        expect(head).toContain('Revision B');
        expect(head).toContain('INCOMPLETE: this is not a pass');
        expect(head).toContain('Stopped by: G4 lifts off west by 0.4 kN');
        expect(textOf(byId(render({ ...results, verdict: 'fail', hazards: [] }), 'head'))).toContain('FAILS');
        expect(textOf(byId(render({ ...results, verdict: 'pass', verdictReason: 'all hold', hazards: [] }), 'head'))).toContain('PASSES');
    });

    it('gives each member its worst check, deflection and what governs', () => {
        const row = textOf(byId(render(), 'row-member-G4'));
        expect(row).toContain(`bending ${percentUp(bending.utilisation)}`);
        expect(row).toContain('holds');
        expect(row).toContain(`${peaks.final.toFixed(1)} mm = L/${Math.floor(3800 / peaks.final)}`);
        expect(row).toContain('by 1.35 G + 1.5 storage, medium-term, at 2.00 m');
    });

    it('lists a member without results with the reason', () => {
        expect(textOf(byId(render(), 'member-R1'))).toBe('R1 ? not computed : plies 3 of 63 x 200 mm is not computed by this version line 30');
    });

    it('calls a member incomplete where something of it was left out, and failing before that', () => {
        const leftOut = { ...results, unchecked: [{ text: 'G4.hole', blocking: true, members: ['G4'] }] };
        expect(textOf(byId(render(leftOut), 'row-member-G4'))).toMatch(/\? incomplete/);
        expect(textOf(byId(render(leftOut), 'row-member-G4'))).not.toMatch(/holds/);
        const failing = { ...leftOut, checks: [{ ...bending, utilisation: 1.004, pass: false }] };
        expect(textOf(byId(render(failing), 'row-member-G4'))).toMatch(/101 % ✗ FAILS/);
    });

    it('never shows a failing check as holding, nor as no more than 1', () => {
        const close = { ...bending, utilisation: 1.0004, pass: false, demand: { value: 11.0811, unit: 'MPa' } };
        const steps = [...bending.steps.slice(0, -1), { ...bending.steps.at(-1)!, result: { value: 1.0004, unit: '' } }];
        const block = textOf(byId(render({ ...results, checks: [{ ...close, steps }] }), 'check-G4.bending'));
        expect(block).toContain('101 % ✗ FAILS');
        expect(block).toContain('11.081 MPa against 11.077 MPa');
        expect(block).toMatch(/= ?1\.001/);
        expect(block).not.toContain('holds');
    });

    it('prints no NaN or Infinity, whatever comes', () => {
        const broken = {
            ...beam, deflection: { instant: { value: NaN, unit: 'mm' }, final: { value: Infinity, unit: 'mm' }, total: { value: NaN, unit: 'mm' }, ratio: NaN },
            loadSketches: [{ name: 'huge', action: 'snow', line: { perLength: 1e308, from: 0, to: 4900 }, source: beam.source }, { name: 'endless', action: 'snow', point: { force: Infinity, at: 100 }, source: beam.source }],
            diagrams: { ...beam.diagrams, M: [{ x: 0, min: NaN, max: 1 }], V: [{ x: 0, min: -1e308, max: 1e308 }], final: [] }
        };
        const parsed = render({ ...results, members: [broken], checks: [{ ...bending, utilisation: NaN, pass: false, demand: { value: NaN, unit: 'MPa' } }] });
        const everything = parsed.elements.map(element => element.attrs.map(({ value }) => value).join(' ')).join(' ') + textOf(parsed.elements[0]!);
        expect(everything).not.toMatch(/NaN|Infinity|undefined/);
        expect(textOf(byId(parsed, 'member-G4'))).toContain('Bending moment M ultimate, drawn on the side in tension: not computed');
    });

    it('shows what is wrong with the text where it was not understood', () => {
        const error = { severity: 'error' as const, code: 'unit-missing', message: 'a unit is missing', source: bending.source };
        const parsed = render({ ...results, understood: false, findings: [error] });
        expect(textOf(byId(parsed, 'errors'))).toContain('A unit is missing. line 20');
        expect(textOf(byId(parsed, 'head'))).toContain('The text has errors.');
    });

    it('always says what was not checked', () => {
        expect(textOf(byId(render(), 'unchecked'))).toContain('Because of these there is no verdict of pass: R1: built-up members. line 30');
        expect(textOf(byId(render({ ...results, unchecked: [] }), 'unchecked'))).toContain('no more than the checks that it lists');
        expect(textOf(byId(render(), 'cautions'))).toMatch(/licensed structural engineer decide.*Prop before cutting.*asbestos/);
    });

    it('holds with nothing in it', () => {
        const empty = render({
            ...results, job: undefined, checks: [], members: [], missing: [], requirements: [], loads: [], parameters: [], hazards: [], survey: [], ledger: [], unchecked: [],
            verdictReason: 'there is no member to check'
        });
        expect(empty.errors).toEqual([]);
        expect(textOf(byId(empty, 'head'))).toContain('There is no member to check.');
        expect(textOf(byId(empty, 'members'))).toContain('There is no member in this file.');
        expect(textOf(byId(empty, 'hazards'))).toContain('no survey of the building');
    });
});

describe('hostile names', () => {
    it.each(Object.entries(both))('are only text in the %s', (_, render) => {
        const parsed = render(hostile);
        expect(parsed.errors).toEqual([]);
        expect(parsed.elements.filter(({ tagName }) => tagName === 'script' || tagName === 'img')).toEqual([]);
        expect(parsed.elements.flatMap(element => element.attrs).filter(attr => attr.name.startsWith('on'))).toEqual([]);
        expect(textOf(parsed.elements[0]!)).toContain('<img src=x onerror=alert(1)>');
    });

    it('are clipped in drawings and cannot turn the numbers beside them', () => {
        const labels = preview(hostile).elements.filter(({ tagName }) => tagName === 'text').map(textOf);
        expect(labels.some(label => label.includes('2.0 kN'))).toBe(true);
        expect(labels.filter(label => label.length > 60 || label.includes('\u202e'))).toEqual([]);
        expect(labels.filter(label => /[\u0600-\u06ff]/.test(label) && !/\u2068.*\u2069/.test(label))).toEqual([]);
    });
});

describe('text alternatives', () => {
    const described = (id: string): string => {
        const parsed = preview();
        const drawing = byId(parsed, `${id}-title`);
        const svg = parsed.elements.find(element => attribute(element, 'aria-labelledby') === `${id}-title`)!;
        expect([svg.tagName, attribute(svg, 'role'), attribute(svg, 'aria-describedby')]).toEqual(['svg', 'img', `${id}-desc`]);
        expect(textOf(drawing)).toContain('G4');
        return textOf(byId(parsed, `${id}-desc`));
    };

    it('say the peaks that the diagrams mark', () => {
        expect(described('member-G4-M')).toBe(`greatest ${peaks.M.toFixed(2)} kN·m at 1.85 m; least −${Math.abs(peaks.Mleast).toFixed(2)} kN·m at 3.90 m.`);
        expect(described('member-G4-V')).toContain(`greatest ${peaks.V.toFixed(1)} kN at 3.90 m`);
        expect(described('member-G4-V')).toContain(`least −${Math.abs(peaks.Vleast).toFixed(1)} kN at 3.90 m`);
        expect(described('member-G4-w')).toContain(`final greatest ${peaks.final.toFixed(1)} mm at 1.95 m`);
        expect(described('member-G4-w')).toContain(`instant greatest ${peaks.instant.toFixed(1)} mm at 1.95 m`);
    });

    it('say all that the elevation and the section show', () => {
        const elevation = described('member-G4-elevation');
        for (const said of ['4900 mm long', 'west (wall) at 100 mm, bearing 150 mm', 'east (wall, tied) at 3900 mm', 'Loss from 1600 to 2700 mm: top 35, left 20 mm', 'storage (imposed E) 1.65 kN/m from 0 to 4900 mm', 'hoist (imposed E) 2.0 kN at 4700 mm']) {
            expect(elevation).toContain(said);
        }
        expect(described('member-G4-section')).toBe('Seen from the start, where bending is worst: 170 × 205 mm left of 190 × 240 mm.');
    });

    it('are there for every drawing', () => {
        const drawings = preview().elements.filter(({ tagName, attrs }) => tagName === 'svg' && !attrs.some(({ name }) => name === 'aria-hidden'));
        expect(drawings.length).toBe(5);
        expect(drawings.filter(svg => attribute(svg, 'role') !== 'img')).toEqual([]);
    });
});

describe('the preview alone', () => {
    it('marks its blocks with their lines, and starts with calculations folded', () => {
        const parsed = preview();
        const lineOf = (id: string) => attribute(byId(parsed, id), 'data-line');
        expect([lineOf('head'), lineOf('row-member-G4'), lineOf('member-G4'), lineOf('check-G4.bending'), lineOf('member-R1')]).toEqual(['1', '20', '20', '20', '30']);
        expect(attribute(byId(parsed, 'check-G4.bending'), 'open')).toBeUndefined();
        expect(attribute(byId(sheet(), 'check-G4.bending'), 'open')).toBeDefined();
    });

    it('keeps its ids when something else changes', () => {
        const ids = (given: Results) => preview(given).elements.flatMap(element => attribute(element, 'id') ?? []);
        const moved: Results = { ...results, members: [{ ...beam, nameSource: { ...beam.nameSource, line: 99 } }], checks: results.checks.map(check => ({ ...check, utilisation: 0.99 })) };
        expect(ids(moved)).toEqual(ids(results));
    });

    it('is styled as stale by a class around it', () => {
        expect(renderPreview(results).css).toMatch(/\.stale \.padstone \{[^}]*opacity/);
    });
});

describe('the sheet alone', () => {
    it('carries job, revision, verdict and page number on every page', () => {
        const style = textOfStyle(renderSheet(results, meta));
        expect(style).toMatch(/@top-left \{ content: "Granary\\2c  floor under the hoist \\b7  revision B"/);
        expect(style).toMatch(/@top-right \{ content: "incomplete"/);
        expect(style).toMatch(/@bottom-right \{ content: "page " counter\(page\) " of " counter\(pages\)/);
        expect(style).not.toMatch(/size:\s*(A4|letter)/i);
    });

    it('has the date, the hash of the source and a space to sign', () => {
        const parsed = sheet();
        expect(textOf(byId(parsed, 'head'))).toContain('2 March 2026, Padstone 0.1.0');
        expect(textOf(byId(parsed, 'head'))).toContain('content hash 3f9a1c77d2e04b55');
        expect(textOf(byId(parsed, 'signature'))).toMatch(/Name.*Qualification and licence.*Date/);
    });

    it('writes each formula as mathematics, then with numbers and units, then its result', () => {
        const block = byId(sheet(), 'check-G4.bending');
        const formulas = parseHtml(page(renderPreview(results).html)).elements.filter(({ tagName }) => tagName === 'math');
        expect(formulas.length).toBeGreaterThan(12);
        const text = textOf(block).replace(/\s/g, '');
        expect(text).toContain('170mm⋅(205mm)26=1190cm³');
        expect(text).toContain('0.8⋅18MPa1.3=11.1MPa');
    });

    it('leads from a number back to its input', () => {
        const parsed = sheet();
        const links = parsed.elements.filter(element => attribute(element, 'href') === '#input-oldPine.grade');
        expect(links.map(textOf)).toEqual(['18 MPa', 'oldPine.grade']);
        expect(textOf(byId(parsed, 'input-oldPine.grade'))).toBe('oldPine.grade C18 line 12 judged');
    });

    it('puts what is only assumed or judged first, and says how loads were made up', () => {
        const parsed = sheet();
        const ledger = textOf(byId(parsed, 'ledger'));
        expect(ledger).toContain('2 of 4 inputs are only assumed or judged');
        expect(ledger.indexOf('storage 0.75 kN/m²')).toBeLessThan(ledger.indexOf('oldPine.grade C18'));
        expect(ledger.indexOf('oldPine.grade C18')).toBeLessThan(ledger.indexOf('G4.loss.top 35 mm'));
        const loads = textOf(byId(parsed, 'loads'));
        expect(loads).toContain('0.75 kN/m² × 2.2 m = 1.65 kN/m');
        expect(loads).toContain('long-term 0.95 · 0.9 · 0.8');
        expect(loads).toMatch(/1\.35 G \+ 1\.5 storage medium-term G4\.bending/);
        expect(textOf(byId(parsed, 'requirements'))).toContain(`${percentUp(bending.utilisation)} against 90 % ✓ holds`);
    });
});

function textOfStyle(html: string): string {
    return /<style>([^]*?)<\/style>/.exec(html)![1]!;
}
