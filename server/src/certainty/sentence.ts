/** A break-even in words. */
import type { Model } from '../../../language/src/model.js';
import type { BreakEven } from './break-even.js';
import { gradesAbove } from './grades.js';
import { nameOf, roundedTowards, unitOf, written } from './naming.js';

type Answer = Omit<BreakEven, 'sentence'>;

/** @param reason why what governs has no results, where it has none */
export function sentenceOf(model: Model, answer: Answer, reason?: string): string {
    const unit = unitOf({ ...answer, value: answer.given });
    const band = answer.band && `${written(answer.band.low, unit)} .. ${written(answer.band.high, unit)}`;
    const known = `${band ? `${band}, of which ${written(answer.given, unit)} is worse,` : written(answer.given, unit)} was ${answer.evidence.word}`;
    if (answer.check === '') {
        return `${answer.without.length > 0 ? `not known: ${list(answer.without)} no results` : `no check depends on ${nameOf(model, answer.path)}`}; ${known}`;
    }
    const where = answer.stage === undefined ? '' : ` in stage ${answer.stage}`;
    const governs = reason ? `beyond that ${answer.check} has no results${where}: ${reason}`
        : `${answer.limit === undefined ? `the worst check is ${answer.check}` : `${shortCheck(answer)} governs`}${where}`;
    return [claim(model, answer, unit), known, governs, ...cautions(answer)].join('; ');
}

const list = (names: readonly string[]): string => `${names.join(', ')} ${names.length === 1 ? 'has' : 'have'}`;

function claim(model: Model, answer: Answer, unit: string): string {
    const name = nameOf(model, answer.path);
    const { limit, given, searched, aside } = answer;
    const verb = !answer.passes ? 'fails' : aside.length > 0 ? 'no other check fails' : 'passes';
    if (limit === undefined) {
        const range = searched.by !== 'list' ? `from ${written(searched.from, unit)} to ${written(searched.to, unit)}`
            : `${answer.passes ? 'down' : 'up'} to ${searched.to}, the ${answer.passes ? 'lowest' : 'highest'} class`;
        return `none within reach: ${verb} with ${name} ${range}`;
    }
    if (typeof limit === 'string') return answer.passes ? `${verb} down to ${gradesAbove(limit)[0]}, ${aside.length > 0 ? 'one does' : 'and fails'} at ${limit}` : `fails, and passes from ${limit} on`;
    const aim = answer.passes ? Number(given) : 2 * limit - Number(given);
    return `${verb} until ${name} is ${written(roundedTowards(limit, aim, unit), unit)}`;
}

/** The subject is said where it is not the one that the input is of. */
function shortCheck({ path, check }: Answer): string {
    const [subject, name] = check.split('.');
    return name !== undefined && subject === path.split('.')[0] ? name : check;
}

function cautions({ searched, limit, without, aside }: Answer): readonly string[] {
    return [
        ...(searched.by === 'grid' && !searched.monotone ? [`${limit === undefined ? '' : 'the nearest turn '}of ${searched.values} values tried, for it gets better and worse by turns`] : []),
        ...(without.length > 0 ? [`${without.join(', ')} left out for want of results`] : []),
        ...(aside.length > 0 ? [`${aside[0]} ${aside.length > 1 ? `and ${aside.length - 1} more fail` : 'fails'} already`] : [])
    ];
}

/** `passes until 52 mm`, in the margin of the input; undefined where nothing is within reach. */
export function limitInShort(answer: Answer): string | undefined {
    const { limit, given, passes, aside } = answer;
    if (limit === undefined || answer.check === '') return undefined;
    const verb = !passes ? 'fails' : aside.length > 0 ? 'no other fails' : 'passes';
    if (typeof limit === 'string') return passes ? `${verb} down to ${gradesAbove(limit)[0]}` : `fails, passes from ${limit} on`;
    const unit = unitOf({ ...answer, value: given });
    return `${verb} until ${written(roundedTowards(limit, passes ? Number(given) : 2 * limit - Number(given), unit), unit)}`;
}
