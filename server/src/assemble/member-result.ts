import type { Load, Model } from '../../../language/src/model.js';
import type { Deflection, DiagramPoint } from '../analysis/actions.js';
import { referenceLength } from '../checks/en1995/deflection.js';
import type { Amount, AmountRange, CheckResult, HangerSketch, LoadSketch, MemberResult } from '../results.js';
import { kN, kNm, metres, mm } from './amounts.js';
import type { SubjectContext } from './contexts.js';
import { sectionResult } from './section-result.js';
import { propsAt } from './stages.js';

/** A member's results in one stage as the views show them; units kN, m, mm, kNm. */
export function memberResult(context: SubjectContext, checks: readonly CheckResult[], model: Model): MemberResult {
    const { member, actions } = context;
    const final = worst(actions.final);
    return {
        name: member.name,
        title: member.title,
        kind: member.kind,
        slope: member.slope,
        stage: actions.stage,
        ...sectionResult(context),
        length: member.length.value,
        segments: actions.segments,
        spans: actions.spans,
        losses: member.losses,
        notches: member.notches,
        supportSketches: actions.supports.map(({ support, kind, at, bearing, tied, source }) => ({ name: support, kind, at, bearing, tied, source })),
        loadSketches: context.loads.map(loadSketch),
        hangerSketches: hangerSketches(context),
        propSketches: propsAt(model, member.name, actions.stage),
        crossingSketches: actions.crossings.map(({ support, at, bearing, source }) => ({ name: support, at, bearing, source })),
        weight: kN(actions.weight),
        reactions: actions.supports.map(({ support, at, design }) => ({ support, at: metres(at), min: kN(design.min), max: kN(design.max) })),
        moment: range(actions.diagrams.M, kNm),
        shear: range(actions.diagrams.V, kN),
        deflection: {
            instant: mm(worst(actions.instant)?.value ?? 0),
            final: mm(final?.value ?? 0),
            total: mm(worst(actions.total)?.value ?? 0),
            ratio: final && final.value !== 0 ? referenceLength(final.span) / Math.abs(final.value) : Infinity
        },
        diagrams: actions.diagrams,
        worst: worstCheck(checks),
        source: member.source,
        nameSource: member.nameSource
    };
}

/** The id of the check that uses most; empty where there is none. */
export function worstCheck(checks: readonly CheckResult[]): string {
    return checks.reduce<CheckResult | undefined>((most, check) => most && !(check.utilisation > most.utilisation) ? most : check, undefined)?.id ?? '';
}

export function range(points: readonly DiagramPoint[], amount: (value: number) => Amount): AmountRange {
    return {
        min: amount(points.reduce((least, point) => Math.min(least, point.min), 0)),
        max: amount(points.reduce((most, point) => Math.max(most, point.max), 0))
    };
}

/** The deflection that uses most of its span. */
function worst(deflections: readonly Deflection[]): Deflection | undefined {
    return deflections.reduce<Deflection | undefined>((most, deflection) =>
        most && Math.abs(most.value) / referenceLength(most.span) >= Math.abs(deflection.value) / referenceLength(deflection.span) ? most : deflection, undefined);
}

function loadSketch(load: Load): LoadSketch {
    const { name, point, line, source } = load;
    const action = load.action.kind === 'imposed' ? `imposed ${load.action.category}` : load.action.kind;
    return { name, action, point, line, source };
}

function hangerSketches({ member, hangers }: SubjectContext): HangerSketch[] {
    return hangers.flatMap(({ name, carries, carriesAt, from, fromAt, source, usedAt }) => [
        ...(carries === member.name ? [{ name, at: carriesAt.value, other: from, above: true, source: usedAt ?? source }] : []),
        ...(from === member.name ? [{ name, at: fromAt.value, other: carries, above: false, source: usedAt ?? source }] : [])
    ]);
}
