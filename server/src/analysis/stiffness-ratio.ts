/** What a member of leaves is worth in leaves. */
import { placeAt, shapeAt } from './effects.js';
import { build, solveUnitCases } from './history.js';
import { lineOn } from './loading.js';
import { onWalls } from './loose.js';
import { meshOf } from './mesh.js';
import type { Piece, Strand } from './piece.js';
import { spansOf } from './spans.js';
import { kitOf } from './structure.js';
import { stateOf } from './unit-solutions.js';

/**
 * The deflection that one unbroken leaf alone would have at the middle of the longest span under a uniform load, over
 * the greatest leaf's there when the whole carries the same load: instant, K_ser, on its own supports, all of them firm.
 */
export function stiffnessRatio(piece: Piece): number | undefined {
    const own = onWalls({ ...piece, bearers: [], levels: [] });
    const [alone, whole] = [sagOf({ ...own, strands: [unbroken(piece)], bolts: [] }), sagOf(own)];
    return alone === undefined || whole === undefined ? undefined : alone / whole;
}

function unbroken({ member, strands }: Piece): Strand {
    const { section } = member;
    const [first] = strands as [Strand];
    if (section.shape !== 'plies') return first;
    const whole = { from: 0, to: member.length.value, b: section.breadth.value, h: section.depth.value, shiftUp: 0, shiftRight: 0, weakened: false };
    return { ...first, segments: [whole], share: 1, butts: [], loose: [] };
}

/** Of the leaf that sags most in the middle of the longest span; undefined where it has none or cannot stand. */
function sagOf(piece: Piece): number | undefined {
    const spans = spansOf(piece.member, []).filter(({ overhang }) => !overhang);
    const [longest] = [...spans].sort((a, b) => b.to - b.from - (a.to - a.from));
    if (!longest) return undefined;
    const kit = kitOf(meshOf({ pieces: [piece], hangers: [], props: [] }, 'instant'));
    const standing = { pieces: Uint8Array.of(1), hangers: new Uint8Array(), props: new Uint8Array() };
    const built = build(kit, [{ name: null, last: true, steps: [{ standing, tightened: new Map(), lifted: new Map() }] }]);
    if (built[0]!.steps[0]!.system.mechanisms.length > 0) return undefined;
    const mesh = kit.mesh.pieces[0]!;
    const part = { kind: 'load', unit: 0, piece: 0, stages: 'on', ...lineOn(mesh, 0, piece.member.length.value, { along: 0, down: 1 }) } as const;
    const cases = [{ id: 0, name: 'unit', load: 'unit', action: 'G', permanent: true, duration: 'permanent', psi: [1, 1, 1] }] as const;
    const [solution] = solveUnitCases(kit, built, { cases, parts: [part] })[0]!.ofCases;
    const place = placeAt(mesh, (longest.from + longest.to) / 2);
    return mesh.strands.reduce((most, { elements }) => {
        const element = elements[place.element]!;
        return element.loose ? most : Math.max(most, -shapeAt(element, stateOf(solution!, element.id), place.into).v);
    }, 0);
}
