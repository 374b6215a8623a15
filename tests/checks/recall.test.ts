/** What is remembered of one calculation must not show in another: each alone, and after others, says the same. */
import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';

const beam = (over: { readonly grade?: string; readonly load?: string; readonly values?: string; readonly support?: string; readonly before?: string } = {}): string => `${over.before ?? ''}
job "Net store" { service class 1 }
${over.values ?? ''}
masonry brick { fk 4 MPa }
wall north { of brick thick 330 mm }
wall south { of brick thick 330 mm }
timber old { grade ${over.grade ?? 'C24'} }
member B1 { of old plies 2 of 63 x 200 mm length 3.00 m on north at 0.10 m bearing 150 mm ${over.support ?? 'on south at 2.90 m bearing 150 mm'} bolts M12 grade 8.8 every 400 mm restrained }
load floor imposed A ${over.load ?? '1.5'} kN/m on B1
load boards permanent 0.3 kN/m on B1`;

/** All that a reader sees, as it is written. */
const said = (text: string): string => JSON.stringify(compute(evaluateText(text, 'net-store.padstone')));

/** As the first of a process would be: what was before is pushed out. */
function alone(text: string): string {
    for (let i = 0; i < 8; i++) said(beam({ load: `9.${i}`, grade: 'C50' }));
    return said(text);
}

describe.each([
    ['another load', { load: '2.5' }],
    ['another grade of the same stiffness as far as it bends', { grade: 'C27' }],
    ['another partial factor', { values: 'values { gamma_Q 1.7 }' }],
    ['the same, lower down in the file', { before: '// moved\n\n' }],
    ['one that cannot stand', { support: '' }]
])('%s', (_, over) => {
    const text = beam(over);
    it('is what it is alone', () => {
        const wanted = alone(text);
        said(beam());
        expect(said(text)).toBe(wanted);
        said(beam());
        expect(said(text)).toBe(wanted);
        expect(said(text)).toBe(wanted);
    });
});

it('differs where it should', () => {
    expect(new Set([beam(), beam({ load: '2.5' }), beam({ grade: 'C27' }), beam({ values: 'values { gamma_Q 1.7 }' }), beam({ support: '' })].map(said)).size).toBe(5);
});
