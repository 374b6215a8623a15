/** The splices of a rolled member: its plates and bolts laid out, then every part of the load path. */
import type { Splice } from '../../../../../language/src/model.js';
import { spliceLayout, type SpliceLayout } from '../../../analysis/splice-layout.js';
import { steelNamed } from '../../../catalog/steel-material.js';
import type { SteelMemberContext } from '../../check.js';
import { judgedCheck, whereAt, type Answer } from '../../judged.js';
import { isProblem, problem, type Problem, type Verdict } from '../../verdict.js';
import { boltOf } from '../bolts/bolt.js';
import { coverSplice } from '../splice/covers.js';
import { endPlateSplice } from '../splice/end-plate.js';
import type { SpliceForces, SpliceResult } from '../splice/splice-result.js';

export const spliceClause = 'EN 1993-1-8 3, 6.2';

export const steelSplice = judgedCheck('splice', spliceClause, (context: SteelMemberContext) => {
    const judged = context.member.splices.map(splice => judge(context, splice));
    return { answers: judged.flatMap(({ answers }) => answers), lacking: judged.flatMap(({ lacking }) => lacking) };
});

function judge(context: SteelMemberContext, splice: Splice): { readonly answers: readonly Answer[]; readonly lacking: readonly string[] } {
    const at = `at ${(splice.at.value / 1000).toFixed(2)} m, `;
    const layout = spliceLayout(splice, context.steel.section);
    if (isProblem(layout)) {
        return { answers: [], lacking: [at + layout.problem] };
    }
    const stations = nearestStations(context, splice.at.value);
    const lacking = new Set<string>();
    const answers = stations.flatMap(station => station.states.flatMap((state): Answer[] => {
        const found = resultOf(context, layout, state);
        if (isProblem(found)) {
            lacking.add(at + found.problem);
            return [];
        }
        found.notChecked.forEach(text => lacking.add(at + text));
        return verdictsOf(found, layout).map(said => ({ said, where: whereAt(station, state) }));
    }));
    return { answers, lacking: [...lacking] };
}

function nearestStations({ actions: { stations } }: SteelMemberContext, at: number) {
    const nearest = Math.min(...stations.map(({ x }) => Math.abs(x - at)));
    return stations.filter(({ x }) => Math.abs(x - at) <= nearest + 1e-6);
}

function resultOf({ steel, materials }: SteelMemberContext, layout: SpliceLayout, forces: SpliceForces): SpliceResult | Problem {
    const { plate, bolt: { thread, grade } } = layout;
    const found = steelNamed(plate.steel, plate.thickness.value, materials);
    const plateSteel = 'steel' in found ? withFu(found.steel) : undefined;
    const beam = withFu(steel.steel);
    if (!plateSteel || !beam) {
        return problem('problem' in found ? found.problem : 'the tensile strength fu of the steel is not known');
    }
    const bolt = boltOf(thread, grade);
    return layout.kind === 'end plate'
        ? endPlateSplice({ beam: steel, splice: layout.splice, bolt, plateSteel }, forces)
        : coverSplice({ beam: steel, beamFu: beam.fu, splice: layout.splice, bolt, coverSteel: plateSteel }, forces);
}

function withFu({ fy, fu }: { readonly fy: number; readonly fu: number | undefined }): { readonly fy: number; readonly fu: number } | undefined {
    return fu === undefined ? undefined : { fy, fu };
}

/** Each part of the load path; one that is misplaced fails them all. The first line says where the bolts stand. */
function verdictsOf({ verdicts, misplaced }: SpliceResult, layout: SpliceLayout): readonly Verdict[] {
    const notes = [layoutNote(layout), ...misplaced].join('; ');
    return verdicts.map(verdict => ({
        ...verdict,
        utilisation: misplaced.length > 0 ? Infinity : verdict.utilisation,
        explain: () => verdict.explain().map((line, i) => i === 0 ? { ...line, note: [verdict.name, notes, line.note].filter(Boolean).join('; ') } : line)
    }));
}

function layoutNote(layout: SpliceLayout): string {
    const mm = (value: number): string => String(Math.round(value));
    if (layout.kind === 'end plate') {
        const { rows, gauge } = layout.splice;
        return `to be drilled: rows of two ${rows.map(mm).join(', ')} mm from the axis, ${mm(gauge)} mm between the two`;
    }
    const { flange, web } = layout.splice;
    return `to be drilled: flange ${flange.pairs} pairs each ${mm(flange.pitch)} mm, ${mm(flange.gauge)} mm between the two; web ${web.lines} x ${web.rows} each ${mm(web.linePitch)} x ${mm(web.rowPitch)} mm; ends ${mm(flange.coverEnd)} mm`;
}
