/**
 * Members, loads, walls and materials that a detail holds: each use makes them anew, as if the file said them with
 * the use's name before theirs and its arguments in the place of the parameters.
 */
import type { AstNode, Reference } from 'langium';
import { AstUtils, isAstNode, isReference } from 'langium';
import * as ast from '../generated/ast.js';

type Part = (ast.Member | ast.Wall | ast.Timber | ast.Masonry | ast.Steel | ast.Load | ast.Let) & { readonly name: string };

export interface Origin {
    /** Of the file: the outermost. */
    readonly use: ast.Use;
    /** The outermost first; the part stands in the last. */
    readonly details: readonly string[];
    /** Uses within details that lead to it. */
    readonly through: readonly ast.Use[];
}

export interface Expansions {
    readonly declarations: readonly Part[];
    readonly origins: ReadonlyMap<AstNode, Origin>;
    /** By the name of the use, as `P.left`, then by the name in the detail. */
    readonly parts: ReadonlyMap<string, ReadonlyMap<string, Part>>;
}

/** More than a building has; what makes more, or expands for ever, is told of where it is used. */
const mostUses = 5000;

/** What stands for a parameter: a name, or an expression. */
type Given = string | ast.Expression;

interface Site extends Origin {
    readonly label: string;
    readonly given: ReadonlyMap<string, Given>;
}

export function expandParts(declarations: readonly ast.Declaration[], unsound: ReadonlySet<AstNode>): Expansions {
    const details = new Map([...declarations].reverse().filter(ast.isDetail).map(detail => [detail.name, detail]));
    const made: Part[] = [];
    const origins = new Map<AstNode, Origin>();
    const parts = new Map<string, ReadonlyMap<string, Part>>();

    let uses = 0;
    const expand = (use: ast.Use, site: Omit<Site, 'given'>): void => {
        const name = use.detail?.$refText ?? '';
        const detail = details.get(name);
        if (detail === undefined || unsound.has(detail) || site.details.includes(name) || ++uses > mostUses) {
            return;
        }
        const given = argumentsOf(use, detail);
        if (given === undefined) {
            return;
        }
        const within: Site = { ...site, details: [...site.details, name], given };
        const own = detail.contents.filter(isPart).filter(part => part.name);
        const fullNames = new Map(own.map(part => [part.name, fullName(detail, part, site.label)]));
        const root = AstUtils.findRootNode(detail);
        const copies = new Map(own.map(part => [part.name, copyOf(part, root, within.given, fullNames, true) as Part]));
        const add = (copy: Part): void => {
            made.push(copy);
            origins.set(copy, within);
        };
        const before = made.length;
        [...copies.values()].filter(copy => !ast.isLet(copy)).forEach(add);
        parts.set(site.label, copies);
        for (const inner of detail.contents.filter(ast.isUse).filter(one => one.name)) {
            const copy = copyOf(inner, root, within.given, fullNames, false) as ast.Use;
            expand(copy, { ...within, label: fullName(detail, inner, site.label), through: [...site.through, inner] });
        }
        // Where there are only hangers, they find the detail's values by themselves.
        if (made.length > before) {
            [...copies.values()].filter(ast.isLet).forEach(add);
        }
    };
    declarations.filter(ast.isUse).filter(use => use.name && !unsound.has(use))
        .forEach(use => expand(use, { use, label: use.name, details: [], through: [] }));
    return { declarations: made, origins, parts };
}

const isPart = (node: AstNode): node is Part =>
    ast.isMember(node) || ast.isWall(node) || ast.isTimber(node) || ast.isMasonry(node) || ast.isSteel(node) || ast.isLoad(node) || ast.isLet(node);

/** What a file may refer to: where there is only one such, it is called as the use is. */
export const isElement = (node: AstNode): node is ast.Hanger | ast.Use | ast.Member | ast.Wall => ast.isHanger(node) || ast.isUse(node) || ast.isMember(node) || ast.isWall(node);

function fullName(detail: ast.Detail, part: AstNode & { readonly name: string }, label: string): string {
    return isElement(part) && detail.contents.filter(isElement).length === 1 ? label : `${label}.${part.name}`;
}

/** Undefined where one is missing; that is told where the use is looked at. */
function argumentsOf(use: ast.Use, detail: ast.Detail): ReadonlyMap<string, Given> | undefined {
    const given = new Map<string, Given>();
    for (const { name, type, default: usual } of detail.parameters) {
        const value = use.arguments.find(({ parameter }) => parameter === name)?.value ?? usual;
        if (value === undefined) {
            return undefined;
        }
        const isName = ['member', 'wall', 'thread', 'timber', 'steel', 'masonry'].includes(type ?? '');
        given.set(name, isName ? (ast.isReference(value) ? value.subject?.$refText ?? '' : '') : value);
    }
    return given;
}

/** A copy in the file's own scope; `renamed` gives it its full name. */
function copyOf(node: AstNode, container: AstNode, given: ReadonlyMap<string, Given>, names: ReadonlyMap<string, string>, renamed: boolean): AstNode {
    const word = (text: string): string => {
        const value = given.get(text);
        return typeof value === 'string' ? value : names.get(text) ?? text;
    };
    const reference = (one: Reference): Reference => ({ $refText: word(one.$refText), $refNode: one.$refNode, ref: undefined }) as Reference;
    const value = (one: unknown, key: string, owner: AstNode): unknown => {
        if (Array.isArray(one)) {
            return one.map(item => value(item, key, owner));
        }
        if (isReference(one)) {
            return reference(one);
        }
        if (isAstNode(one)) {
            const named = ast.isReference(one) && one.path.length === 0 ? given.get(one.subject?.$refText ?? '') : undefined;
            return named === undefined || typeof named === 'string' ? copy(one, owner) : copyOf(named, owner, new Map(), new Map(), false);
        }
        return typeof one === 'string' && key === 'thread' ? word(one) : one;
    };
    const copy = (one: AstNode, owner: AstNode): AstNode => {
        const made = { $type: one.$type, $container: owner, $cstNode: one.$cstNode } as unknown as AstNode & Record<string, unknown>;
        for (const [key, item] of Object.entries(one)) {
            if (!key.startsWith('$')) {
                made[key] = value(item, key, made);
            }
        }
        return made;
    };
    const whole = copy(node, container) as AstNode & { name?: string };
    return renamed ? Object.assign(whole, { name: names.get(whole.name ?? '') ?? whole.name }) : whole;
}
