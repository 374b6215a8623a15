/** A changed input against the text with another number in it, evaluated anew. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Model } from '../../language/src/model.js';
import { inputOf, withInput } from '../../server/src/certainty/index.js';
import { granary, modelOf } from './jobs.js';

const job = `job "Net store" { service class 2 }
masonry brick { unit clay 15 MPa mortar 2.5 MPa }
wall a { of brick thick 330 mm }
wall b { of brick thick 330 mm }
timber pine {
  grade C18 (judged)
  moisture 17 % (measured)
  properties { fm_k 21 MPa }
}
member B1 {
  of pine
  section 190 x 240 mm (measured)
  length 4.90 m
  on a at 0.10 m bearing 150 mm
  on b at 4.80 m bearing 120 mm
  loss 1.60 m .. 2.70 m { top 35 mm  left 20 mm } (probed)
  notch bottom 0 m .. 0.20 m deep 30 mm
  restrained every 600 mm
}
member P1 { of C24 section 100 x 120 mm length 2.50 m stands fixed at 0 m }
member B2 { of C24 section 60 x 180 mm length 3.00 m on a at 0.10 m bearing 100 mm on P1 at 2.90 m bearing 80 mm }
member R1 {
  of C24
  plies 3 of 63 x 200 mm
  length 4.90 m
  on a at 0.10 m bearing 150 mm
  on b at 4.80 m bearing 150 mm
  ply 1, 3 butt at 1.90 m
  bolts M12 grade 8.8 every 350 mm zigzag 50 mm
}
load ceiling permanent 0.50 kN/m2 strip 2.20 m on B1
load chest imposed E 2.5 kN/m from 0.40 m to 2.00 m on B1
load tank permanent 480 kg at 1.00 m on B1
load snowpack snow 1.10 kN/m on R1
`;

/** Sources stand elsewhere, and the words of a section in the ledger are text. */
function comparable(thing: unknown): unknown {
    if (Array.isArray(thing)) return thing.map(comparable);
    if (typeof thing !== 'object' || thing === null) return typeof thing === 'number' ? Number(thing.toPrecision(10)) : thing;
    return Object.fromEntries(Object.entries(thing).filter(([key]) => !/source/i.test(key)).map(([key, value]) => [key, comparable(value)]));
}

function expectSame(changed: Model, rewritten: Model): void {
    const isText = ({ path }: { readonly path: string }) => path.endsWith('.section');
    const plain = (model: Model) => comparable({ ...model, inputs: model.inputs.filter((input) => !isText(input)) });
    expect(plain(changed)).toEqual(plain(rewritten));
}

const changes: readonly (readonly [path: string, value: number | string, from: string, to: string])[] = [
    ['pine.grade', 'C16', 'grade C18', 'grade C16'],
    ['P1.grade', 'C30', 'P1 { of C24', 'P1 { of C30'],
    ['pine.moisture', 0.12, '17 %', '12 %'],
    ['pine.fm_k', 18.5, 'fm_k 21 MPa', 'fm_k 18.5 MPa'],
    ['brick.unit', 20, 'clay 15 MPa', 'clay 20 MPa'],
    ['brick.mortar', 4, 'mortar 2.5 MPa', 'mortar 4 MPa'],
    ['a.thick', 250, 'wall a { of brick thick 330 mm', 'wall a { of brick thick 250 mm'],
    ['B1.section.depth', 220, '190 x 240 mm', '190 x 220 mm'],
    ['B1.section.breadth', 150, '190 x 240 mm', '150 x 240 mm'],
    ['B1.loss.top', 52, 'top 35 mm', 'top 52 mm'],
    ['B1.loss.from', 1400, 'loss 1.60 m', 'loss 1.40 m'],
    ['B1.notch', 44, 'deep 30 mm', 'deep 44 mm'],
    ['B1.b', 4600, 'b at 4.80 m bearing 120', 'b at 4.60 m bearing 120'],
    ['B1.b.bearing', 80, 'bearing 120 mm', 'bearing 80 mm'],
    ['B1.restrained', 900, 'every 600 mm', 'every 900 mm'],
    ['B1.length', 5100, '240 mm (measured)\n  length 4.90 m', '240 mm (measured)\n  length 5.10 m'],
    ['P1.length', 2700, 'length 2.50 m', 'length 2.70 m'],
    ['ceiling', 0.0008, '0.50 kN/m2', '0.80 kN/m2'],
    ['ceiling.strip', 1900, 'strip 2.20 m', 'strip 1.90 m'],
    ['chest', 3.1, '2.5 kN/m', '3.1 kN/m'],
    ['chest.from', 600, 'from 0.40 m', 'from 0.60 m'],
    ['chest.to', 1500, 'to 2.00 m', 'to 1.50 m'],
    ['tank', 500 * 9.80665, '480 kg', '500 kg'],
    ['tank.at', 1300, 'at 1.00 m on B1', 'at 1.30 m on B1'],
    ['R1.plies.depth', 225, '63 x 200 mm', '63 x 225 mm'],
    ['R1.ply1.butt', 2100, 'butt at 1.90 m', 'butt at 2.10 m'],
    ['R1.bolts.grade', '4.6', 'grade 8.8', 'grade 4.6'],
    ['R1.bolts.every', 300, 'every 350 mm', 'every 300 mm'],
    ['R1.bolts.zigzag', 30, 'zigzag 50 mm', 'zigzag 30 mm'],
    ['R1.length', 5200, '63 x 200 mm\n  length 4.90 m', '63 x 200 mm\n  length 5.20 m']
];

describe('a model with one input changed', () => {
    const model = modelOf(job);

    it.each(changes)('%s to %s', (path, value, from, to) => {
        const rewritten = job.replace(from, to);
        expect(rewritten).not.toBe(job);
        expectSame(withInput(model, path, value), modelOf(rewritten));
    });

    it('moves the first and last bolt with their distance to the ends', () => {
        const text = job.replace('every 350 mm', 'every 350 mm ends 100 mm');
        expectSame(withInput(modelOf(text), 'R1.bolts.ends', 150), modelOf(text.replace('ends 100', 'ends 150')));
    });

    it('varies a property that comes from the class as an own value', () => {
        const text = job.replace('properties { fm_k 21 MPa }', '');
        const { given } = inputOf(modelOf(text), 'pine.fm_k')!;
        expect([given.value, given.evidence.word]).toEqual([18, 'judged']);   // EN 338:2016: C18
        expect(withInput(modelOf(text), 'pine.fm_k', 15).materials.find(({ name }) => name === 'pine'))
            .toMatchObject({ grade: { value: 'C18' }, properties: { fm_k: { value: 15 } } });
    });

    it('leaves what it does not touch as the very same data, and the first model as it was', () => {
        const before = JSON.stringify(model);
        const changed = withInput(model, 'B1.loss.top', 50);
        expect(JSON.stringify(model)).toBe(before);
        expect(changed.members.map((member, i) => member === model.members[i])).toEqual([false, true, true, true]);
        expect(changed.loads.every((load, i) => load === model.loads[i])).toBe(true);
        expect(changed.materials.every((material, i) => material === model.materials[i])).toBe(true);
    });

    it('knows no input of another name, and no words', () => {
        expect(inputOf(model, 'B1.loss.bottom')).toBeUndefined();
        expect(inputOf(model, 'B1.section')).toBeUndefined();
        expect(withInput(model, 'B9.loss.top', 3)).toBe(model);
    });

    it('gives back the model where the given value is put in again', () => {
        const whole = modelOf(granary());
        for (const { path } of whole.inputs) {
            const input = inputOf(whole, path);
            if (input) expect(input.withValue(input.given.value)).toEqual(whole);
        }
    });

    it('reads the same as the text for any depth of a loss and any load', () => {
        fc.assert(fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 1, max: 500 }), (depth, load) => {
            const changed = withInput(withInput(model, 'B1.loss.left', depth), 'ceiling', load * 1e-5);
            expectSame(changed, modelOf(job.replace('left 20 mm', `left ${depth} mm`).replace('0.50 kN/m2', `${load / 100} kN/m2`)));
        }), { numRuns: 30 });
    });
});
