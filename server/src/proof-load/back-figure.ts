/** Which modulus of elasticity would explain the readings best. */

/** A deflection that was read, and how it depends on E: mm, MPa. */
export interface Reading { readonly read: number; readonly predicted: (E: number) => number }

export interface BackFigured {
    /** MPa. */
    readonly E: number;
    /** Standard error of E from the scatter of the readings, MPa; undefined of fewer than two. */
    readonly scatter?: number;
}

/** Beyond so many times the mean the readings tell of something else than the timber. */
const reach = 10;

/**
 * Least squares through the origin in 1/E, in which bending deflection is a straight line and shear, with G held, is its
 * intercept; where bolts share the load it is a curve, and Gauss and Newton's steps are repeated. Undefined where no
 * modulus within a tenth and ten times of `start` does it.
 */
export function backFigure(readings: readonly Reading[], start: number): BackFigured | undefined {
    let x = 1 / start;
    for (let turn = 0; turn < 30; turn++) {
        const { sensitivities, residuals } = lineAt(readings, x);
        const squares = dot(sensitivities, sensitivities);
        const step = dot(sensitivities, residuals) / squares;
        if (!Number.isFinite(step)) {
            return undefined;
        }
        if (Math.abs(step) < 1e-7 * x) {
            const error = readings.length > 1 ? Math.sqrt(dot(residuals, residuals) / (readings.length - 1) / squares) : undefined;
            return { E: 1 / x, ...error !== undefined && { scatter: error / x ** 2 } };
        }
        const next = Math.min(reach / start, Math.max(1 / (reach * start), x + step));
        if (next === x) {
            return undefined;
        }
        x = next;
    }
    return undefined;
}

function lineAt(readings: readonly Reading[], x: number): { readonly sensitivities: readonly number[]; readonly residuals: readonly number[] } {
    const nudge = 1e-3 * x;
    return {
        sensitivities: readings.map(({ predicted }) => (predicted(1 / (x + nudge)) - predicted(1 / x)) / nudge),
        residuals: readings.map(({ read, predicted }) => read - predicted(1 / x))
    };
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * b[i]!, 0);
