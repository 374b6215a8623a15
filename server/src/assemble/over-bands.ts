/** What is found of a model with bands: of every check its worst corner, and of the rest what any corner has. */
import type { Evaluation, Finding } from '../../../language/src/model.js';
import type { Band } from '../certainty/bands.js';
import { cornersOf, type Corners } from '../certainty/corners.js';
import type { Found } from '../compute.js';
import type { CheckResult, Corner, Hazard, MemberResult, RequirementResult } from '../results.js';
import { hangerOver, memberOver } from './envelope.js';

/** @param find what is found of a model without bands */
export function overBands(evaluation: Evaluation, bands: readonly Band[], find: (evaluation: Evaluation) => Found): Found {
    const corners = cornersOf(evaluation.model, bands, model => find({ ...evaluation, model }), usesOf);
    const { all } = corners;
    const [first] = all as readonly [Found, ...Found[]];
    const missing = unique(all.flatMap(found => found.missing), ({ name }) => name);
    const isThere = (name: string): boolean => !missing.some(one => one.name === name);
    const checks = unique(all.flatMap(found => found.checks), keyOf).filter(({ subject }) => isThere(subject)).flatMap(check => worstOf(check, corners) ?? []);
    const [members, hangers] = [all.flatMap(found => found.members), all.flatMap(found => found.hangers)];
    return {
        ...first, evaluation, checks, missing,
        members: first.members.filter(({ name }) => isThere(name)).map(one => memberOver(one, members, ownChecks(one, checks), check => membersAt(check, corners))),
        hangers: first.hangers.map(one => hangerOver(one, hangers, ownChecks(one, checks))),
        lacking: unique(all.flatMap(found => found.lacking), ({ subject, text }) => `${subject} ${text}`),
        findings: findingsOf(all),
        corners: { all, bands: corners.bands }
    };
}

/** What was told once of a place is not told again with other numbers. */
function findingsOf([first, ...others]: readonly Found[]): readonly Finding[] {
    const placeOf = ({ code, source: { file, start } }: Finding): string => `${code} ${file} ${start}`;
    const told = new Set(first!.findings.map(placeOf));
    return [...first!.findings, ...unique(others.flatMap(({ findings }) => findings).filter(finding => !told.has(placeOf(finding))), placeOf)];
}

const keyOf = ({ id, stage }: CheckResult): string => (stage === null ? id : `${id} ${stage}`);

/** What has no results with some values is worst there. */
function usesOf({ checks, missing }: Found): ReadonlyMap<string, number> {
    return new Map([...checks.map(check => [keyOf(check), check.utilisation] as const), ...missing.map(({ name }) => [`${name}. missing`, Infinity] as const)]);
}

function worstOf(check: CheckResult, { worst }: Corners<Found>): CheckResult | undefined {
    const place = worst.get(keyOf(check));
    const result = place?.found.checks.find(one => keyOf(one) === keyOf(check));
    return result && place?.corner ? withCorner(result, place.corner) : result;
}

/** A check is explained when that is read: its parts are taken over as they are. */
function withCorner(result: CheckResult, corner: Corner): CheckResult {
    return Object.defineProperties({ corner }, Object.getOwnPropertyDescriptors(result)) as CheckResult;
}

function membersAt(check: CheckResult, { worst }: Corners<Found>): readonly MemberResult[] {
    return worst.get(keyOf(check))?.found.members ?? [];
}

function ownChecks({ name, stage }: { readonly name: string; readonly stage: string | null }, checks: readonly CheckResult[]): readonly CheckResult[] {
    return checks.filter(check => check.subject === name && check.stage === stage).sort((a, b) => b.utilisation - a.utilisation);
}

/** A requirement has to hold everywhere: the one that is furthest from it, else of those that hold the one that only just does. */
export function strictest(everywhere: readonly RequirementResult[]): RequirementResult {
    const failing = everywhere.filter(({ holds }) => holds === false);
    return failing.length > 0 ? failing.reduce((most, one) => (gap(one) > gap(most) ? one : most))
        : everywhere.find(({ holds }) => holds === undefined) ?? everywhere.reduce((least, one) => (gap(one) < gap(least) ? one : least));
}

const gap = ({ left, right }: RequirementResult): number => Math.abs((left?.value ?? 0) - (right?.value ?? 0));

const severities = ['stop', 'warn', 'note'] as const;

/** What arises anywhere, each once as it is worst; worst first. */
export function worstHazards(everywhere: readonly (readonly Hazard[])[]): readonly Hazard[] {
    const hazards = everywhere.flat().sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
    return unique(hazards, ({ code, subject, source }) => `${code} ${subject} ${source.file} ${source.start}`);
}

/** The first of each key. */
function unique<T>(items: readonly T[], key: (item: T) => string): readonly T[] {
    const found = new Map<string, T>();
    for (const item of items) if (!found.has(key(item))) found.set(key(item), item);
    return [...found.values()];
}
