import type { BoltDistance, BoltResult } from '../../results.js';

/** As they are numbered in the table of bolts: from the start, the higher first. */
export function numbered(bolts: readonly BoltResult[]): readonly BoltResult[] {
    return [...bolts].sort((a, b) => a.x - b.x || b.height - a.height);
}

/** Of the rules that begin so (`a3` is both `a3,t` and `a3,c`), the one with the least room to what it requires. */
export function tightest(distances: readonly BoltDistance[], rule: string): BoltDistance | undefined {
    return distances.filter(distance => distance.rule.startsWith(rule))
        .reduce<BoltDistance | undefined>((least, distance) => least && least.provided / least.required <= distance.provided / distance.required ? least : distance, undefined);
}

const noise = 1e-6;

/** `a3,t 84 ≥ 84`: what is there, rounded down, and what is required, rounded up, whole mm. */
export function distanceWords({ rule, provided, required, ok }: BoltDistance): string {
    const there = Math.floor(provided + noise);
    const least = Math.ceil(required - noise);
    return `${rule} ${there} ${ok ? '≥' : '<'} ${ok ? Math.min(there, least) : Math.max(there + 1, least)}`;
}
