/** Members of leaves, flitches, rolled sections: stations and heights worked by hand. */
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import type { FlitchSection, PliesSection, Severity } from '../../language/src/index.js';
import { applyFix, soundJob } from './check.js';

const file = (statements: string, material = 'C24') => `${soundJob}member K {
  of ${material}
  ${statements}
  on north at 0.1 m bearing 100 mm
  on south at 3.9 m bearing 100 mm
}
`;
const evaluated = (statements: string, severities: readonly Severity[] = [], material?: string) => {
    const { model, findings } = evaluateText(file(statements, material), 'test.padstone');
    expect(findings.map(finding => finding.severity), JSON.stringify(findings)).toEqual(severities);
    return model.members.find(member => member.name === 'K')!;
};
const inLeaves = (bolts: string, length = '4 m') => evaluated(`plies 3 of 63 x 200 mm\n  length ${length}\n  ${bolts}`).section as PliesSection;
const places = (bolts: string, length?: string) => inLeaves(bolts, length).bolts.map(row => row.places.map(({ x, height }) => [x, height]));

describe('where bolts are', () => {
    it('every so far: as few as keep the pitch, evenly, from 7d off the ends', () => {
        // 7 · 12 = 84 mm; (4000 − 2 · 84) / 500 = 7.664, so 8 spaces of 479 mm.
        const [row] = places('bolts M12 grade 8.8 every 500 mm');
        expect(row).toEqual([84, 563, 1042, 1521, 2000, 2479, 2958, 3437, 3916].map(x => [x, 0]));
    });

    it('from 80 mm off the ends, where 7d is less', () => {
        // 7 · 8 = 56 mm; (4000 − 2 · 80) / 800 = 4.8, so 5 spaces of 768 mm.
        expect(places('bolts M8 grade 4.6 every 0.8 m')[0]!.map(([x]) => x)).toEqual([80, 848, 1616, 2384, 3152, 3920]);
    });

    it('from the ends that are said, with no bolt more where the pitch fits to the millimetre', () => {
        // (4000 − 2 · 100) / 380 = 10 exactly.
        expect(places('bolts M16 every 380 mm ends 100 mm')[0]!.map(([x]) => x)).toEqual(Array.from({ length: 11 }, (_, i) => 100 + 380 * i));
        expect(places('bolts M16 every 0.1 m ends 100 mm')[0]).toHaveLength(39);
    });

    it('one bolt where the two end distances meet', () => expect(places('bolts M12 every 300 mm ends 2 m')).toEqual([[[2000, 0]]]));

    it('zigzag: above the middle, in it, below it, in it, from the start', () => {
        // (4000 − 2 · 200) / 900 = 4 spaces.
        expect(places('bolts M12 every 900 mm ends 200 mm zigzag 50 mm')).toEqual([[[200, 50], [1100, 0], [2000, -50], [2900, 0], [3800, 50]]]);
    });

    it('at stations, in their order along the member, zigzag too', () =>
        expect(places('bolts M12 at 1.40 m, 0.20 m, 0.80 m zigzag 40 mm')).toEqual([[[200, 40], [800, 0], [1400, -40]]]));

    it('in more rows than one', () => expect(places('bolts M12 at 0.30 m, 0.60 m\n  bolts M16 at 0.45 m')).toEqual([[[300, 0], [600, 0]], [[450, 0]]]));

    it('with their size, and the weakest grade where none is said', () => {
        const [row] = inLeaves('bolts M12 at 1 m').bolts;
        expect(row).toMatchObject({ size: 'M12', diameter: 12, grade: { value: '4.6', evidence: { word: 'assumed', stated: false }, path: 'K.bolts.grade' } });
        expect(inLeaves('bolts M12 grade 10.9 (documented "stamped") at 1 m').bolts[0]!.grade).toMatchObject({ value: '10.9', evidence: { word: 'documented' } });
    });
});

describe('leaves', () => {
    it('have their size and butts', () => {
        const section = evaluated('plies 3 of 63 x 200 mm (measured)\n  length 4 m\n  ply 1, 3 butt at 1.5 m\n  ply 2 butt at 2.5 m (documented)\n  ply 2 butt at 1 m\n  bolts M12 every 400 mm').section;
        expect(section).toMatchObject({ shape: 'plies', count: 3, breadth: { value: 63, evidence: { word: 'measured' } }, depth: { value: 200 } });
        expect((section as PliesSection).butts.map(({ leaf, at }) => [leaf, at.value, at.path])).toEqual([
            [1, 1500, 'K.ply1.butt'], [3, 1500, 'K.ply1.butt'], [2, 2500, 'K.ply2.butt'], [2, 1000, 'K.ply2.butt2']
        ]);
    });

    it('bear and are loaded one by one where that is said', () => {
        const { model, findings } = evaluateText(`${file('plies 3 of 63 x 200 mm\n  length 4 m\n  bolts M12 every 400 mm\n  on north at 2 m leaf 1, 3\n  on south at 2 m leaf 2')}load x snow 1 kN at 1 m on K leaf 2\n`, 'test.padstone');
        expect(findings).toEqual([]);
        expect(model.members.at(-1)!.supports.map(support => support.leaves)).toEqual([[1, 3], [2], undefined, undefined]);
        expect(model.loads.map(load => load.leaf)).toEqual([undefined, undefined, 2]);
    });

    it('with steel between', () => {
        const section = evaluated('flitch 2 of 75 x 225 mm with 1 steel S275 12 x 200 mm\n  length 4 m\n  bolts M12 at 0.20 m, 0.80 m').section as FlitchSection;
        expect(section).toMatchObject({
            shape: 'flitch', leaves: 2, breadth: { value: 75 }, depth: { value: 225 }, plates: 1, thickness: { value: 12 }, plateDepth: { value: 200 }, steel: { value: 'S275' }
        });
        expect(section.bolts[0]!.places.map(({ x }) => x)).toEqual([200, 800]);
    });
});

describe('steel', () => {
    const steel = (section: string, more = '', material = 'S275') => evaluated(`${section}\n  length 4 m\n  ${more}`, [], material);
    it('rolled, and flats', () => {
        expect(steel('section HEA 140 (documented)').section).toMatchObject({ shape: 'rolled', designation: 'HEA 140', given: { value: 'HEA 140', evidence: { word: 'documented' }, path: 'K.section' } });
        expect(steel('section 12 x 200 mm').section).toMatchObject({ shape: 'rolled', designation: '12 x 200' });
    });

    it('of a class or of a declared steel', () => {
        expect(steel('section HEA 140').material).toBe('S275');
        const { model, findings } = evaluateText(`${file('section HEA 140\n  length 4 m', 'old')}steel old { properties { fy 180 MPa (tested) } }\n`, 'test.padstone');
        expect([findings, model.members.at(-1)!.material]).toEqual([[], 'old']);
    });

    it('spliced by an end plate as long as the section is deep, of the member\'s own steel', () => {
        const [splice] = steel('section HEA 140', 'splice at 1.90 m { end plate 150 x 12 mm  bolts 4 M16 grade 8.8 }').splices;
        expect(splice).toMatchObject({
            at: { value: 1900 }, plates: [{ where: 'end', width: { value: 150 }, thickness: { value: 12 }, steel: 'S275' }],
            bolts: [{ count: 4, size: 'M16', diameter: 16, grade: { value: '8.8' } }]
        });
        expect(splice!.plates[0]!.length).toBeUndefined();
    });

    it('spliced by covers of web and flange', () => {
        const [splice] = steel('section HEA 140', 'splice at 2 m { web plate 80 x 8 x 300 mm  flange plate 140 x 10 x 400 mm steel S355  bolts 4 M12 grade 8.8  bolts 8 M16 grade 8.8 }').splices;
        expect(splice!.plates.map(({ where, length, steel: of }) => [where, length?.value, of])).toEqual([['web', 300, 'S275'], ['flange', 400, 'S355']]);
        expect(splice!.bolts.map(({ count, size }) => [count, size])).toEqual([[4, 'M12'], [8, 'M16']]);
    });
});

describe('what is lost of more than one piece', () => {
    it.each([['plies 2 of 63 x 200 mm\n  bolts M12 every 400 mm', 'C24'], ['section HEA 140', 'S275']])('is named as not computed: %s', (section, material) => {
        const { model, findings } = evaluateText(file(`${section}\n  length 4 m\n  loss 1 m .. 2 m { top 5 mm }\n  notch bottom 0 m .. 0.2 m deep 20 mm`, material), 'test.padstone');
        expect(findings).toEqual([]);
        expect(model.notComputed.map(({ what }) => what)).toEqual(expect.arrayContaining(['K.loss', 'K.notch']));
    });
});

describe('holes', () => {
    it('have their diameter, station and height, in the axis unless said', () => {
        const { holes } = evaluated('section 75 x 200 mm\n  length 4 m\n  hole 20 mm at 1.20 m height -30 mm\n  hole 14 mm at 2 m (measured)');
        expect(holes.map(({ diameter, at, height }) => [diameter.value, at.value, height.value])).toEqual([[20, 1200, -30], [14, 2000, 0]]);
    });
});

describe('a bolt near a butt', () => {
    const text = file('plies 3 of 63 x 200 mm\n  length 4 m\n  ply 1 butt at 1.5 m\n  bolts M12 grade 8.8 every 500 mm zigzag 40 mm');
    // Bolts as above at 1042 and 1521: the second is 21 mm behind the butt, and 1500 + 84 = 1584.
    it('is told at its place, with a fix that moves it', () => {
        const { findings, model } = evaluateText(text, 'test.padstone');
        expect(findings).toMatchObject([{ severity: 'warning', code: 'bolt-near-butt', fix: { text: 'bolts M12 grade 8.8 zigzag 40 mm at 0.084 m, 0.563 m, 1.042 m, 1.584 m, 2 m, 2.479 m, 2.958 m, 3.437 m, 3.916 m' } }]);
        expect(findings[0]!.message).toBe('the bolt at 1.521 m is 21 mm from where leaf 1 is broken: less than 84 mm (7d and 80 mm, EN 1995-1-1 Table 8.4)');
        expect((model.members.at(-1)!.section as PliesSection).bolts[0]!.places[3]!.x).toBe(1521);
    });

    it('is clear of it after the fix, and the others stay', () => {
        const mended = evaluateText(applyFix(text, evaluateText(text, 'test.padstone').findings[0]!), 'test.padstone');
        expect(mended.findings).toEqual([]);
        expect((mended.model.members.at(-1)!.section as PliesSection).bolts[0]!.places.map(({ x, height }) => [x, height])).toEqual(
            [[84, 40], [563, 0], [1042, -40], [1584, 0], [2000, 40], [2479, 0], [2958, -40], [3437, 0], [3916, 40]]);
    });
});
