import type { Member, Model } from '../../../language/src/model.js';

/** Members and hangers that holes are drilled for. */
export function drilled({ members, hangers }: Model): readonly string[] {
    return [...members.filter(isDrilled), ...hangers].map(({ name }) => name);
}

function isDrilled({ section, holes, splices }: Member): boolean {
    return holes.length > 0 || splices.length > 0 || ((section.shape === 'plies' || section.shape === 'flitch') && section.bolts.length > 0);
}
