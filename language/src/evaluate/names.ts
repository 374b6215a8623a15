/** What is called what. Members, loads, walls, materials, values and parts share one set of names. */
import type { AstNode, Reference } from 'langium';
import * as ast from '../generated/ast.js';
import type { Context } from './context.js';
import { fail, poisoned, source, sourceOfReference } from './context.js';
import { failUnknown } from './unknown.js';

export type Named = (ast.Let | ast.Member | ast.Load | ast.Wall | ast.Timber | ast.Steel | ast.Masonry | ast.Hanger | ast.Use | ast.LoadTest) & { readonly name: string };

export interface Names {
    /** The first of its name. */
    readonly things: ReadonlyMap<string, Named>;
    readonly details: ReadonlyMap<string, ast.Detail>;
    /** The one member that the use of a detail makes, by the name that it shares with the use. */
    readonly sole: ReadonlyMap<string, Named>;
    /** Members that a hanger or the use of a detail names: it may hold them. */
    readonly hung: ReadonlySet<string>;
    /** Declared again, each with the first. */
    readonly duplicates: readonly { readonly again: AstNode & { readonly name: string }; readonly first: AstNode }[];
}

const isNamed = (node: AstNode): node is Named =>
    ast.isLet(node) || ast.isMember(node) || ast.isLoad(node) || ast.isWall(node) || ast.isTimber(node) || ast.isSteel(node)
    || ast.isMasonry(node) || ast.isHanger(node) || ast.isUse(node) || ast.isLoadTest(node);

/** `made`: what uses of details make. */
export function collectNames(root: ast.Calculation, made: ReadonlyMap<AstNode, unknown>): Names {
    const things = new Map<string, Named>();
    const details = new Map<string, ast.Detail>();
    const sole = new Map<string, Named>();
    const others = new Map<string, AstNode>();
    const duplicates: { again: AstNode & { name: string }; first: AstNode }[] = [];
    const add = <T extends AstNode>(map: Map<string, T>, key: string, node: T & { readonly name: string }): void => {
        const first = map.get(key);
        if (first === undefined) {
            map.set(key, node);
        } else {
            duplicates.push({ again: node, first });
        }
    };
    for (const node of root.declarations) {
        if (ast.isDetail(node)) {
            if (node.name) { add(details, node.name, node); }
        } else if (ast.isStage(node) || ast.isOption(node)) {
            if (node.name) { add<AstNode>(others, `${node.$type} ${node.name}`, node); }
        } else if (isNamed(node) && made.has(node) && ast.isUse(things.get(node.name))) {
            sole.set(node.name, node);
        } else if (isNamed(node) && node.name) {
            add(things, node.name, node);
        }
    }
    return { things, details, sole, duplicates, hung: new Set(root.declarations.flatMap(hungNames)) };
}

/** What a hanger or the use of a detail may hold. */
function hungNames(node: ast.Declaration): readonly string[] {
    const names = ast.isHanger(node) ? [node.carried?.$refText]
        : ast.isUse(node) ? node.arguments.map(({ value }) => (ast.isReference(value) ? value.subject?.$refText : undefined)) : [];
    return names.filter(name => name !== undefined);
}

export function reportDuplicates(context: Context): void {
    for (const { again, first } of context.names.duplicates) {
        const at = source(context, again, 'name');
        fail(context, 'duplicate-name', `'${again.name}' is already the name of something else`, at,
            { related: [{ message: 'the first is here', source: source(context, first) }] });
    }
}

/** The thing of one of the wanted kinds that a reference names; an error names what was probably meant. */
export function resolve<T extends Named>(
    context: Context, reference: Reference | undefined, node: AstNode, wanted: (node: unknown) => node is T, kind: string, alsoKnown: readonly string[] = []
): T | undefined {
    const name = reference?.$refText;
    if (name === undefined || name === '') {
        return poisoned(context);
    }
    const sole = context.names.sole.get(name);
    if (sole !== undefined && wanted(sole)) {
        return sole;
    }
    const thing = context.names.things.get(name);
    if (thing !== undefined && wanted(thing)) {
        return thing;
    }
    const at = sourceOfReference(context, reference!, node);
    if (thing !== undefined) {
        return fail(context, 'wrong-kind', `'${name}' is ${kindOf(thing)}, not ${kind}`, at,
            { related: [{ message: `${name} is here`, source: source(context, thing) }] });
    }
    const among = [...[...context.names.things.values()].filter(wanted).map(known => known.name), ...alsoKnown];
    return failUnknown(context, 'unknown-name', `unknown name '${name}'`, at, { word: name, among });
}

export function kindOf(node: Named): string {
    const kinds: Readonly<Record<Named['$type'], string>> = {
        Let: 'a value', Member: 'a member', Load: 'a load', Wall: 'a wall', Timber: 'a timber', Steel: 'a steel', Masonry: 'a masonry',
        Hanger: 'a hanger', Use: 'the use of a detail', LoadTest: 'a load test'
    };
    return kinds[node.$type];
}
