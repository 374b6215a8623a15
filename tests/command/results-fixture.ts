import type { Finding, SourceRef } from '../../language/src/model.js';
import type { CheckResult, MemberResult, Results } from '../../server/src/results.js';

/** A place in the fixture's file. */
export const at = (line: number, column = 1, file = 'loft.padstone'): SourceRef => ({ file, start: 0, end: 1, line, column });

export function check(name: string, utilisation: number, more: Partial<CheckResult> = {}): CheckResult {
    const [subject = '', kind = ''] = name.split('.');
    return {
        id: name, subject, check: kind, stage: null, option: null, utilisation, pass: utilisation <= 1,
        demand: { value: 10 * utilisation, unit: 'MPa' }, capacity: { value: 10, unit: 'MPa' },
        combination: '1.35 G + 1.5 storage', duration: 'medium-term', at: { value: 2.1, unit: 'm' },
        clause: 'EN 1995-1-1 6.1.6', steps: [], source: at(12, 8), ...more
    };
}

export function member(name: string, more: Partial<MemberResult> = {}): MemberResult {
    return {
        name, kind: 'beam', slope: 0, stage: null, shape: 'rectangle', material: 'C18', description: '190 × 240 mm C18', length: 4900, breadth: 190, depth: 240,
        segments: [], spans: [], losses: [], notches: [], supportSketches: [], loadSketches: [], hangerSketches: [], propSketches: [], crossingSketches: [],
        weight: { value: 0.9, unit: 'kN' },
        reactions: [{ support: 'north', at: { value: 0.1, unit: 'm' }, min: { value: 1, unit: 'kN' }, max: { value: 5.2, unit: 'kN' } }],
        moment: { min: { value: -0.4, unit: 'kNm' }, max: { value: 6, unit: 'kNm' } },
        shear: { min: { value: -5, unit: 'kN' }, max: { value: 5, unit: 'kN' } },
        deflection: { instant: { value: 6.2, unit: 'mm' }, final: { value: 9.9, unit: 'mm' }, total: { value: 12, unit: 'mm' }, ratio: 475.3 },
        diagrams: { N: [], V: [], M: [], instant: [], final: [] },
        worst: `${name}.bending`, source: at(12), nameSource: at(12, 8), ...more
    };
}

export function finding(severity: Finding['severity'], code: string, message: string, line: number): Finding {
    return { severity, code, message, source: at(line, 3) };
}

/** A job that passes, unless what is given says otherwise. */
export function job(more: Partial<Results> = {}): Results {
    return {
        file: 'loft.padstone',
        job: {
            title: 'Loft floor', revision: { mark: 'B' }, basis: 'EN1995', serviceClass: 2, serviceClassStated: true,
            combinations: '6.10', source: at(1)
        },
        verdict: 'pass', verdictReason: 'all 2 checks hold', understood: true, findings: [],
        checks: [check('T2.bending', 0.8201), check('T2.shear', 0.3)], members: [member('T2')], hangers: [], stages: [],
        missing: [], requirements: [], loads: [], parameters: [], hazards: [], survey: [], ledger: [], unchecked: [],
        ...more
    };
}
