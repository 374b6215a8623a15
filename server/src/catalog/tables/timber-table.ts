import type { TimberStrength } from '../timber-strength.js';

/** Name, then fm_k, ft0_k, ft90_k, fc0_k, fc90_k, fv_k, E0_mean, E0_05, E90_mean, G_mean (MPa), rho_k, rho_mean (kg/m³), and an origin of its own. */
export type TimberRow = readonly [
    name: string, fm_k: number, ft0_k: number, ft90_k: number, fc0_k: number, fc90_k: number, fv_k: number,
    E0_mean: number, E0_05: number, E90_mean: number, G_mean: number, rho_k: number, rho_mean: number, origin?: string
];

type Common = Pick<TimberStrength, 'product' | 'softwood' | 'origin'>;

/** Strength classes by name. */
export function timberTable(common: Common, rows: readonly TimberRow[]): ReadonlyMap<string, TimberStrength> {
    return new Map(rows.map(row => [row[0], strengthOf(common, row)]));
}

function strengthOf(common: Common, row: TimberRow): TimberStrength {
    const [name, fm_k, ft0_k, ft90_k, fc0_k, fc90_k, fv_k, E0_mean, E0_05, E90_mean, G_mean, rho_k, rho_mean, origin] = row;
    return {
        ...common, name, fm_k, ft0_k, ft90_k, fc0_k, fc90_k, fv_k, E0_mean, E0_05, E90_mean, G_mean, rho_k, rho_mean,
        origin: origin ?? common.origin
    };
}
