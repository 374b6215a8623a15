import type { CheckResult, MemberResult } from '../results.js';

/** An id that stays the same over edits elsewhere: `check-T2.bending`. Names may hold anything. */
export function anchor(kind: string, ...parts: readonly (string | null | undefined)[]): string {
    const name = parts.filter(part => part !== null && part !== undefined).join('-');
    return `${kind}-${name.replace(/[^\p{L}\p{N}._-]/gu, character => `_${character.codePointAt(0)!.toString(16)}_`)}`;
}

export const checkAnchor = ({ id, stage, option }: CheckResult): string => anchor('check', id, stage, option);
export const memberAnchor = ({ name, stage }: Pick<MemberResult, 'name'> & { readonly stage?: string | null }): string => anchor('member', name, stage);
export const inputAnchor = (path: string): string => anchor('input', path);
