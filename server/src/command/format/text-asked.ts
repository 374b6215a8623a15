/** What the file asks for beyond its checks, in a terminal: break-evens, proof loads, options. */
import { allBreakEvens } from '../../certainty/index.js';
import type { LoadTestResult, OptionResult, Results } from '../../results.js';
import { amount, deflection, percentUp, spanRatio } from '../../sheet/numbers.js';
import { hazardCount, optionName, sensitivityInWords } from '../../summary.js';
import type { Page } from './page.js';
import { plain, table, type Cell } from './table.js';
import { prose } from '../../sheet/prose.js';

/** Asked for first, then guesses by how near they sit to their limit, then what a lower grade changes. */
export function certaintyLines({ certainty }: Results): string {
    return certainty === undefined ? '' : [
        ...allBreakEvens(certainty).map(({ path, sentence }) => `${path}: ${prose(sentence)}`),
        ...certainty.sensitivities.flatMap(sensitivityInWords)
    ].map(line => `  ${plain(line)}`).join('\n');
}

export function loadTestLines({ loadTests = [] }: Results, page: Page): string {
    return loadTests.map(test => [
        `  ${plain(`${test.name}${test.title ? ` (${test.title})` : ''}: ${prose(test.verdict)}`)}`,
        pointsTable(test, page),
        ...test.unseen ? [`  ${plain(prose(test.unseen))}`] : [],
        ...listed('It proves', test.proves),
        ...listed('It does not prove', test.doesNotProve)
    ].filter(part => part !== '').join('\n')).join('\n\n');
}

function pointsTable({ points }: LoadTestResult, { width }: Page): string {
    const right = 'right' as const;
    return points.length === 0 ? '' : table(
        [{ head: 'weight', align: right }, { head: 'predicted', align: right }, { head: 'from', align: right }, { head: 'to', align: right }, { head: 'read', align: right }],
        points.map(({ weight, predicted, low, high, read }) => [amount(weight), ...[predicted, low, high].map(one => deflection(one.value)), read ? deflection(read.value) : '']), width
    );
}

function listed(title: string, items: readonly string[]): readonly string[] {
    return items.length === 0 ? [] : [`  ${title}`, ...items.map(item => `  - ${plain(prose(item))}`)];
}

export function optionsTable({ options = [] }: Results, page: Page): string {
    const right = 'right' as const;
    return options.length === 0 ? '' : table([
        { head: '' }, { head: 'option', clips: 1 }, { head: 'worst check' }, { head: 'use', align: right }, { head: 'deflection', align: right }, { head: 'mass', align: right },
        { head: 'heaviest', align: right }, { head: 'longest', align: right }, { head: 'parts', align: right }, { head: 'hazards', align: right }
    ], options.map(option => optionRow(option, page)), page.width);
}

function optionRow(option: OptionResult, { colors }: Page): (Cell | string)[] {
    const { verdict, worst, deflection: bent, mass, heaviestPiece, longestPiece, parts, hazards } = option;
    const paint = { pass: colors.green, fail: colors.red, incomplete: colors.yellow }[verdict];
    return [
        { text: { pass: 'ok', fail: 'FAIL', incomplete: 'open' }[verdict], paint }, optionName(option), worst?.id ?? 'none', worst ? percentUp(worst.utilisation) : '',
        bent ? `${deflection(bent.final.value)} = ${spanRatio(bent.ratio)}` : '', mass ? amount(mass) : '', heaviestPiece ? amount(heaviestPiece.mass) : '',
        longestPiece ? amount(longestPiece.length) : '', String(parts), hazardCount(hazards)
    ];
}
