/** Vibration of a floor in a dwelling, EN 1995-1-1 7.3.3. SI units: m, kg, N, s. */

/** First frequency, Hz, (7.5). @param EI_l N·m²/m along the joists @param m kg/m² */
export function fundamentalFrequency(span: number, EI_l: number, m: number): number {
    return Math.PI / (2 * span ** 2) * Math.sqrt(EI_l / m);
}

/** Number of modes up to 40 Hz, (7.7); 0 where the first is above. */
export function modesBelow40Hz(f1: number, width: number, span: number, EI_l: number, EI_b: number): number {
    return f1 >= 40 ? 0 : (((40 / f1) ** 2 - 1) * (width / span) ** 4 * EI_l / EI_b) ** 0.25;
}

/** Unit impulse velocity response, m/(N·s²), (7.6). */
export function impulseVelocity(n40: number, m: number, width: number, span: number): number {
    return 4 * (0.4 + 0.6 * n40) / (m * width * span + 200);
}

/** Its limit b^(f1 ζ − 1), (7.4). */
export function impulseVelocityLimit(b: number, f1: number, damping: number): number {
    return b ** (f1 * damping - 1);
}

/** Share of a point load's effect by the deck across the joists, no more than 1. */
export function pointLoadFactor(EI_l: number, EI_b: number): number {
    return Math.min(1, (EI_b / EI_l) ** 0.25);
}

/**
 * Deflection under 1 kN at mid-span in mm: shared by the deck, and no more than of one joist alone.
 * LVL Handbook Europe 2025, 9.1 (a Finnish rule; EN 1995-1-1 7.3.3(2) gives none).
 */
export function pointLoadDeflection(span: number, EI_l: number, EI_b: number, spacing: number): number {
    const F = 1000;
    const shared = F * span ** 2 / (42 * pointLoadFactor(EI_l, EI_b) * EI_l);
    const alone = F * span ** 3 / (48 * spacing * EI_l);
    return 1000 * Math.min(shared, alone);
}
