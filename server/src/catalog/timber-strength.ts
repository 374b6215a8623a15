/** Strength classes of solid timber and glulam. Stresses MPa, densities kg/m³. */
export interface TimberStrength {
    readonly name: string;
    readonly product: 'solid' | 'glulam';
    readonly softwood: boolean;
    readonly fm_k: number;
    readonly ft0_k: number;
    readonly ft90_k: number;
    readonly fc0_k: number;
    readonly fc90_k: number;
    readonly fv_k: number;
    readonly E0_mean: number;
    readonly E0_05: number;
    readonly E90_mean: number;
    readonly G_mean: number;
    readonly rho_k: number;
    readonly rho_mean: number;
    /** Table, edition and whether the row was seen in a source or is from memory. */
    readonly origin: string;
}
