/** Rolled I, H and channel sections and flats by their designation. */
import { sectionFromGeometry, type SteelSection } from './section-geometry.js';
import { heaRows, hebRows, ipeRows, upnRows, type RowOrigin } from './tables/rolled-sections.js';

export { sectionFromGeometry, type SteelSection } from './section-geometry.js';

const origins: Record<RowOrigin, string> = {
    seen: 'EN 10365 dimensions seen in TU Delft "Structural Design Essentials", section tables; root radius from memory; properties from geometry',
    memory: 'EN 10365 dimensions from memory; properties from geometry'
};

const channelOrigin = 'EN 10365 h, b, tw seen in TU Delft "Structural Design Essentials", section tables; tf, It, Iw from memory; others from geometry';

function build(): ReadonlyMap<string, SteelSection> {
    const sections = [
        ...Object.entries({ ...ipeRows, ...heaRows, ...hebRows }).map(([name, [h, b, tw, tf, r, mass, origin]]) =>
            sectionFromGeometry(name, { shape: 'I', h, b, tw, tf, r }, origins[origin], mass / 1000)),
        ...Object.entries(upnRows).map(([name, [h, b, tw, tf, r, mass, It, Iw]]) =>
            sectionFromGeometry(name, { shape: 'channel', h, b, tw, tf, r, It, Iw }, channelOrigin, mass / 1000))
    ];
    return new Map(sections.flatMap(section => section ? [[section.name, section]] : []));
}

const sections = build();

/** Every designation that the table holds, in its order: `IPE 80` … `UPN 300`. */
export const rolledNames: readonly string[] = [...sections.keys()];

/**
 * A section by what a person writes: `IPE 200`, `ipe200`, `HEA 140`, `HE 140 A`, `UPN 160`, or a flat
 * standing on its edge, depth first: `190 x 10` (mm). Undefined where there is none of that name.
 */
export function rolledSection(designation: string): SteelSection | undefined {
    const text = designation.trim().toUpperCase().replace(/\s+/g, ' ');
    const flat = /^(\d+(?:\.\d+)?) ?[X×] ?(\d+(?:\.\d+)?)(?: ?MM)?$/.exec(text);
    if (flat) {
        return flatSection(Number(flat[1]), Number(flat[2]));
    }
    const european = /^HE ?(\d+) ?([AB])$/.exec(text);
    const plain = /^(IPE|HEA|HEB|UPN) ?(\d+)$/.exec(text);
    return sections.get(european ? `HE${european[2]} ${european[1]}` : plain ? `${plain[1]} ${plain[2]}` : text);
}

/** A flat of depth h and thickness t, mm, standing on its edge. Undefined unless 0 < t <= h. */
export function flatSection(h: number, t: number): SteelSection | undefined {
    return sectionFromGeometry(`${h} x ${t}`, { shape: 'plate', h, t }, 'geometry');
}
