import type { Given, Member } from '../../../language/src/model.js';
import type { Actions } from '../analysis/actions.js';

/** Whether a stretch reaches into the middle half of a span. Under an even load M there is 3/4 of its greatest and more. */
export function inMiddleHalf({ name }: Member, { members }: Actions, from: Given, to: Given = from): boolean {
    return members.filter(({ member }) => member === name).some(({ spans }) => spans.some(span => {
        const quarter = (span.to - span.from) / 4;
        return !span.overhang && to.value > span.from + quarter && from.value < span.to - quarter;
    }));
}
