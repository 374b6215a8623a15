/** From text to results: every check of the retrofit reaches the whole calculation. */
import { describe, expect, test } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import type { Results } from '../../server/src/results.js';
import { expectExplained } from './explained.js';

const head = `job "Tithe barn" {
  basis EN1995
  service class 2
}
masonry rubble { fk 3 MPa }
wall north { of rubble thick 330 mm }
wall south { of rubble thick 330 mm }
timber oldPine {
  grade C18
  moisture 17 %
}
timber larch {
  grade C24
  moisture 14 %
}
`;
const bearings = `  length 4.90 m
  on north at 0.10 m bearing 150 mm
  on south at 4.80 m bearing 150 mm
`;
const load = (member: string) => `load ceiling permanent 1 kN/m on ${member}\nload store imposed E 1 kN/m on ${member}\n`;
const leaves = `member R1 {
  of larch
  plies 3 of 63 x 200 mm
${bearings}  ply 1, 3 butt at 1.90 m
  ply 2 butt at 3.00 m
  bolts M12 grade 8.8 every 350 mm zigzag 40 mm
}
`;
const old = (loss = 'left 30 mm') => `member T2 {
  of oldPine
  section 190 x 240 mm
${bearings}  loss 1.00 m .. 2.00 m { ${loss} }
  hole 20 mm at 3.00 m
}
`;
const hanger = (rods = '2 M12 grade 4.6') => `hanger H1 carries T2 at 1.50 m from R1 at 1.50 m {
  rods ${rods}
  head plate 70 x 10 x 300 mm steel S275
  foot plate 70 x 10 x 300 mm steel S275
  washers 40 x 6 mm
}
`;
const calculate = (...parts: readonly string[]): Results => compute(evaluateText(head + parts.join(''), 'hung.padstone'));
const checksOf = ({ checks }: Results, subject: string) => checks.filter(check => check.subject === subject).map(({ check }) => check);
const use = ({ checks }: Results, id: string): number => checks.find(check => check.id === id)?.utilisation ?? NaN;
const lacking = ({ unchecked }: Results): string => unchecked.map(({ text }) => text).join('\n');

describe('an old beam hung from leaves', () => {
    const hung = calculate(old(), leaves, hanger(), load('T2'));
    test('every check of leaves, of the old timber and of the hanger is there, and works out line by line', () => {
        expect(checksOf(hung, 'R1')).toEqual(expect.arrayContaining(['bending', 'shear', 'stability', 'bearing', 'masonry', 'net section', 'plies', 'butt', 'instant', 'final']));
        expect(checksOf(hung, 'T2')).toEqual(expect.arrayContaining(['bending', 'net section']));
        expect(checksOf(hung, 'H1')).toEqual(['rods', 'plates', 'washers', 'grain', 'edge']);
        hung.checks.forEach(expectExplained);
    });
    test('a leaf is named where it governs', () => {
        expect(hung.checks.find(({ id }) => id === 'R1.bending')!.steps[0]!.note).toMatch(/^leaf [123]/);
    });
    test('a side that has rotted away loads the foot plate more', () => {
        expect(use(calculate(old('left 90 mm'), leaves, hanger(), load('T2')), 'H1.grain')).toBeGreaterThan(use(hung, 'H1.grain'));
    });
    test('stouter rods take less of their strength', () => {
        expect(use(calculate(old(), leaves, hanger('2 M20 grade 8.8'), load('T2')), 'H1.rods')).toBeLessThan(use(hung, 'H1.rods'));
    });
    test('three rods are said to be unknown, not passed', () => {
        const odd = calculate(old(), leaves, hanger('3 M12 grade 4.6'), load('T2'));
        expect(checksOf(odd, 'H1')).toEqual([]);
        expect(odd.verdict).not.toBe('pass');
    });
});

describe('a rolled beam in two lengths', () => {
    const steel = (splice = '') => calculate(`member S1 {\n  of S275\n  section HEA 140\n${bearings}${splice}}\n`, load('S1'));
    const spliced = steel('  splice at 1.90 m { end plate 150 x 12 mm steel S275 bolts 4 M16 grade 8.8 }\n');
    test('every check of steel is there, and works out line by line', () => {
        expect(checksOf(spliced, 'S1')).toEqual(['bending', 'shear', 'interaction', 'stability', 'web', 'splice', 'masonry', 'instant', 'final']);
        spliced.checks.forEach(expectExplained);
    });
    test('what the splice leaves open is said, and forbids a pass', () => {
        expect(lacking(spliced)).toContain('splice: at 1.90 m, welds between end plate and beam');
        expect(spliced.verdict).not.toBe('pass');
    });
    test('the splice turns, so the beam sags more than a whole one', () => {
        expect(use(spliced, 'S1.instant')).toBeGreaterThan(use(steel(), 'S1.instant'));
    });
    test('a partial factor of the file counts', () => {
        const values = calculate('values {\n  gamma_M0 1.1\n}\n', `member S1 {\n  of S275\n  section HEA 140\n${bearings}}\n`, load('S1'));
        expect(use(values, 'S1.bending') / use(steel(), 'S1.bending')).toBeCloseTo(1.1, 9);
        expect(values.parameters).toContainEqual({ name: 'gamma_M0', value: 1.1, origin: 'set in this file' });
    });
});

describe('a flitch beam', () => {
    const flitch = (bolts: string) => calculate(`member F1 {\n  of larch\n  flitch 2 of 75 x 200 mm with 1 steel S275 10 x 180 mm\n${bearings}  bolts M12 grade 8.8 ${bolts}\n}\n`, load('F1'));
    test('leaves, plate and bolts are there, and work out line by line', () => {
        const results = flitch('every 450 mm');
        expect(checksOf(results, 'F1')).toEqual(expect.arrayContaining(['bending', 'shear', 'plies', 'plates', 'net section']));
        results.checks.forEach(expectExplained);
    });
    // Between its end, where it has no moment, and the next bolt the plate's shear is its share of M there over the distance.
    // Under an even load on 4.70 m: M is q/2 (x - 0.10 m)(4.80 m - x), so that the bolts' distance of 0.45 m or 0.90 m cancels.
    test('the end bolt carries what the plate takes up to the next one', () => {
        const demand = (stations: string): number => flitch(`at ${stations}`).checks.find(({ id }) => id === 'F1.plies')?.demand.value ?? NaN;
        const close = demand('0.10 m, 0.55 m, 1.00 m, 1.45 m, 1.90 m, 2.45 m, 3.00 m, 3.45 m, 3.90 m, 4.35 m, 4.80 m');
        const wide = demand('0.10 m, 1.00 m, 1.90 m, 3.00 m, 3.90 m, 4.80 m');
        expect(Math.abs(close / wide - (4.80 - 0.55) / (4.80 - 1.00))).toBeLessThan(0.01);
    });
});
