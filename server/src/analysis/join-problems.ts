/** Bolts, butts, hangers, props and splices that cannot be analysed, by member and place. */
import type { Hanger, Load, Member, Stage } from '../../../language/src/model.js';
import type { HangerElasticity } from './elastic.js';
import type { Bolt, Strand } from './piece.js';
import { isSize, isUsable, metres, noResults, within, type Problem } from './problems.js';

/** Of the bolts and butts of a member of leaves, and of splices. */
export function jointProblems(member: Member, bolts: readonly Bolt[], strands: readonly Strand[]): Problem[] {
    const { section, length: { value: length } } = member;
    const inside = (x: number): boolean => isUsable(x) && within(x, length);
    const splices = member.splices.flatMap(({ at, source }) => (inside(at.value) ? [] : [noResults(member, 'splice-outside', `its splice at ${metres(at.value)} is outside its length`, source)]));
    const stiffness = strands.flatMap((strand) => strand.splices).some((splice) => !(Number.isFinite(splice.stiffness) && splice.stiffness > 0))
        ? [noResults(member, 'bad-splice', 'the stiffness of its splice is not a positive number', member.source)] : [];
    if (section.shape !== 'plies') return [...splices, ...stiffness];
    const butts = section.butts.flatMap(({ leaf, at, source }) =>
        (inside(at.value) && leaf >= 1 && leaf <= section.count ? [] : [noResults(member, 'butt-outside', `leaf ${leaf} has no place at ${metres(at.value)} to be broken at`, source)]));
    const places = section.bolts.flatMap((row) => {
        const bad = row.places.find(({ x, height }) => !(inside(x) && isUsable(height)));
        return bad ? [noResults(member, 'bolt-outside', `its bolt at ${metres(bad.x)} is outside its length of ${metres(length)}`, bad.source)] : [];
    });
    const slip = bolts.some((bolt) => !isSize(bolt.slip)) ? [noResults(member, 'no-slip-modulus', 'the stiffness of its bolts is not known', section.source, 'warning')] : [];
    return [...splices, ...butts, ...places, ...slip];
}

/** A load on a leaf that is not there, or that nothing holds where the load is. */
export function leafLoadProblems(member: Member, strands: readonly Strand[], loads: readonly Load[]): Problem[] {
    if (strands.length === 1) return [];
    return loads.flatMap((load) => {
        if (load.leaf === undefined) return [];
        const strand = strands.find(({ leaf }) => leaf === load.leaf);
        if (!strand) return [noResults(member, 'no-such-leaf', `the load ${load.name} is on its leaf ${load.leaf}, which it does not have`, load.source)];
        const [from, to] = load.point ? [load.point.at, load.point.at] : [load.line?.from ?? 0, load.line?.to ?? 0];
        const free = strand.loose.some((run) => from <= run.to && run.from <= to);
        return free ? [noResults(member, 'loose-leaf', `the load ${load.name} is on its leaf ${load.leaf}, which too few bolts hold there`, load.source)] : [];
    });
}

/** Told of the member that hangs, or of the other where that one is not there. */
export function hangerProblems(hanger: Hanger, byName: ReadonlyMap<string, Member>, elastic: HangerElasticity | undefined): Problem[] {
    const [lower, upper] = [byName.get(hanger.carries), byName.get(hanger.from)];
    const member = lower ?? upper;
    if (!member) return [];
    const because = (code: string, reason: string, severity?: 'warning'): Problem[] => [noResults(member, code, `the hanger ${hanger.name} ${reason}`, hanger.source, severity)];
    if (!lower || !upper) return because('no-hanger-end', `hangs from ${hanger.from} and carries ${hanger.carries}, and one of them is not there`);
    if (lower === upper) return because('hangs-from-itself', 'cannot hang a member from itself');
    for (const [end, at] of [[lower, hanger.carriesAt.value], [upper, hanger.fromAt.value]] as const) {
        if (!isUsable(at) || !within(at, end.length.value)) return because('hanger-outside', `is at ${metres(at)} of ${end.name}, outside its length of ${metres(end.length.value)}`);
    }
    if (!elastic) return because('no-hanger-stiffness', 'has no stiffness that is known', 'warning');
    return isSize(elastic.initial) && isSize(elastic.final) ? [] : because('no-hanger-stiffness', 'has a stiffness that is not a positive number');
}

export function propProblems(member: Member, stages: readonly Stage[]): Problem[] {
    return stages.flatMap(({ steps }) => steps.flatMap((step) => {
        if (step.kind !== 'prop' || step.member !== member.name) return [];
        if (!isUsable(step.at.value) || !within(step.at.value, member.length.value)) {
            return [noResults(member, 'prop-outside', `its prop at ${metres(step.at.value)} is outside its length of ${metres(member.length.value)}`, step.source)];
        }
        const firm = member.supports.find(({ at, kind }) => kind !== 'spring' && Math.abs(at.value - step.at.value) < 1e-4 * member.length.value);
        if (firm) return [noResults(member, 'prop-at-support', `its prop at ${metres(step.at.value)} stands where it rests on ${firm.on} already`, step.source)];
        return isUsable(step.lift.value) ? [] : [noResults(member, 'bad-size', 'the lift of its prop is not a size', step.source)];
    }));
}
