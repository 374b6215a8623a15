/** The parts of a model that do not touch each other: each a model of its own, with results of its own. */
import type { Hanger, Member, Model, Stage, StageStep } from '../../../language/src/model.js';

export interface Part {
    readonly model: Model;
    /** All that its checks depend on: two parts of equal content by identity have equal results. */
    readonly content: readonly unknown[];
}

/** Members and hangers that name each other are in one part, so that those that are solved together are. */
export function partsOf(model: Model): readonly Part[] {
    const joined = [...model.members, ...model.hangers];
    return groupsOf(joined).map((group) => partOf(model, group));
}

type Thing = Member | Hanger;

function groupsOf(things: readonly Thing[]): readonly (readonly Thing[])[] {
    const byName = new Map(things.map((thing) => [thing.name, thing]));
    const lead = new Map<Thing, Thing>();
    const root = (thing: Thing): Thing => {
        let at = thing;
        for (let next = lead.get(at); next; next = lead.get(at)) at = next;
        return at;
    };
    for (const thing of things) {
        for (const name of wordsIn(thing)) {
            const other = byName.get(name);
            if (other && root(other) !== root(thing)) lead.set(root(thing), root(other));
        }
    }
    const groups = new Map<Thing, Thing[]>();
    for (const thing of things) groups.set(root(thing), [...groups.get(root(thing)) ?? [], thing]);
    return [...groups.values()];
}

function partOf(model: Model, group: readonly Thing[]): Part {
    const own = new Set<Thing>(group);
    const names = new Set(group.map(({ name }) => name));
    const members = model.members.filter((member) => own.has(member));
    const hangers = model.hangers.filter((hanger) => own.has(hanger));
    const loads = model.loads.filter(({ member }) => names.has(member));
    const words = new Set(group.flatMap((thing) => [...wordsIn(thing)]));
    const walls = model.walls.filter(({ name }) => words.has(name));
    for (const { material } of walls) if (material !== undefined) words.add(material);
    const materials = model.materials.filter(({ name }) => words.has(name));
    const stages = model.stages.map((stage) => stageOf(stage, new Set([...names, ...loads.map(({ name }) => name)])));
    return {
        model: { ...model, members, hangers, loads, walls, materials, stages, requirements: [], breakEvens: [], loadTests: [], options: [], answers: [], survey: undefined, inputs: model.inputs.filter(({ band }) => band !== undefined) },
        content: [model.job, model.access, ...model.values, ...model.stages, ...members, ...hangers, ...loads, ...walls, ...materials]
    };
}

/** Every stage stays, for the last one is another than those before it; its steps are those of this part. */
function stageOf(stage: Stage, names: ReadonlySet<string>): Stage {
    return { ...stage, steps: stage.steps.flatMap((step) => stepOf(step, names) ?? []) };
}

function stepOf(step: StageStep, names: ReadonlySet<string>): StageStep | undefined {
    const own = (list: readonly string[]) => list.filter((name) => names.has(name));
    switch (step.kind) {
        case 'add': case 'remove': return filled({ ...step, elements: own(step.elements) }, ({ elements }) => elements);
        case 'tighten': return filled({ ...step, hangers: own(step.hangers) }, ({ hangers }) => hangers);
        case 'prop': return names.has(step.member) ? step : undefined;
        case 'release': return step.members === 'all' ? step : filled({ ...step, members: own(step.members) }, ({ members }) => members as readonly string[]);
    }
}

const filled = <S extends StageStep>(step: S, list: (step: S) => readonly string[]): S | undefined => (list(step).length > 0 ? step : undefined);

const words = new WeakMap<object, ReadonlySet<string>>();

/** Every word that stands in it, but its places in the text and how its inputs are known. */
function wordsIn(thing: object): ReadonlySet<string> {
    const known = words.get(thing);
    if (known) return known;
    const found = new Set<string>();
    collect(thing, found);
    words.set(thing, found);
    return found;
}

const noWords = new Set(['source', 'nameSource', 'usedAt', 'evidence', 'path', 'title']);

function collect(thing: unknown, into: Set<string>): void {
    if (typeof thing === 'string') into.add(thing);
    if (typeof thing !== 'object' || thing === null) return;
    for (const [key, value] of Object.entries(thing)) if (!noWords.has(key)) collect(value, into);
}
