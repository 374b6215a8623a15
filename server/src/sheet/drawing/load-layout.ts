/** Where the loads of a member are drawn: single ones nearest to it, the others in bands above, all to scale among their kind. */
import type { SourceRef } from '../../../../language/src/model.js';
import type { LoadSketch } from '../../results.js';
import { amount, force } from '../numbers.js';
import type { Frame } from './frame.js';
import { labelName, placeFlags, rowHeight, stack, textWidth, type PlacedFlag } from './labels.js';

export interface PointArrow extends PlacedFlag {
    readonly x: number;
    /** Length of the arrow. */
    readonly size: number;
    readonly upwards: boolean;
    readonly label: string;
    readonly source: SourceRef;
}

export interface Band {
    readonly from: number;
    readonly to: number;
    /** Distance of its foot from the member's face. */
    readonly foot: number;
    readonly size: number;
    readonly upwards: boolean;
    readonly label: string;
    readonly labelWidth: number;
    readonly source: SourceRef;
}

export interface LoadLayout {
    readonly points: readonly PointArrow[];
    /** Distance from the face of the lowest row of the points' labels. */
    readonly firstRow: number;
    readonly bands: readonly Band[];
    readonly height: number;
}

const pointSize = { least: 14, most: 30 };
const bandSize = { least: 6, most: 18 };

/** @param clear distance from the face that bands keep */
export function layOutLoads(frame: Frame, loads: readonly LoadSketch[], clear: number): LoadLayout {
    const { points, firstRow, height } = layOutPoints(frame, loads);
    return { points, firstRow, ...layOutBands(frame, loads, Math.max(height, clear)) };
}

function layOutPoints(frame: Frame, loads: readonly LoadSketch[]): { points: PointArrow[]; firstRow: number; height: number } {
    const found = loads.flatMap(({ name, point, source }) => point ? [{ name, ...point, source }] : []);
    const sizeOf = sizes(found.map(point => point.force), pointSize);
    const flags = found.map(({ name, force: newtons, at }) => {
        const label = `${labelName(name)} ${force(newtons / 1000)}`;
        return { x: frame.along(at) - sizeOf(newtons) * frame.down[0], width: textWidth(label), label };
    });
    const placed = placeFlags(flags, { from: -20, to: frame.length + 20 });
    const firstRow = found.length > 0 ? Math.max(...found.map(point => sizeOf(point.force))) + 2 : 0;
    const rows = Math.max(0, ...placed.map(flag => flag.row + 1));
    return {
        points: found.map((point, i) => ({
            ...placed[i]!, x: frame.along(point.at), size: sizeOf(point.force), upwards: point.force < 0, label: flags[i]!.label, source: point.source
        })),
        firstRow,
        height: found.length > 0 ? firstRow + rows * rowHeight + 4 : 0
    };
}

function layOutBands(frame: Frame, loads: readonly LoadSketch[], start: number): { bands: Band[]; height: number } {
    const found = loads.flatMap(({ name, line, source }) => line ? [{ name, ...line, source }] : []);
    const sizeOf = sizes(found.map(band => band.perLength), bandSize);
    const labelled = found.map(band => {
        const label = `${labelName(band.name)} ${amount({ value: band.perLength, unit: 'kN/m' })}`;
        const from = frame.along(band.from);
        const to = frame.along(band.to);
        return { from, to, label, labelWidth: textWidth(label), size: sizeOf(band.perLength), upwards: band.perLength < 0, source: band.source };
    });
    const rows = stack(labelled.map(({ from, to, labelWidth }) => ({ from, to: Math.max(to, from + labelWidth) + 4 })));
    const feet: number[] = [];
    let height = start;
    for (let row = 0; row <= Math.max(-1, ...rows); row += 1) {
        feet.push(height + 5);
        height += 5 + Math.max(...labelled.filter((_, i) => rows[i] === row).map(band => band.size)) + rowHeight;
    }
    return { bands: labelled.map((band, i) => ({ ...band, foot: feet[rows[i]!]! })), height };
}

/** To scale, but never too short to see. */
function sizes(values: readonly number[], { least, most }: { readonly least: number; readonly most: number }): (value: number) => number {
    const greatest = Math.max(...values.map(Math.abs), 0);
    return value => greatest > 0 && Number.isFinite(greatest) ? Math.max(least, most * (Math.abs(value) / greatest)) : least;
}
