/** Input that cannot be analysed, said by name and place. Evaluation reports most of it first; nothing here relies on that. */
import type { Finding, Given, Load, Member, Model, SourceRef } from '../../../language/src/model.js';
import type { ElasticProperties } from './elastic.js';
import type { Segments } from './segments.js';

/** Beyond this a number is a slip of the pen and would drown the rest in rounding. */
const greatest = 1e12;

export function isUsable(value: number): boolean {
    return Number.isFinite(value) && Math.abs(value) <= greatest;
}

function error(code: string, message: string, source: SourceRef): Finding {
    return { severity: 'error', code, message, source };
}

/** Sizes that are not sizes. */
export function sizeProblems(member: Member): Finding[] {
    const positive = (what: string, given: Given): Finding[] =>
        isUsable(given.value) && given.value > 0 ? [] : [error('bad-size', `${member.name} has no results: its ${what} is not a positive size`, given.source)];
    const { section } = member;
    if (section.shape !== 'rectangle') {
        return [{
            severity: 'warning', code: 'not-computed',
            message: `${member.name} has no results: its section (${section.designation}) is not computed by this version`,
            source: section.source
        }];
    }
    const slope = Number.isFinite(member.slope) && Math.abs(member.slope) <= Math.PI / 2
        ? [] : [error('bad-slope', `${member.name} has no results: it slopes more than upright`, member.source)];
    return [...positive('length', member.length), ...positive('breadth', section.breadth), ...positive('depth', section.depth), ...slope];
}

export function materialProblems(member: Member, elastic: ElasticProperties | undefined): Finding[] {
    const sound = elastic && [elastic.E, elastic.G, elastic.density].every((value) => isUsable(value) && value > 0) && isUsable(elastic.kdef) && elastic.kdef >= 0;
    return sound ? [] : [error('no-elastic-properties', `${member.name} has no results: the stiffness of its material ${member.material} is not known`, member.source)];
}

export function sectionProblems(member: Member, { gone }: Segments): Finding[] {
    return gone.map(({ from, to, source }) =>
        error('no-section-left', `${member.name} has no section left between ${metres(from)} and ${metres(to)}: the losses and notches there take all of it`, source));
}

export function supportProblems(member: Member, model: Model): Finding[] {
    if (member.supports.length === 0) return [error('mechanism', `${member.name} is held nowhere: it has no support`, member.nameSource)];
    const length = member.length.value;
    const findings: Finding[] = [];
    const firm: number[] = [];
    for (const support of member.supports) {
        const at = support.at.value;
        if (!within(at, length)) findings.push(error('support-outside', `${member.name} has no results: its support on ${support.on} at ${metres(at)} is not on its length of ${metres(length)}`, support.at.source));
        if (support.kind === 'spring' && !(support.stiffness && isUsable(support.stiffness.value) && support.stiffness.value > 0)) {
            findings.push(error('bad-spring', `${member.name} has no results: its spring at ${metres(at)} has no stiffness`, support.source));
        }
        if (support.kind === 'member') findings.push(...carrierProblems(member, support, model));
        if (support.kind === 'wall' || support.kind === 'member') {
            if (firm.some((other) => Math.abs(other - at) < 1e-4 * length)) {
                findings.push(error('two-supports', `${member.name} has two supports at ${metres(at)}: they cannot share a load that is not known between them`, support.source));
            }
            firm.push(at);
        }
    }
    return findings;
}

function carrierProblems(member: Member, support: Member['supports'][number], model: Model): Finding[] {
    const carrier = model.members.find(({ name }) => name === support.on);
    if (!carrier) return [error('no-carrier', `${member.name} has no results: it rests on ${support.on}, which has none`, support.source)];
    if (carrier === member) return [error('rests-on-itself', `${member.name} cannot rest on itself`, support.source)];
    const at = stationOnCarrier(support, carrier);
    if (at === undefined) return [error('no-crossing-place', `${member.name} has no results: where it crosses ${carrier.name} is not said`, support.source)];
    if (!within(at, carrier.length.value)) {
        return [error('support-outside', `${member.name} has no results: it crosses ${carrier.name} at ${metres(at)}, outside its length of ${metres(carrier.length.value)}`, support.source)];
    }
    return [];
}

/** On a post a member rests on its head unless said otherwise. */
export function stationOnCarrier(support: Member['supports'][number], carrier: Member): number | undefined {
    return support.stationOnCarrier?.value ?? (carrier.kind === 'post' ? carrier.length.value : undefined);
}

export function loadProblems(member: Member, loads: readonly Load[]): Finding[] {
    const length = member.length.value;
    return loads.flatMap((load) => {
        const places = load.point ? [load.point.at] : load.line ? [load.line.from, load.line.to] : [NaN];
        const amount = load.point?.force ?? load.line?.perLength ?? NaN;
        if (!isUsable(amount)) return [error('bad-load', `${member.name} has no results: the load ${load.name} is not a usable amount`, load.amount.source)];
        if (places.every((x) => within(x, length)) && !(load.line && load.line.to < load.line.from)) return [];
        return [error('load-outside', `${member.name} has no results: the load ${load.name} reaches beyond its length of ${metres(length)}`, load.source)];
    });
}

function within(x: number, length: number): boolean {
    return x >= -1e-5 * length && x <= length * (1 + 1e-5);
}

function metres(x: number): string {
    return `${(x / 1000).toFixed(2)} m`;
}
