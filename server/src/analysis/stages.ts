/**
 * The order in which a group is built, as steps that each leave something standing.
 *
 * An element that no stage adds is there from the first stage, which is built at once. In a later stage a member comes
 * with its permanent loads before the hangers of the same step are made snug, unless it cannot stand without them.
 */
import type { Model, Stage, StageStep } from '../../../language/src/model.js';
import type { Frame, Prop } from './piece.js';
import type { Standing } from './structure.js';

export interface Step {
    /** After it. */
    readonly standing: Standing;
    /** Hangers set to a force, N, by index. */
    readonly tightened: ReadonlyMap<number, number>;
    /** Props lifted beyond the shape that they find, mm upwards, by index. */
    readonly lifted: ReadonlyMap<number, number>;
}

export interface StagePlan {
    /** Null where the file has no stages. */
    readonly name: string | null;
    readonly steps: readonly Step[];
    readonly stage?: Stage;
    /** Building stages have construction loads, the last one all others. */
    readonly last: boolean;
}

/** Props on the members of a group, in the order of the file. */
export function propsOf(stages: Model['stages'], indexOf: (member: string) => number): (Prop & { readonly step: StageStep })[] {
    return stages.flatMap(({ steps }) => steps.flatMap((step) => {
        const piece = step.kind === 'prop' ? indexOf(step.member) : -1;
        return step.kind === 'prop' && piece >= 0 ? [{ piece, at: step.at.value, step }] : [];
    }));
}

const nothing: ReadonlyMap<number, number> = new Map();

/** `standsWith` tells whether what is standing can stand. */
export function plansOf(frame: Frame, propSteps: readonly StageStep[], stages: Model['stages'], canStand: (standing: Standing) => boolean): StagePlan[] {
    const everything: Standing = { pieces: ones(frame.pieces.length), hangers: ones(frame.hangers.length), props: new Uint8Array(frame.props.length) };
    if (stages.length === 0) return [{ name: null, last: true, steps: [{ standing: everything, tightened: nothing, lifted: nothing }] }];
    const indices = (names: readonly string[]): { readonly pieces: number[]; readonly hangers: number[] } => ({
        pieces: frame.pieces.flatMap(({ member }, i) => (names.includes(member.name) ? [i] : [])),
        hangers: frame.hangers.flatMap(({ hanger }, i) => (names.includes(hanger.name) ? [i] : []))
    });
    let now: Standing = everything;
    for (const { steps } of stages) for (const step of steps) if (step.kind === 'add') now = changed(now, indices(step.elements), 0);

    return stages.map((stage, s): StagePlan => {
        const made: Step[] = [];
        const reach = (standing: Standing, over: Partial<Step> = {}): void => {
            now = standing;
            made.push({ standing, tightened: nothing, lifted: nothing, ...over });
        };
        // The first stage is there at once, before anything else is done in it.
        for (const step of s === 0 ? stage.steps : []) if (step.kind === 'add') now = changed(now, indices(step.elements), 1);
        if (s === 0) reach(now);
        for (const step of stage.steps) {
            switch (step.kind) {
                case 'add': {
                    if (s === 0) break;
                    const { pieces, hangers } = indices(step.elements);
                    const bare = changed(now, { pieces, hangers: [] }, 1);
                    if (pieces.length > 0 && hangers.length > 0 && canStand(bare)) reach(bare);
                    if (pieces.length + hangers.length > 0) reach(changed(now, { pieces, hangers }, 1));
                    break;
                }
                case 'prop': {
                    const prop = propSteps.indexOf(step);
                    if (prop >= 0) reach(propped(now, [prop], 1), { lifted: new Map([[prop, step.lift.value]]) });
                    break;
                }
                case 'tighten': {
                    const hangers = indices(step.hangers).hangers.filter((hanger) => now.hangers[hanger] === 1);
                    if (hangers.length > 0) reach(now, { tightened: new Map(hangers.map((hanger) => [hanger, step.force.value])) });
                    break;
                }
                case 'release': {
                    const { members } = step;
                    const props = frame.props.flatMap(({ piece }, i) =>
                        (now.props[i] === 1 && (members === 'all' || members.includes(frame.pieces[piece]!.member.name)) ? [i] : []));
                    if (props.length > 0) reach(propped(now, props, 0));
                    break;
                }
                case 'remove': {
                    const gone = indices(step.elements);
                    if (gone.pieces.length + gone.hangers.length > 0) reach(changed(now, gone, 0));
                }
            }
        }
        if (made.length === 0) reach(now);
        return { name: stage.name, stage, steps: made, last: s === stages.length - 1 };
    });
}

function ones(length: number): Uint8Array {
    return new Uint8Array(length).fill(1);
}

function changed(standing: Standing, { pieces, hangers }: { readonly pieces: readonly number[]; readonly hangers: readonly number[] }, to: 0 | 1): Standing {
    const next = { ...standing, pieces: standing.pieces.slice(), hangers: standing.hangers.slice() };
    for (const piece of pieces) next.pieces[piece] = to;
    for (const hanger of hangers) next.hangers[hanger] = to;
    return next;
}

function propped(standing: Standing, props: readonly number[], to: 0 | 1): Standing {
    const next = { ...standing, props: standing.props.slice() };
    for (const prop of props) next.props[prop] = to;
    return next;
}
