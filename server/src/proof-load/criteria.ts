/** Published measures of a load test. None of those seen is written for timber, and what says so is printed with each. */

/** Of the unfactored design load, held for a day: New York City Building Code BC 1708.3.2 (seen in source). */
const fullTestFactor = 2;

/** The load that a full test by that code puts on; any unit. */
export const fullTestLoad = (unfactored: number): number => fullTestFactor * unfactored;

/** Of the greatest deflection, within a day of unloading: the same code; ACI 318 chapter 20 has the same quarter (seen summarised). */
export const recoveryRequired = 0.75;

/** Of a test that is repeated because the first came back too little: codes for concrete (seen summarised). */
export const recoveryOfRepeat = 0.8;

export const recoverySource = 'New York City Building Code 1708.3.2 and ACI 318 chapter 20, not written for timber';

/** 1 less the residual over the greatest deflection; undefined where there was none. */
export function recoveryOf(greatest: number, residual: number): number | undefined {
    return greatest > 0 ? 1 - residual / greatest : undefined;
}

/** Deflection may not outgrow the load by more than so much from the first reading to the last: ACI 437.2, for concrete (seen summarised). */
export const softeningAllowed = 0.25;

/** What the stiffness by the first reading loses until the greatest weight: 1 less the last one's stiffness over the first one's. */
export function softeningOf(readings: readonly { readonly predicted: number; readonly read: number }[]): number | undefined {
    const sorted = readings.filter(({ read, predicted }) => read > 0 && predicted > 0).sort((a, b) => a.predicted - b.predicted);
    const [first, last] = [sorted[0], sorted.at(-1)];
    return first && last && first !== last ? 1 - last.predicted / last.read / (first.predicted / first.read) : undefined;
}

/** A deflection of less than a thousandth of the span is not seen by eye: common practice, no source. */
export const seenByEye = 1 / 1000;
