/**
 * Properties of a steel section from its outline, root radii included: mm, mm², mm³, mm⁴, mm⁶.
 * y is the strong axis, z the weak one, as in EN 1993-1-1 1.7.
 */
import { channelProperties } from './channel-geometry.js';

export interface IOutline {
    readonly shape: 'I';
    readonly h: number;
    readonly b: number;
    readonly tw: number;
    readonly tf: number;
    /** Root radius; 0 where there is none. */
    readonly r: number;
}

/** A rolled channel whose flanges taper by 8 %: tf is at half their breadth. */
export interface ChannelOutline extends Omit<IOutline, 'shape'> {
    readonly shape: 'channel';
    /** Not computed: from the table. */
    readonly It: number;
    readonly Iw: number;
}

/** A flat that stands on its edge. */
export interface PlateOutline {
    readonly shape: 'plate';
    readonly h: number;
    readonly t: number;
}

export type Outline = IOutline | ChannelOutline | PlateOutline;

export interface SectionProperties {
    readonly A: number;
    readonly Iy: number;
    readonly Iz: number;
    readonly Wely: number;
    readonly Wply: number;
    readonly It: number;
    readonly Iw: number;
    /** Shear area for a force along the web, EN 1993-1-1 6.2.6(3) with η = 1.0; a plate's is elastic, 6.2.6(4). */
    readonly Avz: number;
    readonly iy: number;
    readonly iz: number;
}

export interface SteelSection extends SectionProperties {
    /** `IPE 200`, `190 x 10`. */
    readonly name: string;
    readonly shape: Outline['shape'];
    readonly h: number;
    readonly b: number;
    readonly tw: number;
    readonly tf: number;
    readonly r: number;
    /** kg/mm. */
    readonly mass: number;
    /** Where the outline comes from. */
    readonly origin: string;
}

/** kg/mm³, EN 1991-1-1 Table A.4 (78.5 kN/m³, from memory). */
const steelDensity = 7.85e-6;

/**
 * The section with that outline, or undefined where the measures make none
 * (not positive, flanges that meet, a radius larger than the room for it).
 * @param mass kg/mm; A times 7850 kg/m³ unless given.
 */
export function sectionFromGeometry(name: string, outline: Outline, origin: string, mass?: number): SteelSection | undefined {
    if (!isSound(outline)) {
        return undefined;
    }
    const { Iy, Iz, A, ...others } = propertiesOf(outline);
    const sides = outline.shape === 'plate' ? { b: outline.t, tw: outline.t, tf: 0, r: 0 } : outline;
    return {
        name, origin, shape: outline.shape, h: outline.h, b: sides.b, tw: sides.tw, tf: sides.tf, r: sides.r,
        mass: mass ?? A * steelDensity,
        A, Iy, Iz, ...others, iy: Math.sqrt(Iy / A), iz: Math.sqrt(Iz / A)
    };
}

type Computed = Omit<SectionProperties, 'iy' | 'iz'>;

function propertiesOf(outline: Outline): Computed {
    switch (outline.shape) {
        case 'I': return iProperties(outline);
        case 'channel': return { ...channelProperties(outline), It: outline.It, Iw: outline.Iw };
        case 'plate': return plateProperties(outline);
    }
}

function isSound(outline: Outline): boolean {
    if (outline.shape === 'plate') {
        return positive(outline.h, outline.t) && outline.h >= outline.t;
    }
    const { h, b, tw, tf, r } = outline;
    const outstand = outline.shape === 'I' ? (b - tw) / 2 : b - tw;
    return positive(h, b, tw, tf) && r >= 0 && h > 2 * tf && b > tw && r <= outstand && r <= h / 2 - tf
        && (outline.shape === 'I' || positive(outline.It, outline.Iw));
}

const positive = (...values: readonly number[]): boolean => values.every(value => Number.isFinite(value) && value > 0);

/** One root fillet: the corner of an r-square less a quarter circle. First and second moments are about the corner. */
export function fillet(r: number): { area: number; first: number; second: number } {
    return { area: (1 - Math.PI / 4) * r ** 2, first: (5 / 6 - Math.PI / 4) * r ** 3, second: (1 - 5 * Math.PI / 16) * r ** 4 };
}

function iProperties({ h, b, tw, tf, r }: IOutline): Computed {
    const corner = fillet(r);
    const hw = h - 2 * tf;
    const A = 2 * b * tf + hw * tw + 4 * corner.area;
    const Iy = (b * h ** 3 - (b - tw) * hw ** 3) / 12
        + 4 * (corner.area * (hw / 2) ** 2 - hw * corner.first + corner.second);
    const Iz = (2 * tf * b ** 3 + hw * tw ** 3) / 12
        + 4 * (corner.area * (tw / 2) ** 2 + tw * corner.first + corner.second);
    const Wply = b * tf * (h - tf) + tw * hw ** 2 / 4 + 4 * (corner.area * hw / 2 - corner.first);
    return {
        A, Iy, Iz, Wely: 2 * Iy / h, Wply,
        It: iTorsion({ b, tw, tf, r, hw }),
        Iw: tf * b ** 3 * (h - tf) ** 2 / 24,
        Avz: Math.max(A - 2 * b * tf + (tw + 2 * r) * tf, hw * tw)
    };
}

/**
 * St Venant's constant of a rolled I with the two junctions' circles
 * (El Darwish and Johnston 1965, from memory; it gives the tabulated values, see tests/steel).
 */
function iTorsion({ b, tw, tf, r, hw }: { b: number; tw: number; tf: number; r: number; hw: number }): number {
    const circle = ((r + tw / 2) ** 2 + (r + tf) ** 2 - r ** 2) / (2 * r + tf);
    const junction = 2 * (tw / tf) * (0.145 + 0.1 * r / tf) * circle ** 4;
    return 2 / 3 * (b - 0.63 * tf) * tf ** 3 + hw * tw ** 3 / 3 + junction;
}

/** Shear: elastic, 1.5 V / A (EN 1993-1-1 6.2.6(4)). Torsion: h t³/3 (1 - 0.63 t/h (1 - t⁴/12h⁴)), Roark, from memory. */
function plateProperties({ h, t }: PlateOutline): Computed {
    const Iy = t * h ** 3 / 12;
    const slim = t / h;
    return {
        A: h * t, Iy, Iz: h * t ** 3 / 12, Wely: t * h ** 2 / 6, Wply: t * h ** 2 / 4,
        It: h * t ** 3 / 3 * (1 - 0.63 * slim * (1 - slim ** 4 / 12)), Iw: 0, Avz: h * t / 1.5
    };
}
