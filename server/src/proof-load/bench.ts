/** The member as it lies on its blocks in the yard: a model of its own, computed as any other. */
import type { Face, Given, Load, LoadTest, Loss, Member, Model, PliesSection, Support, TestWeight, Timber } from '../../../language/src/model.js';
import { force, lineLoad, standardGravity, stress } from '../../../language/src/quantity.js';
import type { Moduli } from './moduli.js';

/**
 * The leaves that are tested, level, on rigid blocks; nothing on it but the weight.
 * @param moduli of its timber; the class's own where they are absent
 * @param selfWeight what it weighs is there before the first reading: forces count it, readings do not
 */
export function benchModel(model: Model, test: LoadTest, member: Member, weight: TestWeight, { moduli, selfWeight }: { readonly moduli?: Moduli; readonly selfWeight: boolean }): Model {
    const bare: Model = {
        ...model,
        members: [{ ...testedLeaves(member, test.leaves), kind: 'beam', slope: 0, supports: test.blocks.map(block), precamber: undefined, floor: undefined, selfWeight }],
        loads: loadsOf(test, weight), hangers: [], stages: [], walls: [], requirements: [], notComputed: [], inputs: []
    };
    return moduli ? withModuli(bare, member, moduli) : bare;
}

function block(at: Given, index: number): Support {
    return { kind: 'wall', on: `block ${index + 1}`, at, tied: false, source: at.source };
}

/** In two halves, so that the middle of the weight is a station of the analysis. */
function loadsOf(test: LoadTest, { mass, at, spread, source }: TestWeight): Load[] {
    const newtons = mass.value * standardGravity;
    const common = { action: { kind: 'permanent' }, member: test.member, fromMass: true, source } as const;
    if (!spread || !(spread.value > 0)) {
        return [{ ...common, name: 'weight', amount: { ...mass, value: newtons, dimension: force }, point: { force: newtons, at: at.value } }];
    }
    const perLength = newtons / spread.value;
    const half = spread.value / 2;
    return [[at.value - half, at.value], [at.value, at.value + half]].map(([from = NaN, to = NaN], i): Load => ({
        ...common, name: `weight, ${i === 0 ? 'left' : 'right'} half`, amount: { ...mass, value: perLength, dimension: lineLoad }, line: { perLength, from, to }
    }));
}

/** Side by side as they are bolted; what is between two leaves that are tested is left out with its bolts' length. */
function testedLeaves(member: Member, leaves: LoadTest['leaves']): Member {
    const { section } = member;
    if (section.shape !== 'plies' || leaves === undefined) {
        return member;
    }
    const tested = [...new Set(leaves)].sort((a, b) => a - b);
    return {
        ...member,
        section: {
            ...section, count: tested.length,
            butts: section.butts.flatMap(butt => tested.includes(butt.leaf) ? [{ ...butt, leaf: tested.indexOf(butt.leaf) + 1 }] : [])
        },
        losses: member.losses.map(loss => ofLeaves(loss, section, tested))
    };
}

/** A loss from a side eats the leaves one after the other: what it takes of those that are tested. */
function ofLeaves(loss: Loss, { count, breadth }: PliesSection, tested: readonly number[]): Loss {
    const eaten = (face: Face, depth: number): number => {
        const before = (leaf: number): number => (face === 'left' ? leaf - 1 : count - leaf) * breadth.value;
        return face === 'left' || face === 'right'
            ? tested.reduce((sum, leaf) => sum + Math.min(breadth.value, Math.max(0, depth - before(leaf))), 0) : depth;
    };
    const faces = Object.entries(loss.faces).map(([face, given]) => [face, { ...given, value: eaten(face as Face, given.value) }]);
    return { ...loss, faces: Object.fromEntries(faces) };
}

/** A class that the member names directly becomes a timber of that name. */
function withModuli(model: Model, member: Member, { E, G }: Moduli): Model {
    const declared = model.materials.find(({ name }) => name === member.material);
    const own = (name: string, value: number): Given => ({ value, evidence: { word: 'assumed', stated: false }, source: member.source, path: `${member.material}.${name}`, dimension: stress });
    const base: Timber = declared?.kind === 'timber' ? declared : {
        kind: 'timber', name: member.material, properties: {}, source: member.source,
        grade: { value: member.material, evidence: { word: 'assumed', stated: false }, source: member.source, path: `${member.material}.grade` }
    };
    const changed: Timber = { ...base, properties: { ...base.properties, E0_mean: own('E0_mean', E), G_mean: own('G_mean', G) } };
    return { ...model, materials: [...model.materials.filter(({ name }) => name !== member.material), changed] };
}
