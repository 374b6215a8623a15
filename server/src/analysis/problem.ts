/** Why something could not be computed: what a function returns instead of throwing. */
export interface Problem { readonly problem: string }

export const problem = (text: string): Problem => ({ problem: text });

export function isProblem<T extends object>(answer: T | Problem): answer is Problem {
    return 'problem' in answer;
}

export type InputKind = 'finite' | 'positive' | 'not negative';

const holds: Readonly<Record<InputKind, (value: number) => boolean>> = {
    finite: Number.isFinite,
    positive: value => Number.isFinite(value) && value > 0,
    'not negative': value => Number.isFinite(value) && value >= 0
};

/** The first of these inputs (by what a person calls them) that is not of the kind, as a problem. */
export function unsound(kind: InputKind, inputs: Readonly<Record<string, number>>): Problem | undefined {
    for (const name in inputs) {
        if (!holds[kind](inputs[name]!)) return problem(kind === 'finite' ? `${name} has to be a number` : `${name} has to be ${kind}, not ${inputs[name]}`);
    }
    return undefined;
}
