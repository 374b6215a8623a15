/** How numbers are written: JSON has no infinity and no number that is none. */
import type { Amount } from '../results.js';

/**
 * Stands for a utilisation that is not a finite number (no capacity at all, or no result): JSON has no
 * infinity, and `null` would be less than 1 for many a reader.
 */
export const noCapacity = 1e9;

export const finiteUse = (utilisation: number): number => Number.isFinite(utilisation) ? utilisation : noCapacity;

/** A value that could not be computed is null. */
export interface AmountOutput {
    readonly value: number | null;
    readonly unit: string;
}

export function amountOutput({ value, unit }: Amount): AmountOutput {
    return { value: Number.isFinite(value) ? value : null, unit };
}

export function orNull(amount: Amount | undefined): AmountOutput | null {
    return amount ? amountOutput(amount) : null;
}
