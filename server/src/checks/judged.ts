/** From what clauses say at many places to one check: verdicts become outcomes, problems are said as lacking. */
import type { MemberActions, Station, ActionState } from '../analysis/actions.js';
import type { Check, Outcome } from './check.js';
import { isProblem, type Problem, type Verdict } from './verdict.js';
import { isWorse } from './worse.js';

export type Where = Pick<Outcome, 'combination' | 'at' | 'leaf'>;

/** What a clause says at one place in one combination. */
export interface Answer {
    readonly said: Verdict | Problem;
    readonly where: Where;
}

export interface Judged {
    readonly answers: readonly Answer[];
    /** What was not looked at, a phrase each. */
    readonly lacking?: readonly string[];
}

/** A check that looks once, whether it is asked for its outcome, the worst there is, or for what is lacking. */
export function judgedCheck<C extends object>(name: string, clause: string, judge: (context: C) => Judged): Check<C> {
    const known = new WeakMap<C, Judged>();
    const judged = (context: C): Judged => {
        const found = known.get(context) ?? judge(context);
        known.set(context, found);
        return found;
    };
    return {
        name, clause,
        outcomes: context => {
            let most: { readonly said: Verdict; readonly where: Where } | undefined;
            for (const { said, where } of judged(context).answers) {
                if (!isProblem(said) && isWorse(said.utilisation, most?.said.utilisation)) most = { said, where };
            }
            return most ? [{ ...most.said, ...most.where }] : [];
        },
        lacking: context => {
            const { answers, lacking = [] } = judged(context);
            const found = new Set<string>();
            for (const { said } of answers) if (isProblem(said)) found.add(said.problem);
            for (const text of lacking) found.add(text);
            return [...found].map(text => `${name}: ${text}`);
        }
    };
}

export function whereAt({ x, leaf }: Pick<Station, 'x' | 'leaf'>, { combination }: Pick<ActionState, 'combination'>): Where {
    return { combination, at: x, ...leaf === undefined ? {} : { leaf } };
}

/** The answer at every station in every state. */
export function answersAlong(actions: MemberActions, say: (state: ActionState, station: Station) => Verdict | Problem): readonly Answer[] {
    return actions.stations.flatMap(station => station.states.map(state => ({ said: say(state, station), where: whereAt(station, state) })));
}
