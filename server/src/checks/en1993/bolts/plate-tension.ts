/** A plate in tension with bolt holes: EN 1993-1-1 6.2.3 and block tearing by EN 1993-1-8 3.10.2. N, mm, MPa. */
export interface PlateSteel { readonly fy: number; readonly fu: number }
export interface PlateFactors { readonly gammaM0: number; readonly gammaM2: number }

/** N_pl,Rd of the whole section, (6.6). */
export const grossResistance = (A: number, { fy }: PlateSteel, { gammaM0 }: PlateFactors): number => A * fy / gammaM0;

/** N_u,Rd of the net section, (6.7). */
export const netResistance = (Anet: number, { fu }: PlateSteel, { gammaM2 }: PlateFactors): number => 0.9 * Math.max(Anet, 0) * fu / gammaM2;

/**
 * Block tearing, (3.9) for a force through the middle of the group, (3.10) for one beside it.
 * @param Ant net area in tension
 * @param Anv net area in shear
 */
export function blockTearing(Ant: number, Anv: number, { fy, fu }: PlateSteel, { gammaM0, gammaM2 }: PlateFactors, eccentric = false): number {
    return (eccentric ? 0.5 : 1) * fu * Math.max(Ant, 0) / gammaM2 + fy * Math.max(Anv, 0) / (Math.sqrt(3) * gammaM0);
}
