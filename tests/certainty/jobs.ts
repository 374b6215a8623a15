/** Small jobs in words, and how a test computes them. */
import { readFileSync } from 'node:fs';
import { evaluateText } from '../../language/src/index.js';
import type { Model } from '../../language/src/model.js';
import { compute as computeAll } from '../../server/src/compute.js';
import type { Results } from '../../server/src/results.js';

export function modelOf(text: string): Model {
    const { model, findings, broken } = evaluateText(text, 'job.padstone');
    const errors = findings.filter(({ severity }) => severity === 'error');
    if (errors.length > 0 || broken.length > 0) throw new Error(errors.map(({ message }) => message).join('; '));
    return model;
}

export const compute = (model: Model): Results => computeAll({ model, findings: [], broken: [] });

const samples = new URL('../../samples/', import.meta.url);
export const granary = (): string => readFileSync(new URL('granary-floor/granary-floor.padstone', samples), 'utf8');

/** With the detail of its hangers. */
export function sailLoft(): Model {
    const read = (file: string) => readFileSync(new URL(`sail-loft/${file}`, samples), 'utf8');
    return evaluateText(read('sail-loft.padstone'), 'sail-loft.padstone', read).model;
}

const head = 'job "Net store" { service class 1 }\nwall a { thick 400 mm }\nwall b { thick 400 mm }\n';

/** So that deflections govern nothing. */
export const mayDeflect = 'values { limit instant 50  limit final 50 }';

/** A beam without weight, held sideways all along, whose bending stress is the load's alone. */
export function beam({ load = 'permanent 6 kN/m', statements = '', values = '', depth = 300 }: { load?: string; statements?: string; values?: string; depth?: number } = {}): string {
    return `${head}timber pine { grade C24 (judged) }
member B1 {
  of pine
  section 100 x ${depth} mm (measured)
  length 4.00 m
  on a at 0.50 m bearing 200 mm (measured)
  on b at 3.50 m bearing 200 mm (measured)
  restrained
  no self weight
  ${statements}
}
${values}
load store ${load} from 0.50 m to 3.50 m on B1 (assumed)
`;
}
