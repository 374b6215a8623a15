import { describe, expect, test } from 'vitest';
import { flatSection, rolledNames, rolledSection, sectionFromGeometry } from '../../server/src/catalog/rolled-sections.js';
import { ownSteel, steelStrength } from '../../server/src/catalog/steel.js';
import { tables } from '../oracle/cases.js';
import { sectionOf } from './answers.js';
import { referenceCase, within } from './cases.js';

type Row = Readonly<Record<string, number | string>>;
const rows: Readonly<Record<string, Row>> = Object.assign({}, ...['IPE', 'HEA', 'HEB', 'UPN'].map(kind => tables[`sections_${kind}`]!.rows));

describe('section tables', () => {
    test.each(['IPE200', 'HE200A', 'HE200B'])('SEC-%s: TU Delft "Structural Design Essentials", section tables', id => {
        const reference = referenceCase(`SEC-${id}`);
        const [h, b, tw, tf, r] = ['h', 'b', 'tw', 'tf', 'r'].map(reference.input) as [number, number, number, number, number];
        const computed = sectionFromGeometry(id, { shape: 'I', h, b, tw, tf, r }, 'case')!;
        for (const name of ['A', 'Iy', 'Iz', 'Wely'] as const) {
            reference.expect(name, computed[name]);
        }
    });

    test('every row of the shared tables is in the catalogue', () => {
        expect([...rolledNames].sort()).toEqual(Object.keys(rows).sort());
    });

    test.each(Object.entries(rows))('%s: tabulated area, moments and torsion from its outline', (name, row) => {
        const section = sectionOf(name);
        const channel = section.shape === 'channel';
        const wanted: readonly [string, number, number, number][] = [
            // Tables print three figures: half a unit of the third is 0.5 %.
            ['A', section.A / 1e2, Number(row['A_cm2']), 0.005],
            ['Iy', section.Iy / 1e4, Number(row['Iy_cm4']), 0.003],
            ['Wely', section.Wely / 1e3, Number(row['Wely_cm3']), 0.004],
            ['Iz', section.Iz / 1e4, Number(row['Iz_cm4']), channel ? 0.006 : 0.003],
            ['Wply', section.Wply / 1e3, Number(row['Wply_cm3']), channel ? 0.004 : 0.0005],
            ['mass', section.mass * 1e3, Number(row['G_kg_m']), 1e-9],
            ['mass from the area', section.A * 7.85e-3, Number(row['G_kg_m']), 0.005],
            // IPE 80's Iw is printed as 0.12: two figures.
            ['It', section.It / 1e4, Number(row['It_cm4']), 0.005],
            ['Iw', section.Iw / 1e9, Number(row['Iw_1e3cm6']), name === 'IPE 80' ? 0.04 : 0.005]
        ];
        for (const [what, computed, tabulated, tolerance] of wanted) {
            within(computed, tabulated, tolerance, `${name} ${what}`);
        }
    });

    test.each(Object.keys(rows).filter(name => name.startsWith('UPN')))('%s: tabulated It and Iw lie near the thin-walled closed forms', name => {
        const { h, b, tw, tf, It, Iw } = sectionOf(name);
        const [d, c] = [h - tf, b - tw / 2];
        // St Venant Σ b t³/3 without the junctions, which add to it; Vlasov's warping constant of a channel.
        const thin = (2 * c * tf ** 3 + d * tw ** 3) / 3;
        const warping = tf * c ** 3 * d ** 2 / 12 * (3 * c * tf + 2 * d * tw) / (6 * c * tf + d * tw);
        expect(It / thin).toBeGreaterThan(1);
        expect(It / thin).toBeLessThan(1.3);
        // The taper thins the tips, which warp most.
        expect(Iw / warping).toBeLessThan(1);
        expect(Iw / warping).toBeGreaterThan(0.8);
    });

    test('MH-IPE200, MH-HEA200: mass of a length', () => {
        for (const [id, name] of [['MH-IPE200', 'IPE 200'], ['MH-HEA200', 'HEA 200']] as const) {
            const reference = referenceCase(id);
            reference.expect('mass', sectionOf(name).mass * reference.input('L') * 1000);
        }
    });

    test.each([['ipe200', 'IPE 200'], ['HE 140 A', 'HEA 140'], ['HE140A', 'HEA 140'], ['heb  200', 'HEB 200'], [' UPN160 ', 'UPN 160'], ['190 x 10', '190 x 10'], ['190×10 mm', '190 x 10']])('%s is %s', (written, name) => {
        expect(rolledSection(written)?.name).toBe(name);
    });

    test.each(['IPE 205', 'HEM 200', '10 x 190', '0 x 0', 'oak', '', '-100 x 10'])('%j is no section', written => {
        expect(rolledSection(written)).toBeUndefined();
    });

    test('a flat standing on its edge: closed forms', () => {
        const flat = flatSection(200, 10)!;
        expect([flat.A, flat.Iy, flat.Wely, flat.Wply, flat.Iw]).toEqual([2000, 10 * 200 ** 3 / 12, 10 * 200 ** 2 / 6, 10 * 200 ** 2 / 4, 0]);
        // Timoshenko and Goodier, Theory of Elasticity: h/t = 10 has the coefficient 0.312; a square 0.1406; from memory.
        within(flatSection(100, 10)!.It / (100 * 10 ** 3), 0.312, 0.002, 'It 10:1');
        within(flatSection(10, 10)!.It / 10 ** 4, 0.1406, 0.01, 'It 1:1');
    });

    test('measures that make no section', () => {
        const sound = { shape: 'I', h: 200, b: 100, tw: 6, tf: 9, r: 10 } as const;
        expect(sectionFromGeometry('x', sound, '')).toBeDefined();
        for (const bad of [{ h: 0 }, { h: 18 }, { b: 5 }, { tw: NaN }, { tf: -1 }, { r: -1 }, { r: 60 }, { b: Infinity }]) {
            expect(sectionFromGeometry('x', { ...sound, ...bad }, ''), JSON.stringify(bad)).toBeUndefined();
        }
    });
});

describe('steel', () => {
    test('EN 1993-1-1 Table 3.1', () => {
        expect([steelStrength('S235', 16)?.fy, steelStrength('S235', 41)?.fy, steelStrength('S275', 40)?.fu, steelStrength('S355', 80)?.fy]).toEqual([235, 215, 430, 335]);
        expect(steelStrength('S235', 80.1) ?? steelStrength('S235', 0) ?? steelStrength('S235', NaN) ?? steelStrength('S999', 10) ?? steelStrength('toString', 10)).toBeUndefined();
    });

    test('old iron by own values is not ductile, and has no fu unless said', () => {
        expect(ownSteel('wrought iron', { fy: 210, E: 190_000 })).toMatchObject({ ductile: false, fu: undefined, G: 190_000 / 2.6 });
        expect(ownSteel('x', { fy: 0, E: 190_000 }) ?? ownSteel('x', { fy: 200, E: NaN }) ?? ownSteel('x', { fy: 200, fu: 100, E: 1 })).toBeUndefined();
    });
});
