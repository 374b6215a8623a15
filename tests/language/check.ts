/** Helpers of the language's tests: a small sound job, and texts with a marked range. */
import { readFileSync } from 'node:fs';
import type { Finding } from '../../language/src/index.js';
import { evaluateText } from '../../language/src/index.js';

export const sailLoft = readFileSync(new URL('fixtures/sail-loft.padstone', import.meta.url), 'utf8');
export const granary = readFileSync(new URL('../../samples/granary-floor/granary-floor.padstone', import.meta.url), 'utf8');
export const hangers = readFileSync(new URL('fixtures/details/hangers.padstone', import.meta.url), 'utf8');

/** A job with two walls and two sound members, J1 and J2, with a load each. */
export const soundJob = `job "Test"
wall north { thick 300 mm }
wall south { thick 300 mm }
member J1 {
  of C24
  section 75 x 200 mm
  length 4 m
  on north at 0.1 m bearing 100 mm
  on south at 3.9 m bearing 100 mm
}
member J2 {
  of C24
  section 75 x 200 mm
  length 4 m
  on north at 0.1 m bearing 100 mm
  on south at 3.9 m bearing 100 mm
}
load boards permanent 1 kN/m on J1
load plaster permanent 1 kN/m on J2
`;

/** A sound job with one line among the statements of another member, J3. */
export const inMember = (line: string, length = 'length 4 m'): string => `${soundJob}member J3 {
  of C24
  section 75 x 200 mm
  ${length}
  ${line}
  on north at 0.1 m bearing 100 mm
  on south at 3.9 m bearing 100 mm
}
`;

export interface Marked { readonly text: string; readonly start: number; readonly end: number }

/** Takes the marks `⟦` and `⟧` out of a text. */
export function marked(source: string): Marked {
    const start = source.indexOf('⟦');
    const end = source.indexOf('⟧') - 1;
    return { text: source.replace(/[⟦⟧]/g, ''), start, end };
}

export const errorsOf = (text: string): readonly Finding[] => evaluateText(text, 'test.padstone').findings.filter(finding => finding.severity === 'error');

export function applyFix(text: string, finding: Finding): string {
    return finding.fix === undefined ? text : text.slice(0, finding.fix.at.start) + finding.fix.text + text.slice(finding.fix.at.end);
}
