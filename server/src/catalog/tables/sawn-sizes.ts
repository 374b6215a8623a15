/**
 * Sizes that sawmills cut, mm. Common practice, no source: EN 1313-1 and its national annexes have preferred sizes, which
 * were not seen. What a merchant has in stock is another matter.
 */
const breadths = [38, 47, 50, 63, 75, 100, 120, 140, 160, 200];
const depths = [100, 120, 140, 150, 160, 175, 180, 200, 220, 225, 240, 250, 280, 300];

export interface SawnSize { readonly breadth: number; readonly depth: number }

/** On edge, and not so thin that they will not stand. */
export const sawnSizes: readonly SawnSize[] = breadths.flatMap(breadth => depths.filter(depth => depth >= breadth && depth <= 6 * breadth).map(depth => ({ breadth, depth })));
