/**
 * Continuous beams of equal spans: cases CB-* of reference-cases.json and the table continuous_beam_coefficients.
 * Sources as stored there: TU Delft open textbook "Structural Design Essentials" (seen in source),
 * T. G. Hicks, Civil Engineering Formulas, Table 2.1 (seen in source), standard beam theory for the deflections.
 */
import { describe, expect, test } from 'vitest';
import type { MemberActions } from '../../server/src/analysis/actions.js';
import { input, referenceCase, tables, type Figure } from './cases.js';
import { close, greatest, least, slender, valueAt } from './figures.js';

const L = 1000;
const q = 2;
const F = 500;

function beam(spans: number, loaded: readonly number[], kind: 'point' | 'line'): MemberActions {
    const supports = Array.from({ length: spans + 1 }, (_, i) => ({ at: i * L }));
    const loads = loaded.map((span) => (kind === 'point'
        ? { F, at: (span - 0.5) * L }
        : { q, from: (span - 1) * L, to: span * L }));
    return slender(1e12, spans * L, supports, loads);
}

/** The figures of one beam by the names the sources give them. */
function figure(of: MemberActions, name: string, kind: 'point' | 'line'): { readonly value: number; readonly scale: number } {
    const { M } = of.diagrams;
    const moment = kind === 'point' ? F * L : q * L * L;
    const number = Number(name.match(/\d+/)?.[0]);
    const inSpan = [(number - 1) * L, number * L] as const;
    if (/^R\d/.test(name)) return { value: of.supports[number - 1]!.design.max, scale: kind === 'point' ? F : q * L };
    if (/^M_sup\d/.test(name)) return { value: valueAt(M, (number - 1) * L), scale: moment };
    if (/^x\d$/.test(name)) return { value: greatest(M, ...inSpan).x - inSpan[0], scale: L };
    if (/^M\d+max$|^Mspan\d$|^Mmax\d$/.test(name)) return { value: greatest(M, ...inSpan).max, scale: moment };
    if (/^M(mid)?\d$/.test(name)) return { value: kind === 'point' ? valueAt(M, (number - 0.5) * L) : greatest(M, ...inSpan).max, scale: moment };
    throw new Error(`${name} is not understood`);
}

const published = ['CB-Pc', 'CB-Pe', 'CB-Pf', 'CB-Pg', 'CB-Qh', 'CB-Qj', 'CB-Qk', 'CB-Ql', 'CB-Qm', 'CB-Qn', 'CB-Q4'];

describe('moments and reactions', () => {
    for (const of of published.map(referenceCase)) {
        test(`${of.id}: ${of.topic}`, () => {
            const kind = of.id.startsWith('CB-P') ? 'point' : 'line';
            const spans = input(of, 'n_spans');
            const loaded = (of.inputs['loaded_spans']?.value as number[] | undefined) ?? Array.from({ length: spans }, (_, i) => i + 1);
            const actions = beam(spans, loaded, kind);
            for (const [name, wanted] of Object.entries(of.results)) {
                const { value, scale } = figure(actions, name, kind);
                close(value, wanted, scale);
            }
        });
    }
});

describe('deflections', () => {
    for (const of of ['CB-D2', 'CB-D3', 'CB-D4'].map(referenceCase)) {
        test(`${of.id}: ${of.topic}`, () => {
            const spans = input(of, 'n_spans');
            const { instant } = beam(spans, Array.from({ length: spans }, (_, i) => i + 1), 'line');
            close(instant[0]!.value, of.results['delta_max_coef'], (q * L ** 4) / 1e12);
            close(instant[0]!.at, of.results['x_max'], L);
        });
    }
});

describe('table continuous_beam_coefficients', () => {
    type Row = Readonly<Record<string, number | readonly number[]>>;
    const rows = Object.entries(tables['continuous_beam_coefficients']!.rows as Readonly<Record<string, Row>>);
    /** `f_3span_P_1_2`: spans, kind, and the loaded ones; none named or `all` or `both_mid` means all. */
    const parse = (name: string): { spans: number; kind: 'point' | 'line'; loaded: number[] } => {
        const spans = Number(/(\d)span/.exec(name)![1]);
        const loaded = [...(/_[Pq]((_(span)?\d)+)$/.exec(name)?.[1] ?? '').matchAll(/\d/g)].map(([digit]) => Number(digit));
        return { spans, kind: name.includes('_P') ? 'point' : 'line', loaded: loaded.length > 0 ? loaded : Array.from({ length: spans }, (_, i) => i + 1) };
    };
    test('is all there', () => expect(rows).toHaveLength(15));
    for (const [name, row] of rows) {
        test(name, () => {
            const { spans, kind, loaded } = parse(name);
            const actions = beam(spans, loaded, kind);
            // Four printed decimals: half a unit of the last one, and of the last of four digits.
            const printed = (value: number): Figure => ({ value, unit: '', tolerance_rel: 0.0006 + 0.00006 / Math.abs(value) });
            for (const [key, value] of Object.entries(row)) {
                if (typeof value !== 'number') {
                    value.forEach((R, i) => close(actions.supports[i]!.design.max, printed(R), kind === 'point' ? F : q * L));
                } else if (/^M[23]$/.test(key)) {
                    close(valueAt(actions.diagrams.M, (Number(key[1]) - 1) * L), printed(value), kind === 'point' ? F * L : q * L * L);
                } else {
                    const own = figure(actions, key, kind);
                    close(own.value, key.startsWith('x') ? { value, tolerance_rel: 0.002 } : printed(value), own.scale);
                }
            }
            expect(least(actions.diagrams.M).min).toBeLessThan(0);
        });
    }
});
