/** One beam that holds, in words, and what may be asked of it. */
import { evaluateText } from '../../language/src/index.js';
import { compute } from '../../server/src/compute.js';
import { computeWhole } from '../../server/src/whole.js';

export const beam = `job "Ferry house" { service class 1 }
survey { services checked "none" asbestos checked "none" lead checked "none" damp source fixed "eaves" heritage consent not needed }
masonry stone { fk 4 MPa (tested) }
wall west { of stone thick 400 mm }
wall east { of stone thick 400 mm }
timber pine { grade C24 (judged "close rings") }
member B "over the boats" {
  of pine
  section 100 x 240 mm (measured)
  length 4.00 m
  on west at 0.10 m bearing 150 mm (measured)
  on east at 3.90 m bearing 150 mm (measured)
  loss 1.80 m .. 2.20 m { top 20 mm } (probed "awl")
  restrained
}
load deck permanent 1.5 kN/m on B (measured)
`;

/** 200 kg in the middle of 3.80 m, less what is lost at the top: 1.96 kN · 3.80³ / 48 EI is about 2.0 mm with 11 000 MPa. */
export const yard = (read: number, left = 0.1) => `loadtest yard "in the yard" {
  B on blocks at 0.10 m, 3.90 m
  weight 100 kg at 2.00 m
  weight 200 kg at 2.00 m
  read 100 kg ${(read / 2).toFixed(2)} mm
  read 200 kg ${read.toFixed(2)} mm
  read 0 kg ${left} mm
}
`;

export const option = `option deep "a new one" { replace B {
  of C24
  section 100 x 300 mm (documented)
  length 4.00 m
  on west at 0.10 m bearing 150 mm (measured)
  on east at 3.90 m bearing 150 mm (measured)
  restrained
} }
`;

export const wholeOf = (more = '') => computeWhole(evaluateText(beam + more, 'ferry.padstone'));
export const earlyOf = (more = '') => compute(evaluateText(beam + more, 'ferry.padstone'));
/** mm, as predicted under 200 kg. */
export const sunk = wholeOf(yard(1)).loadTests![0]!.points[1]!.predicted.value;
