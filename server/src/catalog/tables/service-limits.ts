/** EN 1995-1-1 Table 7.2, the lenient end of the range for a span between two supports: span over this. */
export const deflectionLimits = {
    instant: { name: 'limit instant', value: 300, origin: 'EN 1995-1-1 Table 7.2, lower end of l/300 to l/500, from memory' },
    final: { name: 'limit final', value: 250, origin: 'EN 1995-1-1 Table 7.2, lower end of l/250 to l/350 for w_net,fin, from memory' }
} as const;

/**
 * EN 1995-1-1 7.3.3(2): a from 0.5 to 4 mm/kN, b from 50 to 150, better floors to the left of
 * Figure 7.2. The pair is a point in the middle of that figure, from memory.
 */
export const vibrationLimits = {
    a: { name: 'vibration a', value: 1.5, origin: 'EN 1995-1-1 Figure 7.2, middle of the range, from memory' },
    b: { name: 'vibration b', value: 100, origin: 'EN 1995-1-1 Figure 7.2, middle of the range, from memory' }
} as const;
