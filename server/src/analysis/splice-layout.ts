/**
 * Where the bolts of a splice stand. The language gives plates and how many bolts; the places follow by rules that
 * leave room for washers, roots and edges: common practice, no source. The sheet prints them, to be drilled so. mm.
 */
import type { BoltGroup, Splice } from '../../../language/src/model.js';
import { boltGrades, threads, type BoltGrade, type Thread } from '../catalog/bolts.js';
import type { SteelSection } from '../catalog/section-geometry.js';
import { coverStiffness, type CoverSplice } from './splice-covers.js';
import { endPlateStiffness, type EndPlateSplice, type SpliceStiffness } from './splice.js';
import { problem, type Problem } from './problem.js';

export type SplicePlate = Splice['plates'][number];

export interface SpliceBolt { readonly thread: Thread; readonly grade: BoltGrade }

export type SpliceLayout =
    | { readonly kind: 'end plate'; readonly splice: EndPlateSplice; readonly plate: SplicePlate; readonly bolt: SpliceBolt }
    | { readonly kind: 'covers'; readonly splice: CoverSplice; readonly plate: SplicePlate; readonly bolt: SpliceBolt };

/** From a bolt to an edge: more than 1.2 d0 of EN 1993-1-8 Table 3.3. */
const toEdge = (hole: number): number => 2 * hole;
/** Half a washer beside a bolt. */
const washer = (d: number): number => 0.95 * d;
/** Clear between the ends of two beams under covers. */
const coverGap = 10;

/** 1 mm over to M14, 2 mm to M24, 3 mm beyond: EN 1090-2. */
export const normalHole = (d: number): number => d + (d < 16 ? 1 : d <= 24 ? 2 : 3);

/** The splice of a rolled section; a problem where it is none that is covered, or has no room for its bolts. */
export function spliceLayout({ plates, bolts }: Splice, section: SteelSection): SpliceLayout | Problem {
    const end = plates.find(({ where }) => where === 'end');
    const [first, second] = bolts;
    if (section.shape !== 'I') {
        return problem(`a splice of ${section.name}: I and H sections alone are covered`);
    }
    if (!first) {
        return problem('no bolts are given');
    }
    if (end) {
        return endPlate(end, first, section);
    }
    const flange = plates.find(({ where }) => where === 'flange' || where === 'cover');
    const web = plates.find(({ where }) => where === 'web');
    return flange && web && second
        ? covers(flange, web, [first, second], section)
        : problem('a splice has an end plate with its bolts, or a flange plate and a web plate with bolts for each, in this order');
}

export function spliceStiffness(layout: SpliceLayout, fu: number): SpliceStiffness {
    return layout.kind === 'end plate' ? endPlateStiffness(layout.splice) : coverStiffness(layout.splice, coverBolt(layout.bolt), fu);
}

export const coverBolt = ({ thread: { d }, grade: { fub } }: SpliceBolt) => ({ d, d0: normalHole(d), fub });

function boltOfGroup({ size, grade }: BoltGroup): SpliceBolt | Problem {
    const thread = threads.get(size);
    const found = boltGrades.get(grade.value);
    return thread && found ? { thread, grade: found } : problem(`no bolt ${size} of grade ${grade.value} is in the tables`);
}

function endPlate(plate: SplicePlate, group: BoltGroup, section: SteelSection): SpliceLayout | Problem {
    const bolt = boltOfGroup(group);
    if ('problem' in bolt) {
        return bolt;
    }
    const { d, As } = bolt.thread;
    const above = ((plate.length?.value ?? section.h) - section.h) / 2;
    const rows = group.count / 2;
    const gauge = gaugeIn(section, Math.min(plate.width.value, section.b), d);
    if (!Number.isInteger(rows) || above < 0 || !(gauge > 0)) {
        return problem(!Number.isInteger(rows) ? 'the bolts of an end plate stand in rows of two' : above < 0
            ? `an end plate ${plate.length?.value} mm long does not cover ${section.name}` : 'the end plate is too narrow for two bolts in a row');
    }
    const outer = rows >= 4 && above >= 4 * d ? [section.h / 2 + above / 2] : [];
    const reach = section.h / 2 - section.tf - 2 * d;
    const inner = spread(rows - 2 * outer.length, reach);
    return {
        kind: 'end plate', plate, bolt,
        splice: {
            beam: section, gauge, bolt: { d, As }, weldThroat: 0,
            plate: { width: plate.width.value, thickness: plate.thickness.value, above, below: above },
            rows: [...outer, ...inner, ...outer.map(y => -y)]
        }
    };
}

function covers(flange: SplicePlate, web: SplicePlate, [ofFlange, ofWeb]: readonly [BoltGroup, BoltGroup], section: SteelSection): SpliceLayout | Problem {
    const bolt = boltOfGroup(ofFlange);
    if ('problem' in bolt) {
        return bolt;
    }
    if (!flange.length || !web.length || ofFlange.size !== ofWeb.size || ofFlange.grade.value !== ofWeb.grade.value) {
        return problem(flange.length && web.length ? 'covers with bolts of two kinds are not covered' : 'the lengths of the covers are not given');
    }
    const { d } = bolt.thread;
    const end = toEdge(normalHole(d));
    const half = (plate: SplicePlate): number => (plate.length!.value - coverGap) / 2 - 2 * end;
    const pairs = ofFlange.count / 2;
    const rows = rowsIn(ofWeb.count, web.width.value - 2 * end, 3 * d);
    const lines = ofWeb.count / rows;
    return {
        kind: 'covers', plate: flange, bolt,
        splice: {
            beam: section, gap: coverGap,
            flange: {
                width: flange.width.value, thickness: flange.thickness.value, pairs, gauge: gaugeIn(section, Math.min(flange.width.value, section.b), d),
                pitch: pairs > 1 ? half(flange) / (pairs - 1) : 3 * d, coverEnd: end, beamEnd: end
            },
            web: {
                depth: web.width.value, thickness: web.thickness.value, rows, lines,
                rowPitch: rows > 1 ? (web.width.value - 2 * end) / (rows - 1) : 3 * d,
                linePitch: lines > 1 ? half(web) / (lines - 1) : 3 * d, coverEnd: end, beamEnd: end
            }
        }
    };
}

/** Half way between the least for root and washer and the most for the edges; not above nought where there is no room. */
function gaugeIn({ tw, r }: SteelSection, width: number, d: number): number {
    const least = tw + 2 * r + 2 * washer(d);
    const most = width - 2 * 1.5 * normalHole(d);
    return most >= least ? (least + most) / 2 : 0;
}

/** Heights from +reach to -reach, evenly. */
function spread(count: number, reach: number): readonly number[] {
    return Array.from({ length: count }, (_, i) => count === 1 ? 0 : reach - 2 * reach * i / (count - 1));
}

/** The most rows, in even lines, that stand one above another no closer than `least`. */
function rowsIn(count: number, room: number, least: number): number {
    const fits = (rows: number): boolean => count % rows === 0 && (rows - 1) * least <= room;
    return Array.from({ length: count }, (_, i) => count - i).find(fits) ?? 1;
}
