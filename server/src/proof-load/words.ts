/** What a proof load says, in words: a share of what was borne is never rounded up. */
import { deflection, percentUp, significant, station } from '../sheet/numbers.js';
import { recoveryOfRepeat, recoveryRequired, recoverySource, seenByEye, softeningAllowed } from './criteria.js';
import type { Figures, Point } from './figures.js';

export type Outcome = 'predicted' | 'borne out' | 'stiffer' | 'in doubt';

/** Whole per cent, rounded down. */
export const percentDown = (share: number): string => `${Math.floor(100 * share + 1e-9)} %`;

export const kilograms = (mass: number): string => `${significant(mass)} kg`;

export const modulus = (E: number): string => `${10 * Math.round(E / 10)} MPa`;

/** Everything that speaks against the member. */
export function doubtsOf({ points, recovery, softening }: Figures): readonly string[] {
    return [
        ...points.flatMap(({ weight, read, high }) => read !== undefined && read > high + readable
            ? [`at ${kilograms(weight.mass.value)} it sank ${deflection(read)}, more than the ${deflection(high)} of timber at its 5 % stiffness`] : []),
        ...softening !== undefined && softening > softeningAllowed
            ? [`it lost ${percentUp(softening)} of its stiffness from the lightest to the heaviest weight, more than ${percentUp(softeningAllowed)} (ACI 437.2, not written for timber): that is how breaking begins`] : [],
        ...recovery !== undefined && recovery < recoveryRequired
            ? [`it came back by ${percentDown(recovery)}, less than ${percentUp(recoveryRequired)} (${recoverySource}; a second test is asked for ${percentUp(recoveryOfRepeat)})`] : []
    ];
}

/** Readings that no timber of the class explains, on the good side. */
function stifferOf({ points }: Figures): readonly string[] {
    return points.flatMap(({ weight, read, low }) => read !== undefined && read < low - readable
        ? [`at ${kilograms(weight.mass.value)} it sank ${deflection(read)}, less than the ${deflection(low)} of timber at its 95 % stiffness`] : []);
}

/** Half of the last figure of a rule, mm: nearer than that nobody reads. Common practice, no source. */
const readable = 0.05;

export function outcomeOf(figures: Figures): Outcome {
    if (figures.points.every(({ read }) => read === undefined)) {
        return 'predicted';
    }
    return doubtsOf(figures).length > 0 ? 'in doubt' : stifferOf(figures).length > 0 ? 'stiffer' : 'borne out';
}

/** One sentence. */
export function verdictOf(figures: Figures, what: string): string {
    const { greatest } = figures;
    switch (outcomeOf(figures)) {
        case 'predicted': return `Predicted alone, nothing was read: ${prediction(greatest, what)}.`;
        case 'in doubt': return `In doubt: ${doubtsOf(figures).join('; ')}. Leave it unloaded until the reason is found.`;
        case 'stiffer': return `Stiffer than predicted: ${stifferOf(figures).join('; ')}. It ${carried(figures)}${cameBack(figures)}. Look for what helped it (blocks nearer than was said, a gauge that sank along, butts that bear on each other, bolts that grip), and do not count on that in place.`;
        case 'borne out': return `The readings bear the prediction out: ${what} ${carried(figures)}${cameBack(figures)}. That is stiffness, and strength for the hour of the test, and no more.`;
    }
}

export function prediction({ predicted, low, high, weight }: Point, what: string): string {
    const band = low < high ? ` (${deflection(low)} to ${deflection(high)})` : '';
    return `${what} should sink ${deflection(predicted)}${band} at ${station(weight.at.value)} under ${kilograms(weight.mass.value)}`;
}

function carried({ greatest, service, design }: Figures): string {
    const shares = service && design ? `, ${percentDown(service.moment)} of its service moment and ${percentDown(design.moment)} of its design moment` : '';
    return `carried ${kilograms(greatest.weight.mass.value)}${shares}`;
}

function cameBack({ recovery }: Figures): string {
    return recovery === undefined ? '' : ` and came back by ${percentDown(recovery)}`;
}

/** A deflection that nobody would see is a prediction too: one that is seen refutes it. */
export function unseen({ predicted, high, weight }: Point, span: number): string | undefined {
    return predicted < seenByEye * span
        ? `The prediction at ${kilograms(weight.mass.value)}, ${deflection(predicted)}, is too small to see by eye (less than 1 mm a metre between the blocks: common practice, no source). That can be tested without a gauge: if it is seen to sink, it sinks more than was predicted${high >= seenByEye * span ? ' of middling timber' : ''}.`
        : undefined;
}
