/** Small jobs in a scenario of our own: a boat shed's loft. */
export const shed = `job "Boat shed loft" {
  basis EN1995
  service class 2
}

timber pine { grade C24 (documented "stamped") }
masonry brick { fk 3.0 MPa (assumed) }
wall west { of brick thick 330 mm }
wall east { of brick thick 330 mm }

member B1 "loft beam" {
  of pine
  section 100 x 250 mm (measured "tape")
  length 4.00 m
  on west at 0.10 m bearing 150 mm
  on east at 3.90 m bearing 150 mm
  restrained every 600 mm
}

member B2 "trimmer" {
  of pine
  section 75 x 200 mm (measured "tape")
  length 3.00 m
  on west at 0.10 m bearing 100 mm
  on east at 2.90 m bearing 100 mm
  restrained every 600 mm
}

load boards  permanent 0.40 kN/m2 strip 1.20 m on B1
load gear    imposed E 1.50 kN/m2 strip 1.20 m on B1
load rails   permanent 0.60 kN at 1.50 m on B2

require B1.bending <= 100 %
`;

/** Line, from 0, and column of the first place where this stands. */
export function position(text: string, needle: string, offset = 0): { line: number; character: number } {
    const at = text.indexOf(needle);
    if (at < 0) {
        throw new Error(`${needle} does not stand in the text`);
    }
    const before = text.slice(0, at + offset).split('\n');
    return { line: before.length - 1, character: before.at(-1)!.length };
}

/** An incremental change that puts `after` where `before` first stands. */
export function replacement(text: string, before: string, after: string) {
    return { range: { start: position(text, before), end: position(text, before, before.length) }, text: after };
}
