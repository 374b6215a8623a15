export async function timed(action: () => Promise<void>): Promise<number> {
    const begun = performance.now();
    await action();
    return performance.now() - begun;
}

export async function repeat(times: number, measure: () => Promise<number>): Promise<number[]> {
    const values: number[] = [];
    for (let i = 0; i < times; i++) {
        values.push(await measure());
    }
    return values;
}

export function wait(ms: number): Promise<void> {
    return new Promise(resolve => setTimeout(resolve, ms));
}

export function median(values: readonly number[]): number {
    return quantile(values, 0.5);
}

/** The median, the worst but one in twenty, and how the median stands to what was aimed at. */
export function report(what: string, values: readonly number[], unit: string, aim?: number): void {
    const middle = median(values);
    const spread = values.length > 1 ? `, 95 % within ${quantile(values, 0.95).toFixed(1)}` : '';
    const ratio = aim === undefined ? '' : `, ${(middle / aim).toFixed(2)} of the ${aim} ${unit} aimed at`;
    console.log(`${what}: ${middle.toFixed(unit === 'MB' ? 2 : 1)} ${unit}${spread}${ratio}`);
}

function quantile(values: readonly number[], share: number): number {
    const sorted = [...values].sort((a, b) => a - b);
    return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}
