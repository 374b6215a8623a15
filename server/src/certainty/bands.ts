/** Inputs of which a band is known, and the model with a value out of each. */
import type { Given, Model } from '../../../language/src/model.js';
import { inputOf } from './input.js';
import type { Axis } from './explore.js';
import { rangeOf } from './range.js';

export interface Band extends Axis {
    readonly given: Given;
    readonly low: number;
    readonly high: number;
}

/** Those that the model is computed from; a band of a proof load is none of them. */
export function bandsOf(model: Model): readonly Band[] {
    return model.inputs.flatMap(input => {
        const { band } = input;
        return band === undefined || typeof input.value === 'string' || inputOf(model, input.path) === undefined ? []
            : [{ given: input as Given, low: band.low, high: band.high, ...worseEnd(model, input as Given) }];
    });
}

/** More of a strength is never worse. */
function worseEnd(model: Model, given: Given): Pick<Axis, 'worseEnd'> {
    const { steps, worse } = rangeOf(model, given);
    return steps === 1 ? { worseEnd: worse === 'up' ? 1 : 0 } : {};
}

export const valueAt = ({ low, high }: Band, share: number): number => (share === 1 ? high : low + share * (high - low));

/** The model as if each input were known, at these shares of the bands. */
export function modelAt(model: Model, bands: readonly Band[], shares: readonly number[]): Model {
    return bands.reduce((changed, band, i) => inputOf(changed, band.given.path)!.withValue(valueAt(band, shares[i]!)), model);
}
