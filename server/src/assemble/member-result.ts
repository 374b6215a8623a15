import type { Load, Model } from '../../../language/src/model.js';
import type { Deflection, DiagramPoint } from '../analysis/actions.js';
import type { MemberContext } from '../checks/check.js';
import { referenceLength } from '../checks/en1995/deflection.js';
import type { Amount, AmountRange, CheckResult, LoadSketch, MemberResult } from '../results.js';

/** A member's results as the views show them; units kN, m, mm, kNm. */
export function memberResult(context: MemberContext, checks: readonly CheckResult[], model: Model): MemberResult {
    const { member, actions, strength } = context;
    if (member.section.shape !== 'rectangle') {
        throw new Error(`${member.name}: only a rectangular section has results`);
    }
    const { breadth, depth } = member.section;
    const final = worst(actions.final);
    return {
        name: member.name,
        title: member.title,
        kind: member.kind,
        slope: member.slope,
        stage: actions.stage,
        shape: 'rectangle',
        material: strength.name,
        description: `${tidy(breadth.value)} × ${tidy(depth.value)} mm ${strength.name}`,
        length: member.length.value,
        breadth: breadth.value,
        depth: depth.value,
        segments: actions.segments,
        spans: actions.spans,
        losses: member.losses,
        notches: member.notches,
        supportSketches: actions.supports.map(({ support, kind, at, bearing, tied, source }) => ({ name: support, kind, at, bearing, tied, source })),
        loadSketches: model.loads.filter(load => load.member === member.name).map(loadSketch),
        hangerSketches: [],
        propSketches: [],
        crossingSketches: actions.crossings.map(({ support, at, bearing, source }) => ({ name: support, at, bearing, source })),
        weight: kN(actions.weight),
        reactions: actions.supports.map(({ support, at, design }) => ({ support, at: metres(at), min: kN(design.min), max: kN(design.max) })),
        moment: range(actions.diagrams.M, 1e-6, 'kNm'),
        shear: range(actions.diagrams.V, 1e-3, 'kN'),
        deflection: {
            instant: mm(worst(actions.instant)?.value ?? 0),
            final: mm(final?.value ?? 0),
            total: mm(worst(actions.total)?.value ?? 0),
            ratio: final && final.value !== 0 ? referenceLength(final.span) / Math.abs(final.value) : Infinity
        },
        diagrams: actions.diagrams,
        worst: checks.reduce<CheckResult | undefined>((most, check) => most && !(check.utilisation > most.utilisation) ? most : check, undefined)?.id ?? '',
        source: member.source,
        nameSource: member.nameSource
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

function range(points: readonly DiagramPoint[], factor: number, unit: string): AmountRange {
    return {
        min: { value: factor * points.reduce((least, point) => Math.min(least, point.min), 0), unit },
        max: { value: factor * points.reduce((most, point) => Math.max(most, point.max), 0), unit }
    };
}

const kN = (newtons: number): Amount => ({ value: newtons / 1000, unit: 'kN' });
const mm = (value: number): Amount => ({ value, unit: 'mm' });
const metres = (value: number): Amount => ({ value: value / 1000, unit: 'm' });
const tidy = (value: number): string => String(Number(value.toFixed(1)));
