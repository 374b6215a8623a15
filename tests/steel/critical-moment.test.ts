import { describe, expect, test } from 'vitest';
import { criticalMoment, middleLoad, shapeOfDiagram, uniformLoad, uniformMoment, type MomentPoint } from '../../server/src/checks/en1993/critical-moment.js';
import { memberOf } from './answers.js';
import { referenceCase, within } from './cases.js';
import ritz from './oracle/critical-moment.json' with { type: 'json' };

const diagrams: Readonly<Record<string, (s: number) => number>> = {
    'uniform moment': () => 1,
    'uniform load': s => 4 * s * (1 - s),
    'middle load': s => 2 * Math.min(s, 1 - s),
    'third-point loads': s => Math.min(3 * s, 3 * (1 - s), 1),
    'quarter load': s => Math.min(4 * s, (1 - s) / 0.75)
};

function pointsOf(kind: string, L: number): readonly MomentPoint[] {
    const psi = Number(kind.split(' ').at(-1));
    const shape = diagrams[kind] ?? ((s: number) => 1 + (psi - 1) * s);
    return Array.from({ length: 25 }, (_, i) => ({ x: i * L / 24, M: 1e6 * shape(i / 24) }));
}

test('SB-topload: load on the top flange (C factors from memory there and here)', () => {
    const reference = referenceCase('SB-topload');
    const { section, steel } = memberOf('IPE 300');
    const shape = { C1: reference.input('C1'), C2: reference.input('C2'), source: 'case' };
    reference.expect('Mcr', criticalMoment(section, steel, { length: reference.input('L'), shape, loadHeight: reference.input('zg') }) / 1e6);
    expect(shape).toMatchObject({ C1: uniformLoad.C1, C2: uniformLoad.C2 });
});

describe('against the Ritz solution in SciPy, oracle/critical_moment.py', () => {
    test.each(ritz)('$section, $L mm, $kind, load at $zg mm', ({ section: name, L, kind, zg, Mcr }) => {
        const { section, steel } = memberOf(name);
        const critical = (shape: typeof uniformLoad) => criticalMoment(section, steel, { length: L, shape, loadHeight: zg }) / 1e6;
        const general = critical(shapeOfDiagram(pointsOf(kind, L))) / Mcr;
        expect(general).toBeLessThanOrEqual(1.0005);
        expect(general).toBeGreaterThan(kind === 'uniform moment' ? 0.9995 : 0.8);
        const listed = { 'uniform moment': uniformMoment, 'uniform load': uniformLoad, 'middle load': middleLoad }[kind];
        if (listed) {
            expect(critical(listed) / Mcr).toBeLessThanOrEqual(1.0005);
            expect(critical(listed) / Mcr).toBeGreaterThan(0.94);
        }
    });
});

test('"Steel Buildings in Europe", multi-storey part 10, Table 5.1 (seen): C1, C2', () => {
    within(uniformLoad.C1, 1.13, 0.003, 'C1');
    within(uniformLoad.C2, 0.45, 0.01, 'C2');
    within(middleLoad.C1, 1.35, 0.002, 'C1');
    expect(middleLoad.C2).toBeGreaterThanOrEqual(0.59);
});

test('a load below the shear centre is no help; nothing and one point count as uniform', () => {
    const { section, steel } = memberOf('IPE 200');
    const at = (loadHeight: number) => criticalMoment(section, steel, { length: 4000, shape: uniformLoad, loadHeight });
    expect(at(-100)).toBe(at(0));
    expect(at(100)).toBeLessThan(at(0));
    expect([shapeOfDiagram([]), shapeOfDiagram([{ x: 0, M: 1 }]), shapeOfDiagram([{ x: 0, M: 0 }, { x: 10, M: 0 }])]).toEqual([uniformMoment, uniformMoment, uniformMoment]);
});
