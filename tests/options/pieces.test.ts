/** Pieces, their masses and how they pass the access, against figures worked by hand. */
import { describe, expect, test } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { accessChecks, accessProblems } from '../../server/src/pieces/access.js';
import { withWater } from '../../server/src/pieces/moisture.js';
import { partsOf } from '../../server/src/pieces/parts.js';
import { peopleToCarry } from '../../server/src/pieces/people.js';
import { piecesOf } from '../../server/src/pieces/pieces.js';
import { modelOf, sailLoft } from '../certainty/jobs.js';
import { expectExplained } from '../checks/explained.js';
import { input, referenceCase } from '../oracle/cases.js';
import { close } from '../oracle/figures.js';

const job = (body: string): string => `job "Barn" { service class 1 }
wall a { thick 400 mm }
wall b { thick 400 mm }
${body}
`;
const member = (name: string, statements: string, metres = 4): string => `member ${name} {
  length ${metres} m
  on a at 0.1 m bearing 150 mm
  on b at ${(metres - 0.1).toFixed(2)} m bearing 150 mm
  ${statements}
}
`;

describe('pieces', () => {
    test('MH-timber: a joist of C24 at its mean density', () => {
        const of = referenceCase('MH-timber');
        const [piece, ...others] = piecesOf(modelOf(job(member('J1', `of C24\n  section ${input(of, 'b')} x ${input(of, 'h')} mm`, input(of, 'L') / 1000))));
        expect(others).toEqual([]);
        expect(piece).toMatchObject({ mark: 'J1', length: input(of, 'L'), description: '75 × 225 mm C24' });
        close(piece!.mass!, of.results['mass']);
    });

    test.each([['MH-IPE200', 'IPE 200', 4], ['MH-HEA200', 'HEA 200', 3]])('%s: a rolled beam and how many carry it', (id, section, metres) => {
        const of = referenceCase(id);
        const [piece] = piecesOf(modelOf(job(member('S1', `of S235\n  section ${section}`, metres))));
        close(piece!.mass!, of.results['mass']);
        expect(peopleToCarry(piece!.mass!)).toBe(of.results['persons_simple']!.value);
    });

    test('leaves between butts: R1 of the sail loft is two pieces a leaf, each of 1.90 m and 3.00 m', () => {
        const pieces = piecesOf(sailLoft()).filter(piece => piece.member === 'R1');
        expect(pieces.map(({ mark, from, to }) => [mark, from, to])).toEqual([
            ['R1/1/a', 0, 1900], ['R1/1/b', 1900, 4900],
            ['R1/2/a', 0, 3000], ['R1/2/b', 3000, 4900],
            ['R1/3/a', 0, 1900], ['R1/3/b', 1900, 4900]
        ]);
        // 0.063 × 0.200 × 3.00 m³ of 420 kg/m³ at 12 % moisture, with 15 %.
        expect(pieces[1]!.mass).toBeCloseTo(15.876 * 1.15 / 1.12, 9);
    });

    test('a spliced steel beam is lettered by its splices', () => {
        const pieces = piecesOf(modelOf(job(member('S1', 'of S275\n  section HEA 140\n  splice at 1.5 m { end plate 150 x 12 mm  bolts 4 M16 grade 8.8 }'))));
        expect(pieces.map(({ mark, length }) => [mark, length])).toEqual([['S1/a', 1500], ['S1/b', 2500]]);
        // HEA 140 is 24.7 kg/m.
        expect(pieces[1]!.mass).toBeCloseTo(61.75, 9);
    });

    test('a flitch beam is its leaves and its plates', () => {
        const pieces = piecesOf(modelOf(job(member('F1', 'of C24\n  flitch 2 of 63 x 200 mm with 1 steel S275 10 x 190 mm\n  bolts M12 grade 8.8 every 400 mm'))));
        expect(pieces.map(({ mark }) => mark)).toEqual(['F1/1/a', 'F1/2/a', 'F1/plate 1']);
        // 10 × 190 × 4000 mm of 7850 kg/m³.
        expect(pieces[2]!.mass).toBeCloseTo(59.66, 9);
    });

    test('wet timber weighs its water: 112 % of the dry mass at the class’s 12 %, 117 % at 17 %', () => {
        expect(withWater(420, 0.12)).toBe(420);
        expect(withWater(420, 0.17)).toBeCloseTo(438.75, 9);
        expect(withWater(420, 0.30)).toBeCloseTo(487.5, 9);
        expect(withWater(420, 0.08)).toBe(420);
        const [piece] = piecesOf(modelOf(job(`timber green { grade C24 moisture 30 % (measured) }\n${member('J1', 'of green\n  section 75 x 225 mm')}`)));
        expect(piece!.mass).toBeCloseTo(28.35 * 1.30 / 1.12, 9);
    });

    test('a piece whose material is not known has a length and no mass', () => {
        const text = job(`timber odd { properties { fm_k 24 MPa } }\naccess { carry <= 50 kg }\n${member('J1', 'of odd\n  section 75 x 225 mm')}`);
        const model = modelOf(text);
        expect(piecesOf(model)).toMatchObject([{ mark: 'J1', length: 4000 }]);
        expect(piecesOf(model)[0]).not.toHaveProperty('mass');
        expect(accessChecks(model)).toMatchObject({ checks: [], lacking: [{ subject: 'J1' }] });
    });
});

describe('access', () => {
    const staged = (access: string): string => job(`access { ${access} }
stage found { T1 }
stage built { R1 }
${member('T1', 'of C24\n  section 200 x 240 mm')}${member('R1', 'of C24\n  section 100 x 200 mm', 3)}`);

    test('what is brought in is held to it, what was found is not', () => {
        const { checks, lacking } = accessChecks(modelOf(staged('piece <= 3.20 m  carry <= 50 kg')));
        expect(lacking).toEqual([]);
        expect(checks.map(({ id, stage, pass }) => [id, stage, pass])).toEqual([['R1.piece', 'built', true], ['R1.carry', 'built', true]]);
        // 3.00 of 3.20 m; 0.1 × 0.2 × 3 m³ of 420 kg/m³ is 25.2 of 50 kg.
        expect(checks[0]!.utilisation).toBeCloseTo(0.9375, 12);
        expect(checks[1]!.utilisation).toBeCloseTo(0.504, 12);
        checks.forEach(expectExplained);
        expect(accessProblems(modelOf(staged('piece <= 3.20 m  carry <= 50 kg')))).toEqual([]);
    });

    test('what is too long or too heavy fails', () => {
        const model = modelOf(staged('piece <= 2.90 m  carry <= 25 kg'));
        expect(accessChecks(model).checks.map(({ id, pass, combination }) => [id, pass, combination])).toEqual([['R1.piece', false, 'piece R1'], ['R1.carry', false, 'piece R1']]);
        expect(accessProblems(model)).toMatchObject([
            { limit: 'piece', value: 3000, most: 2900, piece: { mark: 'R1' } }, { limit: 'carry', most: 25, piece: { mark: 'R1' } }
        ]);
    });

    test('exactly as long as what passes holds', () => {
        expect(accessChecks(modelOf(staged('piece <= 3.00 m'))).checks).toMatchObject([{ utilisation: 1, pass: true }]);
    });

    const two = member('T1', 'of C24\n  section 200 x 240 mm') + member('R1', 'of C24\n  section 100 x 200 mm', 3);

    test('without stages what is too long may stand there already: it is named as not checked', () => {
        const { checks, lacking } = accessChecks(modelOf(job(`access { piece <= 3.20 m }\n${two}`)));
        expect(checks.map(({ id, pass }) => [id, pass])).toEqual([['R1.piece', true]]);
        expect(lacking).toMatchObject([{ subject: 'T1', text: 'piece: piece T1 has 4 m against 3.2 m, and no stage says whether it is brought in or stands there already' }]);
    });

    test('an answer settles that, and is printed', () => {
        const walls = 'masonry brick { fk 3 MPa (tested) }\n';
        const text = walls + job(`access { piece <= 3.20 m }\n${two}`).replaceAll('{ thick 400 mm }', '{ of brick thick 400 mm }');
        const open = compute(evaluateText(text, 'job.padstone'));
        expect([open.verdict, open.unchecked[0]]).toMatchObject(['incomplete', { blocking: true, members: ['T1'] }]);
        const answered = compute(evaluateText(`${text}\nanswer piece-too-long on T1 "it was there" (measured)`, 'job.padstone'));
        expect(answered.unchecked.filter(({ blocking }) => blocking)).toEqual([]);
        expect(answered.unchecked.map(one => one.text)).toContainEqual(expect.stringMatching(/^T1: piece: .*; answered: it was there$/));
        expect(answered.verdict).toBe('pass');
    });

    test('without limits nothing is checked', () => {
        expect(accessChecks(modelOf(job(two)))).toEqual({ checks: [], lacking: [] });
    });

    test('the longest and the heaviest piece may be two', () => {
        const model = modelOf(job(`access { piece <= 5 m  carry <= 60 kg }\n${member('S1', 'of C24\n  flitch 2 of 63 x 200 mm with 1 steel S275 10 x 190 mm\n  bolts M12 grade 8.8 every 400 mm')}`));
        expect(accessChecks(model).checks.map(({ combination }) => combination)).toEqual(['piece S1/1/a', 'piece S1/plate 1']);
    });
});

test('parts of the sail loft: counted by hand', () => {
    const { members, hangers } = sailLoft();
    const R1 = members.filter(({ name }) => name === 'R1');
    const [section] = R1.map(one => one.section);
    const bolts = section?.shape === 'plies' ? section.bolts[0]!.places.length : NaN;
    // 4900 mm less two ends of 84 mm (7d) at no more than 350 mm: 14 gaps, 15 bolts.
    expect(bolts).toBe(15);
    // Two hangers of two rods, a head and a foot plate.
    expect(partsOf(6, R1, hangers)).toEqual({ pieces: 6, bolts: 15, plates: 4, rods: 4 });
    const spliced = modelOf(job(member('S1', 'of S275\n  section HEA 140\n  splice at 1.5 m { end plate 150 x 12 mm  bolts 4 M16 grade 8.8 }')));
    expect(partsOf(2, spliced.members, [])).toEqual({ pieces: 2, bolts: 4, plates: 2, rods: 0 });
    // Covers: 4 bolts on each side of each flange and 3 on each side of the web, which has a pair of covers.
    const covered = modelOf(job(member('S1', `of S275
  section HEA 140
  splice at 1.5 m {
    flange plate 140 x 10 x 400 mm
    web plate 80 x 8 x 300 mm
    bolts 4 M16 grade 8.8
    bolts 3 M16 grade 8.8
  }`)));
    expect(partsOf(2, covered.members, [])).toEqual({ pieces: 2, bolts: 22, plates: 4, rods: 0 });
});
