/** A sound job on a staged relief, changed a part at a time: a hazard has to come of that part alone. */
import { expect } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import type { Hazard, Results } from '../../server/src/results.js';

export const sound = {
    job: 'job "Rope walk" { service class 2 }',
    access: 'access { piece <= 6.00 m carry <= 100 kg }',
    survey: 'survey { services checked "none" asbestos checked "none" lead checked "none" damp source fixed "gutter" heritage consent granted "letter of June" }',
    materials: 'timber larch { grade C24 (graded "stamped") moisture 18 % (measured) }\nmasonry stone { fk 4 MPa (tested "two cores") }',
    walls: 'wall west { of stone thick 400 mm }\nwall east { of stone thick 400 mm }',
    supports: 'on west at 0.10 m bearing 150 mm on east at 3.90 m bearing 150 mm',
    old: 'of larch section 150 x 220 mm length 4.00 m restrained',
    extra: '',
    added: '',
    loads: 'load floor permanent 2.0 kN/m on T',
    stages: '',
    answers: ''
};

export type Change = Partial<typeof sound>;

export function textOf(change: Change = {}): string {
    const { job, access, survey, materials, walls, old, supports, extra, added, loads, stages, answers } = { ...sound, ...change };
    return [job, access, survey, materials, walls, `member T { ${old} ${supports} ${extra} }`, added, loads, stages, answers].join('\n');
}

/** A second beam beside the first, and hangers from it at the thirds. */
export const relief = 'member N { of larch section 150 x 260 mm length 4.00 m on west at 0.10 m bearing 150 mm on east at 3.90 m bearing 150 mm restrained }\n'
    + ['H1', 'H2'].map((name, i) => `hanger ${name} carries T at ${1.4 + 1.2 * i} m from N at ${1.4 + 1.2 * i} m { rods 2 M12 grade 4.6 head plate 70 x 12 x 240 mm steel S275 foot plate 70 x 12 x 240 mm steel S275 washers 40 x 6 mm }`).join('\n');

/** What may be wrong in the text of a test: that something fails, which is what it is about. */
const meant = /fails$|^mechanism$|^bolt-near-butt$/;

export function resultsOf(change: Change = {}): Results {
    const results = compute(evaluateText(textOf(change), 'rope-walk.padstone'));
    expect(results.findings.filter(({ severity, code }) => severity === 'error' && !meant.test(code))).toEqual([]);
    return results;
}

export function told({ severity, code, subject }: Hazard): string {
    return `${severity} ${code} ${subject}`;
}

export function hazardsOf(change: Change = {}): readonly string[] {
    return resultsOf(change).hazards.map(told);
}

export function hazardOf(code: string, change: Change = {}): Hazard | undefined {
    return resultsOf(change).hazards.find(hazard => hazard.code === code);
}
