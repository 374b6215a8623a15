/** Residual sections and weakened beams: cases DR-* of reference-cases.json, closed forms as stored there. */
import { describe, expect, test } from 'vitest';
import { input, referenceCase } from './cases.js';
import { elastic, single } from './fixture.js';
import { close, unfactored, valueAt } from './figures.js';

describe('residual rectangle', () => {
    for (const id of ['DR-one', 'DR-both', 'DR-all']) {
        test(id, () => {
            const of = referenceCase(id);
            const [top, bottom, side] = [input(of, 'loss_top'), input(of, 'loss_bottom'), input(of, 'loss_each_side')];
            const { segments } = single(
                { length: 3000, b: input(of, 'b'), h: input(of, 'h'), supports: [{ at: 0 }, { at: 3000 }], losses: [{ from: 1000, to: 2000, top, bottom, left: side, right: side }] },
                [], elastic(9000));
            expect(segments.map(({ from, to, weakened }) => [from, to, weakened])).toEqual([[0, 1000, false], [1000, 2000, true], [2000, 3000, false]]);
            const { b, h, shiftUp, shiftRight } = segments[1]!;
            close(b * h, of.results['A_res']);
            close(b * h * h / 6, of.results['W_res']);
            close(b * h ** 3 / 12, of.results['I_res']);
            expect([shiftUp, shiftRight]).toEqual([(bottom - top) / 2, 0]);
        });
    }
});

test('DR-step beam with 40 % of its stiffness over 600 mm at each end', () => {
    const of = referenceCase('DR-step');
    const [L, EI, c, ratio] = [input(of, 'L'), input(of, 'EI'), input(of, 'c'), input(of, 'ratio')];
    const [b, h] = [100, 200];
    const E = EI / (b * h ** 3 / 12);
    // Breadth taken off the sides scales I without moving the axis.
    const side = (b * (1 - ratio)) / 2;
    const beam = (losses: { from: number; to: number; left: number; right: number }[]) =>
        single({ length: L, b, h, supports: [{ at: 0 }, { at: L }], losses }, [{ q: input(of, 'w') }], elastic(E, { G: 1e12 }), unfactored);
    const weak = beam([{ from: 0, to: c, left: side, right: side }, { from: L - c, to: L, left: side, right: side }]);
    close(valueAt(weak.diagrams.instant, L / 2), of.results['delta_mid']);
    close(valueAt(beam([]).diagrams.instant, L / 2), of.results['delta_intact']);
});
