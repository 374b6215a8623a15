import { amount, percentUp } from '../../sheet/numbers.js';
import type { Amount, RequirementResult, Results } from '../../results.js';
import { hangerSummaries, memberSummaries, worthShowing, type MemberSummary, type State } from '../../summary.js';
import type { Page } from './page.js';
import { painted, plain, table, type Cell, type Column } from './table.js';
import { combinationLabel, prose } from '../../sheet/prose.js';

export function membersTable(results: Results, page: Page): string {
    const members = memberSummaries(results);
    const rows = members.flatMap(member => memberRow(member, page));
    const without = members.filter(({ checks }) => checks.length === 0)
        .map(({ name, state, open }) => `  ${painted(stateWord(state, page))}  ${plain(`${name}: ${['no check of it was computed', ...open].join('; ')}`)}`);
    const computed = rows.length === 0 ? [] : [table([
        { head: '' },
        { head: 'member', clips: 3 },
        { head: 'section', clips: 2 },
        { head: 'worst check' },
        { head: 'use', align: 'right' },
        { head: 'deflection', align: 'right' },
        { head: 'governed by', clips: 1 }
    ], rows, page.width)];
    return [...computed, ...without].join('\n');
}

function memberRow({ name, stage, state, checks: [worst], deflection, description }: MemberSummary, page: Page): (Cell | string)[][] {
    return worst ? [[
        stateWord(state, page), name, prose(description ?? ''), staged(worst.check, stage), percentUp(worst.utilisation), deflection ?? '', combinationLabel(worst.combination)
    ]] : [];
}

export function hangersTable(results: Results, page: Page): string {
    const hangers = hangerSummaries(results);
    return hangers.length === 0 ? '' : table([
        { head: '' },
        { head: 'hanger', clips: 3 },
        { head: 'carries', clips: 2 },
        { head: 'worst check' },
        { head: 'use', align: 'right' },
        { head: 'force', align: 'right' },
        { head: 'made of', clips: 1 }
    ], hangers.map(({ name, state, stage, checks: [worst], force, stages, description }) => {
        const { carries, from } = stages.at(-1)!;
        return [stateWord(state, page), name, `${carries} from ${from}`, worst ? staged(worst.check, stage) : '', worst ? percentUp(worst.utilisation) : '', force, prose(description ?? '')];
    }), page.width);
}

/** Columns from which there is room for the duration and the clause too. */
const wide = 100;

/** Of the stages, the one where a check is worst, and each where it fails. */
export function checksTable(results: Results, page: Page): string {
    const ifWide = <T>(...cells: T[]): T[] => page.width < wide ? [] : cells;
    const last = results.stages.at(-1)?.name ?? null;
    return results.checks.length === 0 ? '' : table([
        { head: '' },
        { head: 'check', clips: 3 },
        { head: 'use', align: 'right' },
        { head: 'demand', align: 'right' },
        { head: 'capacity', align: 'right' },
        { head: 'at', align: 'right' },
        { head: 'governed by', clips: 1 },
        ...ifWide<Column>({ head: 'duration' }, { head: 'clause', clips: 2 })
    ], worthShowing(results.checks).map(check => [
        stateWord(check.pass ? 'holds' : 'fails', page),
        staged(check.id, check.stage === last ? null : check.stage),
        percentUp(check.utilisation),
        amount(check.demand),
        amount(check.capacity),
        amount(check.at),
        combinationLabel(check.combination),
        ...ifWide(check.duration, check.clause)
    ]), page.width);
}

export function requirementsTable(results: Results, page: Page): string {
    return results.requirements.length === 0 ? '' : table([
        { head: '' },
        { head: 'require', clips: 2 },
        { head: 'found', clips: 1 },
        { head: 'limit', align: 'right' }
    ], results.requirements.map(requirement => requirementRow(requirement, page)), page.width);
}

function requirementRow(requirement: RequirementResult, page: Page): (Cell | string)[] {
    const { text, holds, left, right, reason } = requirement;
    const state = holds === undefined ? 'not computed' : holds ? 'holds' : 'fails';
    return [stateWord(state, page), text, left ? found(left) : reason ?? 'not known', right ? amount(right) : ''];
}

/** A utilisation is rounded up, as everywhere. */
function found(value: Amount): string {
    return value.unit === '%' ? percentUp(value.value / 100) : amount(value);
}

function staged(name: string, stage: string | null | undefined): string {
    return stage === null || stage === undefined ? name : `${name} @ ${stage}`;
}

/** The word says it; colour only helps to find it. */
function stateWord(state: State, { colors }: Page): Cell {
    switch (state) {
        case 'holds': return { text: 'ok', paint: colors.green };
        case 'fails': return { text: 'FAIL', paint: text => colors.red(colors.bold(text)) };
        case 'incomplete': return { text: 'open', paint: colors.yellow };
        case 'not computed': return { text: 'none', paint: colors.yellow };
    }
}
