/** Options side by side: each row is the calculation of the file with the option written in. */
import { describe, expect, test } from 'vitest';
import type { Model } from '../../language/src/model.js';
import { finished } from '../../server/src/finished.js';
import { optionSteps } from '../../server/src/options/index.js';
import type { OptionResult } from '../../server/src/results.js';
import { compute, modelOf } from '../certainty/jobs.js';

const joist = (statements: string): string => `member J1 {
  of C24
  ${statements}
  length 4 m
  on a at 0.10 m bearing 150 mm
  on b at 3.90 m bearing 150 mm
  restrained
}
`;
const job = (J1: string, more = ''): string => `job "Hay floor" { service class 1 }
wall a { thick 400 mm }
wall b { thick 400 mm }
${J1}load boards permanent 0.5 kN/m on J1
load people imposed A 1.5 kN/m on J1
${more}`;

/** With the joists of other texts as options. */
const withOptions = (drawn: string, ...options: readonly (readonly [name: string, text: string])[]): Model => modelOf(drawn + options.map(([name, text]) =>
    `option ${name} "by ${name}" {\n  replace J1 {${/member J1 \{([^]*?\n)\}/.exec(text)![1]!}}\n}\n`).join(''));

const drawnText = job(joist('section 75 x 200 mm'));
const [deepText, steelText] = [job(joist('section 100 x 220 mm')), job(joist('section HEA 100').replace('of C24', 'of S275'))];
const rows = (model: Model): readonly OptionResult[] => finished(optionSteps(model, compute(model), compute));

describe('rows', () => {
    const drawn = modelOf(drawnText);
    const [first, deep, steel] = rows(withOptions(drawnText, ['deep', deepText], ['steel', steelText]));

    test('as drawn comes first, without a name', () => {
        expect(first).toMatchObject({ name: null, verdict: compute(drawn).verdict });
        expect(deep).toMatchObject({ name: 'deep', title: 'by deep' });
    });

    test.each([['deep', () => deep!, deepText], ['steel', () => steel!, steelText]] as const)('%s is computed as the file would be with it written in', (_, row, text) => {
        const alone = compute(modelOf(text));
        const figures = (checks: readonly { id: string; utilisation: number }[]) => checks.map(({ id, utilisation }) => [id, utilisation]);
        expect(figures(row().checks)).toEqual(figures(alone.checks));
        expect(row().checks.length).toBeGreaterThan(2);
        expect(row().verdict).toBe(alone.verdict);
        expect(row().worst!.utilisation).toBe(Math.max(...alone.checks.map(({ utilisation }) => utilisation)));
        expect(row().deflection!.final).toEqual(alone.members[0]!.deflection.final);
        expect(row().hazards).toEqual({
            stop: alone.hazards.filter(({ severity }) => severity === 'stop').length,
            warn: alone.hazards.filter(({ severity }) => severity === 'warn').length,
            note: alone.hazards.filter(({ severity }) => severity === 'note').length
        });
    });

    test('every check bears the name of its option', () => {
        expect(new Set(first!.checks.map(one => one.option))).toEqual(new Set([null]));
        expect(new Set(steel!.checks.map(one => one.option))).toEqual(new Set(['steel']));
    });

    test('masses and lengths by hand', () => {
        // 75 × 200 and 100 × 220 mm of 420 kg/m³, HEA 100 of 16.7 kg/m, 4 m each.
        expect(first!.mass!.value).toBeCloseTo(25.2, 9);
        expect(deep!.mass!.value).toBeCloseTo(36.96, 9);
        expect(steel!.mass!.value).toBeCloseTo(66.8, 9);
        expect(steel).toMatchObject({ heaviestPiece: { mark: 'J1', mass: { unit: 'kg' } }, longestPiece: { mark: 'J1', length: { value: 4, unit: 'm' } }, parts: 1 });
    });

    test('a deeper joist is used less and sinks less', () => {
        expect(deep!.worst!.utilisation).toBeLessThan(first!.worst!.utilisation);
        expect(deep!.deflection!.ratio).toBeGreaterThan(first!.deflection!.ratio);
    });
});

describe('of what is brought in alone', () => {
    const staged = (J1: string): string => job(J1, `member old {
  of C24
  section 200 x 240 mm
  length 5 m
  on a at 0.10 m bearing 150 mm
  on b at 4.90 m bearing 150 mm
}
stage found { old }
stage built { J1 }
`);
    test('leaves are pieces, and bolts are parts; what was found is neither', () => {
        const leaves = staged(joist('plies 2 of 50 x 200 mm\n  ply 1 butt at 1.50 m\n  bolts M12 grade 8.8 at 0.30 m, 1.00 m, 2.00 m, 3.00 m, 3.70 m'));
        const [drawn, solid] = rows(withOptions(leaves, ['solid', joist('section 100 x 200 mm')]));
        expect(drawn).toMatchObject({ parts: 3 + 5, longestPiece: { mark: 'J1/2/a' }, heaviestPiece: { mark: 'J1/2/a' } });
        expect(solid).toMatchObject({ parts: 1, longestPiece: { mark: 'J1' } });
        expect(drawn!.mass!.value).toBeCloseTo(33.6, 9);
        expect(solid!.mass!.value).toBeCloseTo(33.6, 9);
    });
});

test('what is said of the member in another place follows the option: its span in a requirement', () => {
    const text = job(joist('section 75 x 200 mm'), 'require J1.final <= J1.span / 100\n');
    const shorter = joist('section 75 x 200 mm').replace('length 4 m', 'length 3 m').replace('3.90 m', '2.90 m');
    const model = withOptions(text.replaceAll(' on J1\n', ' from 0 m to 3 m on J1\n'), ['shorter', shorter]);
    const limits = [model, model.options[0]!.model].map(one => compute(one).requirements[0]!.right!.value);
    expect(limits[0]! / limits[1]!).toBeCloseTo(3.8 / 2.8, 6);
});

test('the deflection is that of the member that sinks most of its span', () => {
    const two = job(joist('section 75 x 200 mm'), `${joist('section 75 x 100 mm').replaceAll('J1', 'J2')}load shelf permanent 1 kN/m on J2\n`);
    const results = compute(modelOf(two));
    const [J1, J2] = results.members.map(({ deflection }) => deflection.ratio);
    expect(J2!).toBeLessThan(J1!);
    const [drawn, deep] = rows(withOptions(two, ['deep', deepText]));
    expect(drawn!.deflection).toMatchObject({ member: 'J2', ratio: J2 });
    expect(deep!.deflection).toMatchObject({ member: 'J2', ratio: J2 });
});

describe('edges', () => {
    test('no options, no rows', () => {
        expect(rows(modelOf(drawnText))).toEqual([]);
    });

    test('an option whose material is not known is no pass and has no mass', () => {
        const odd = joist('section 75 x 200 mm').replace('of C24', 'of mystery');
        const [, row] = rows(withOptions(`timber mystery { properties { fm_k 24 MPa } }\n${drawnText}`, ['odd', odd]));
        expect(row!.verdict).not.toBe('pass');
        expect(row).not.toHaveProperty('mass');
        expect(row).not.toHaveProperty('worst');
    });
});
