/** A prop pushes and never pulls: what a snug one carries is nothing, so that a hanger tightened beside it lifts the beam off. */
import { expect, test } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';

const job = (stages: string): string => `job "Net store" { service class 1 }
timber pine { grade C24 (graded) moisture 12 % (measured) }
masonry stone { fk 6 MPa (tested) }
wall pier { of stone thick 400 mm }
member A { of pine section 150 x 200 mm length 4.00 m on pier at 0.10 m bearing 200 mm on pier at 3.90 m bearing 200 mm restrained }
member B { of pine section 150 x 200 mm length 4.00 m on pier at 0.10 m bearing 200 mm on pier at 3.90 m bearing 200 mm restrained }
hanger H carries A at 2.00 m from B at 2.00 m {
  rods 2 M12 grade 4.6
  head plate 70 x 20 x 300 mm steel S275
  foot plate 70 x 20 x 300 mm steel S275
  washers 40 x 6 mm
}
load boards permanent 0.5 kN/m on A
${stages}`;

const lifted = (stages: string) => {
    const { unchecked, verdict, findings } = compute(evaluateText(job(stages), 'store.padstone'));
    expect(findings.filter(({ severity, code }) => severity === 'error' && code !== 'check-fails')).toEqual([]);
    return { verdict, said: unchecked.filter(({ text }) => text.includes('lifts off its prop')) };
};

test('a beam that is lifted off its prop is said, and forbids a pass', () => {
    const { verdict, said } = lifted('stage found { A }\nstage propped { prop A at 2.00 m }\nstage hung { B, H tighten H to 2 kN }');
    expect(said.map(({ text, blocking }) => [text, blocking])).toEqual([
        ['A: in stage hung it lifts off its prop at 2.00 m in some combination, which the analysis does not follow', true]
    ]);
    expect(verdict).not.toBe('pass');
});

test('nothing is said of a prop that pushes', () => {
    expect(lifted('stage found { A }\nstage propped { prop A at 2.00 m lift 2 mm }\nstage hung { B, H }').said).toEqual([]);
});
