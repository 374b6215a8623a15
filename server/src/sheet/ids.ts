import type { CheckResult, Results } from '../results.js';

/** An id that stays the same over edits elsewhere: `check-T2.bending`. Names may hold anything. */
export function anchor(kind: string, ...parts: readonly (string | null | undefined)[]): string {
    const name = parts.filter(part => part !== null && part !== undefined).join('-');
    return `${kind}-${name.replace(/[^\p{L}\p{N}._-]/gu, character => `_${character.codePointAt(0)!.toString(16)}_`)}`;
}

export const checkAnchor = ({ id, stage, option }: CheckResult): string => anchor('check', id, stage, option);
interface Named { readonly name: string }
export const memberAnchor = ({ name }: Named): string => anchor('member', name);
export const hangerAnchor = ({ name }: Named): string => anchor('hanger', name);
export const inputAnchor = (path: string): string => anchor('input', path);
/** A line of a check's calculation, and one of the numbers that it starts from, by their place. */
export const stepAnchor = (check: CheckResult, step: number): string => `${checkAnchor(check)}-step-${step + 1}`;
export const termAnchor = (check: CheckResult, term: number): string => `${checkAnchor(check)}-number-${term + 1}`;

/** Where each member and hanger is shown, by its name. */
export function subjectAnchors({ members, hangers }: Pick<Results, 'members' | 'hangers'>): ReadonlyMap<string, string> {
    return new Map([...members.map(member => [member.name, memberAnchor(member)] as const), ...hangers.map(hanger => [hanger.name, hangerAnchor(hanger)] as const)]);
}
