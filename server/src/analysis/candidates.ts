/**
 * States that may be the worst at one place, kept as numbers until it is known which matter.
 *
 * One covers another where it lasts as long or longer (its kmod is no greater) and each of its forces lies as far or
 * farther out on the same side: whatever grows with each of them is worse in it. What is covered is let go.
 */

/** Which forces a check looks at together. */
export type Together = 'N and M' | 'V' | 'all';

export interface Candidates {
    readonly together: Together;
    count: number;
    N: Float64Array;
    V: Float64Array;
    M: Float64Array;
    /** Order of the duration, 0 for permanent. */
    shortness: Uint8Array;
    /** What the caller knows it by. */
    tags: Int32Array;
}

export function noCandidates(together: Together): Candidates {
    return { together, count: 0, ...roomOf(32) };
}

function roomOf(size: number) {
    return {
        N: new Float64Array(size), V: new Float64Array(size), M: new Float64Array(size),
        shortness: new Uint8Array(size), tags: new Int32Array(size)
    };
}

/** Takes one in, and lets go those that it covers; not where it is covered itself. */
export function addCandidate(found: Candidates, N: number, V: number, M: number, shortness: number, tag: number): void {
    const axial = found.together !== 'V';
    const shear = found.together !== 'N and M';
    for (let i = 0; i < found.count; i++) {
        if (found.shortness[i]! <= shortness && (!axial || (farther(found.N[i]!, N) && farther(found.M[i]!, M))) && (!shear || farther(found.V[i]!, V))) return;
    }
    let kept = 0;
    for (let i = 0; i < found.count; i++) {
        if (shortness <= found.shortness[i]! && (!axial || (farther(N, found.N[i]!) && farther(M, found.M[i]!))) && (!shear || farther(V, found.V[i]!))) continue;
        if (kept < i) write(found, kept, found.N[i]!, found.V[i]!, found.M[i]!, found.shortness[i]!, found.tags[i]!);
        kept += 1;
    }
    found.count = kept;
    appendCandidate(found, N, V, M, shortness, tag);
}

/** Takes one in whatever the others are. */
export function appendCandidate(found: Candidates, N: number, V: number, M: number, shortness: number, tag: number): void {
    if (found.count === found.N.length) grow(found);
    write(found, found.count, N, V, M, shortness, tag);
    found.count += 1;
}

function farther(a: number, b: number): boolean {
    return b >= 0 ? (a >= b) : (a <= b);
}

function write(found: Candidates, i: number, N: number, V: number, M: number, shortness: number, tag: number): void {
    found.N[i] = N;
    found.V[i] = V;
    found.M[i] = M;
    found.shortness[i] = shortness;
    found.tags[i] = tag;
}

function grow(found: Candidates): void {
    const wider = roomOf(2 * found.N.length);
    for (const key of ['N', 'V', 'M', 'shortness', 'tags'] as const) wider[key].set(found[key]);
    Object.assign(found, wider);
}
