import { describe, expect, it } from 'vitest';
import type { Model } from '../../language/src/model.js';
import { breakEven, guessedPaths, ledger, sensitivity, worstFunction } from '../../server/src/certainty/index.js';
import { beam, compute, granary, mayDeflect, modelOf } from './jobs.js';

function ledgerOf(model: Model, paths: readonly string[] = guessedPaths(model)): ReturnType<typeof ledger> {
    const worst = worstFunction(model, compute);
    return ledger(model, paths.flatMap((path) => breakEven(model, path, { worst }) ?? []));
}

describe('the ledger', () => {
    const text = `${beam({ load: 'permanent 7.6 kN/m', statements: 'loss 1.90 m .. 2.10 m { top 10 mm } (judged)' })}\ntimber spare { grade C30 }`;

    it('has every input of consequence once, with how it is known', () => {
        const model = modelOf(granary());
        const entries = ledgerOf(model);
        expect(entries.map(({ input }) => input.path).sort()).toEqual(model.inputs.map(({ path }) => path).sort());
        expect(entries.find(({ input }) => input.path === 'oldOak.grade')?.input.evidence).toEqual({ word: 'judged', note: 'straight grain, knots under 30 mm, two checks', stated: true });
    });

    it('has guesses first, the nearest to its break-even before all', () => {
        const entries = ledgerOf(modelOf(text));
        const guesses = entries.filter(({ guess }) => guess);
        expect(entries.slice(0, guesses.length)).toEqual(guesses);
        // 7.6 kN/m needs f_m,k = 16.7 MPa: the grade fails at C16, a third less; the load at 44 % more; the loss at several times itself.
        expect(guesses.map(({ input }) => input.path)).toEqual(['pine.grade', 'store', 'B1.loss.top', 'spare.grade']);
        const margins = guesses.flatMap(({ margin }) => margin ?? []);
        expect(margins).toEqual([...margins].sort((a, b) => a - b));
        expect(guesses.at(-1)).toMatchObject({ input: { path: 'spare.grade' } });
        expect(guesses.at(-1)).not.toHaveProperty('margin');
    });

    it('tells of a section by the side that is nearer to failing', () => {
        const model = modelOf(beam().replace('300 mm (measured)', '300 mm (judged)'));
        const entry = ledgerOf(model).find(({ input }) => input.path === 'B1.section')!;
        expect(entry.breakEvens.map(({ path }) => path)).toEqual(['B1.section.depth', 'B1.section.breadth']);
        expect(entry.margin).toBeCloseTo(Math.min(...entry.breakEvens.map(({ given, limit }) => Math.abs(Number(limit) - Number(given)) / Number(given))), 12);
    });
});

describe('the sensitivity of a guessed grade', () => {
    const worstOf = (text: string, among: (check: string) => boolean = () => true) =>
        Math.max(...compute(modelOf(text)).checks.filter(({ check }) => among(check)).map(({ utilisation }) => utilisation));
    const isDeflection = (check: string) => ['instant', 'final', 'vibration'].includes(check);

    it('is that of the text with the class below, and with E_0,05 of EN 338 for the deflections', () => {
        const text = beam({ load: 'permanent 10 kN/m', values: mayDeflect });
        const model = modelOf(text);
        const found = sensitivity(model, model.members[0]!, compute)!;
        expect(found.given.utilisation).toBeCloseTo(worstOf(text), 12);
        expect(found.lowerClass).toMatchObject({ with: 'C22', changesVerdict: false });
        expect(found.lowerClass!.worst.utilisation).toBeCloseTo(worstOf(text.replace('C24', 'C22')), 12);
        // EN 338:2016: C24 has E_0,05 = 7.4 GPa (7.4 in the table, to one decimal).
        const soft = text.replace('grade C24 (judged)', 'grade C24 (judged) properties { E0_mean 7.4 GPa }');
        expect(found.lowModulus!.worst.utilisation).toBeCloseTo(worstOf(soft, isDeflection), 2);
        expect(found.lowModulus!.worst.utilisation).toBeGreaterThan(found.givenDeflection.utilisation);
    });

    it('says where the verdict turns', () => {
        const model = modelOf(beam({ load: 'permanent 10.5 kN/m', values: mayDeflect }));   // needs f_m,k = 23.0 MPa
        expect(sensitivity(model, model.members[0]!, compute)!.lowerClass).toMatchObject({ with: 'C22', changesVerdict: true, worst: { check: 'B1.bending' } });
    });

    it('takes a class that a member names directly as assumed', () => {
        const text = beam().replace('of pine', 'of C24');
        const model = modelOf(text);
        const found = sensitivity(model, model.members[0]!, compute)!;
        expect(found).toMatchObject({ path: 'B1.grade', grade: 'C24', lowerClass: { with: 'C22' } });
        expect(found.lowModulus!.worst.utilisation).toBeGreaterThan(found.givenDeflection.utilisation);
    });

    it('has nothing to say of a grade that is known', () => {
        const model = modelOf(beam().replace('(judged)', '(graded)'));
        expect(sensitivity(model, model.members[0]!, compute)).toBeUndefined();
    });
});
