/** EN 1993-1-1 Tables 6.1 to 6.5: imperfection factors, which curve for which section, and the reduction factors. */
import type { SteelSection } from '../../catalog/section-geometry.js';

export type Curve = 'a' | 'b' | 'c' | 'd';

/** Tables 6.1 and 6.3. */
export const imperfection: Readonly<Record<Curve, number>> = { a: 0.21, b: 0.34, c: 0.49, d: 0.76 };

/** Table 6.2 for S235 to S420: rolled I and H; channels and flats are curve c about any axis. */
export function flexuralCurve({ shape, h, b, tf }: SteelSection, axis: 'y' | 'z'): Curve {
    if (shape !== 'I') {
        return 'c';
    }
    if (tf > 100) {
        return 'd';
    }
    const strong = h / b > 1.2 && tf <= 40 ? 'a' : 'b';
    return axis === 'y' ? strong : strong === 'a' ? 'b' : 'c';
}

/** Table 6.4 (general) or 6.5 (rolled). Other than I and H: curve d. */
export function lateralCurve({ shape, h, b }: SteelSection, method: 'rolled' | 'general'): Curve {
    if (shape !== 'I') {
        return 'd';
    }
    const slender = h / b > 2;
    return method === 'rolled' ? (slender ? 'c' : 'b') : (slender ? 'b' : 'a');
}

/** χ of 6.3.1.2 (6.49), and of 6.3.2.2 (6.56). */
export const reduction = (slenderness: number, alpha: number): number => lateralReduction(slenderness, alpha, 0.2, 1);

/** χ_LT of 6.3.2.3 (6.57): plateau λ̄_LT,0 and β; (6.56) with 0.2 and 1. */
export function lateralReduction(slenderness: number, alpha: number, plateau: number, beta: number): number {
    const phi = 0.5 * (1 + alpha * (slenderness - plateau) + beta * slenderness ** 2);
    const chi = 1 / (phi + Math.sqrt(Math.max(phi ** 2 - beta * slenderness ** 2, 0)));
    return slenderness <= plateau ? 1 : Math.min(chi, 1, 1 / slenderness ** 2);
}
