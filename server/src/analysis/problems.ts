/** Input that cannot be analysed, by member and place. Evaluation reports most of it first; nothing here relies on that. */
import type { Finding, Given, Load, Member, Severity, SourceRef, Support } from '../../../language/src/model.js';
import type { ElasticProperties } from './elastic.js';
import type { Gone } from './segments.js';

/** Why a member has no results. */
export interface Problem { readonly member: Member; readonly finding: Finding }

export function problem(member: Member, code: string, message: string, source: SourceRef, severity: Severity = 'error'): Problem {
    return { member, finding: { severity, code, message, source } };
}

export function noResults(member: Member, code: string, reason: string, source: SourceRef, severity?: Severity): Problem {
    return problem(member, code, `${member.name} has no results: ${reason}`, source, severity);
}

/** Beyond this a number is a slip of the pen and would drown the rest in rounding. */
const greatest = 1e12;

export function isUsable(value: number): boolean {
    return Number.isFinite(value) && Math.abs(value) <= greatest;
}

export function isSize(value: number | undefined): value is number {
    return value !== undefined && isUsable(value) && value > 1e-6;
}

/** Sizes that are not sizes. */
export function sizeProblems(member: Member): Problem[] {
    const { section } = member;
    const sizes: [string, Given][] = [['length', member.length]];
    if (section.shape === 'rectangle' || section.shape === 'plies') sizes.push(['breadth', section.breadth], ['depth', section.depth]);
    const problems = sizes.filter(([, { value }]) => !isSize(value)).map(([what, { source }]) =>
        noResults(member, 'bad-size', `its ${what} is not a positive size`, source));
    if (section.shape === 'plies' && !(Number.isInteger(section.count) && section.count >= 1)) problems.push(noResults(member, 'bad-size', 'its number of leaves is none', section.source));
    if (member.kind === 'beam' && !(Math.abs(member.slope) <= Math.PI / 2)) problems.push(noResults(member, 'bad-slope', 'its slope is not between level and upright', member.source));
    if (member.precamber && !isUsable(member.precamber.value)) problems.push(noResults(member, 'bad-size', 'its precamber is not a size', member.precamber.source));
    return problems;
}

export function materialProblems(member: Member, elastic: ElasticProperties | undefined): Problem[] {
    if (!elastic) return [noResults(member, 'no-elastic-properties', `the stiffness of its material ${member.material} is not known`, member.source, 'warning')];
    const { E, G, density, kdef, section } = elastic;
    const sizes = section
        ? [section.instant, section.final].flatMap(({ EA, EI, GA }) => [EA, EI, GA]).concat(section.breadth, section.depth)
        : [E, G, density];
    const sound = sizes.every((value) => Number.isFinite(value) && value > 1e-6) && isUsable(kdef) && kdef >= 0 && isUsable(section?.mass ?? 0);
    if (!sound) return [noResults(member, 'no-elastic-properties', `the stiffness or density of its material ${member.material} is not a positive number`, member.source)];
    const whole = member.section.shape === 'rolled' || member.section.shape === 'flitch';
    if (whole && !section) return [noResults(member, 'no-elastic-properties', 'the stiffness of its section is not known', member.section.source, 'warning')];
    const [cut] = [...member.losses, ...member.notches];
    return whole && cut ? [noResults(member, 'not-computed', 'a loss or notch in such a section is not computed by this version', cut.source, 'warning')] : [];
}

export function cutProblems(member: Member): Problem[] {
    return [...member.losses, ...member.notches].flatMap((cut) => {
        const depths = 'faces' in cut ? Object.values(cut.faces) : [cut.depth];
        const sound = isUsable(cut.from.value) && isUsable(cut.to.value) && cut.from.value <= cut.to.value
            && depths.every(({ value }) => isUsable(value) && value >= 0);
        return sound ? [] : [noResults(member, 'bad-size', 'a loss or notch has a size that is none', cut.source)];
    });
}

export function sectionProblems(member: Member, gone: readonly Gone[]): Problem[] {
    return gone.map(({ from, to, source }) => problem(member, 'no-section-left',
        `${member.name} has no section left between ${metres(from)} and ${metres(to)}: the losses and notches there take all of it`, source));
}

/** `byName` finds the member that another rests on; `hung` where hangers or props may hold it. */
export function supportProblems(member: Member, byName: ReadonlyMap<string, Member>, hung: boolean): Problem[] {
    if (member.supports.length === 0 && !hung) {
        return [problem(member, 'mechanism', `${member.name} is held nowhere: it has no support`, member.nameSource)];
    }
    const firm: number[] = [];
    return member.supports.flatMap((support) => {
        const problems = placeProblems(member, support);
        if (support.kind === 'spring' && !isSize(support.stiffness?.value)) {
            problems.push(noResults(member, 'bad-spring', `its spring at ${metres(support.at.value)} has no stiffness`, support.source));
        }
        if (support.kind === 'member') problems.push(...carrierProblems(member, support, byName.get(support.on)));
        if (support.kind === 'wall' || support.kind === 'member') {
            const at = support.at.value;
            if (firm.some((other) => Math.abs(other - at) < 1e-4 * member.length.value)) {
                problems.push(noResults(member, 'two-supports', `two supports at ${metres(at)} share a load in a way that is not known`, support.source));
            }
            firm.push(at);
        }
        return problems;
    });
}

function placeProblems(member: Member, { at, on }: Support): Problem[] {
    if (within(at.value, member.length.value)) return [];
    return [noResults(member, 'support-outside', `its support on ${on} at ${metres(at.value)} is outside its length of ${metres(member.length.value)}`, at.source)];
}

function carrierProblems(member: Member, support: Support, carrier: Member | undefined): Problem[] {
    if (!carrier) return [noResults(member, 'no-carrier', `it rests on ${support.on}, which has none`, support.source)];
    if (carrier === member) return [noResults(member, 'rests-on-itself', 'it cannot rest on itself', support.source)];
    const at = stationOnCarrier(support, carrier);
    if (at === undefined) return [noResults(member, 'no-crossing-place', `where it crosses ${carrier.name} is not said`, support.source)];
    if (within(at, carrier.length.value)) return [];
    return [noResults(member, 'support-outside', `it crosses ${carrier.name} at ${metres(at)}, outside that member's length of ${metres(carrier.length.value)}`, support.source)];
}

/** On a post a member rests on its head unless said otherwise. */
export function stationOnCarrier(support: Support, carrier: Member): number | undefined {
    return support.stationOnCarrier?.value ?? (carrier.kind === 'post' ? carrier.length.value : undefined);
}

export function loadProblems(member: Member, loads: readonly Load[]): Problem[] {
    const length = member.length.value;
    return loads.flatMap(({ name, point, line, amount, source }) => {
        const places = point ? [point.at] : line ? [line.from, line.to] : [NaN];
        if (!isUsable(point?.force ?? line?.perLength ?? NaN)) {
            return [noResults(member, 'bad-load', `the load ${name} is not a usable amount`, amount.source)];
        }
        if (places.every((x) => within(x, length)) && !(line && line.to < line.from)) return [];
        return [noResults(member, 'load-outside', `the load ${name} reaches beyond its length of ${metres(length)}`, source)];
    });
}

export function within(x: number, length: number): boolean {
    return x >= -1e-5 * length && x <= length * (1 + 1e-5);
}

export function metres(x: number): string {
    return `${(x / 1000).toFixed(2)} m`;
}
