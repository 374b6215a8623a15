/**
 * Reference mass for one person, kg: m_ref of ISO 11228-1 for men of 20 to 45 (women of that age 20; younger or older
 * men 20, women 15), from memory.
 */
export const massForOne = 25;

/** How many it takes at 25 kg each, carried close and level. A team bears less than its sum: guidance differs, none is applied. */
export function peopleToCarry(mass: number): number {
    return Math.max(1, Math.ceil(mass / massForOne - 1e-9));
}
