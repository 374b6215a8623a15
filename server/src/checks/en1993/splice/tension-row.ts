/** What one row of bolts of an end plate can pull: T-stub, punching, beam web. EN 1993-1-8 6.2.4, Table 3.4, 6.2.6.8. */
import { boltLength, type EndPlateSplice, type TensionRow } from '../../../analysis/splice.js';
import type { Step } from '../../../results.js';
import { kN, step, type TermRow } from '../../steps.js';
import { punchingResistance, tensionResistance, type Bolt } from '../bolts/bolt.js';
import { tStub, type TStubResistance } from '../bolts/t-stub.js';
import type { SteelMember } from '../steel-member.js';

export interface EndPlateCheck {
    readonly beam: SteelMember;
    readonly splice: EndPlateSplice;
    readonly bolt: Bolt;
    readonly plateSteel: { readonly fy: number; readonly fu: number };
}

export interface RowResistance {
    readonly row: TensionRow;
    readonly tStub: TStubResistance;
    readonly punching: number;
    /** Infinity for a row outside the flange, which pulls on the flange. */
    readonly web: number;
    readonly resistance: number;
}

export function rowResistance({ beam, splice, bolt, plateSteel }: EndPlateCheck, row: TensionRow): RowResistance {
    const { gammaM0, gammaM2 } = beam.parameters;
    const stub = tStub({
        t: splice.plate.thickness, fy: plateSteel.fy, m: row.m, e: row.e, leff1: row.leff1, leff2: row.leff2,
        boltTension: tensionResistance(bolt, gammaM2), boltArea: bolt.As, boltLength: boltLength(splice)
    }, gammaM0);
    const punching = 2 * punchingResistance(bolt, { t: splice.plate.thickness, fu: plateSteel.fu }, gammaM2);
    const web = row.place === 'inner' ? row.leff1 * beam.section.tw * beam.steel.fy / gammaM0 : Infinity;
    return { row, tStub: stub, punching, web, resistance: Math.min(stub.resistance, punching, web) };
}

export function explainRow({ splice }: EndPlateCheck, { row, tStub: stub, punching, web, resistance }: RowResistance): readonly Step[] {
    const fixed = (value: number): string => value.toFixed(1);
    const shape = `row ${Math.round(row.height)} mm from the axis, lever ${fixed(row.lever)} mm, m ${fixed(row.m)} mm, l_eff ${fixed(row.leff1)} and ${fixed(row.leff2)} mm`;
    const named = [shape, ...stub.modes.map(({ mode, resistance: R }) => `mode ${mode} ${fixed(R / 1e3)} kN`), `punching ${fixed(punching / 1e3)} kN`];
    const prying = stub.prying
        ? `prying forces may develop (L_b ${fixed(boltLength(splice))} mm <= ${fixed(stub.limitLength)} mm; none from t = ${fixed(stub.thicknessWithoutPrying)} mm)`
        : `no prying forces (L_b ${fixed(boltLength(splice))} mm > ${fixed(stub.limitLength)} mm)`;
    const ofWeb: readonly TermRow[] = Number.isFinite(web) ? [['F_{t,wb,Rd}', web / 1e3, 'kN', 'beam web']] : [];
    return [step('F_{t,r,Rd}', `\\min(F_{T,Rd}, B_{p,Rd}${ofWeb.length > 0 ? ', F_{t,wb,Rd}' : ''})`, [
        ['F_{T,Rd}', stub.resistance / 1e3, 'kN', `mode ${stub.governing}`], ['B_{p,Rd}', punching / 1e3, 'kN'],
        ...ofWeb
    ], kN(resistance), { clause: 'EN 1993-1-8 Table 6.2, 6.2.6.8', note: `${named.join('; ')}; ${prying}` })];
}
