import type { BoltRow, Hanger, Member, Splice } from '../../../language/src/model.js';

/** What the analysis needs of a member's material and section: mean values. */
export interface ElasticProperties {
    /** MPa. */
    readonly E: number;
    /** MPa. */
    readonly G: number;
    /** kg/m³. */
    readonly density: number;
    /** EN 1995-1-1 Table 3.2; 0 for steel. */
    readonly kdef: number;
    /** Of a section that is neither a rectangle nor leaves (rolled, flitch): it stands before E, G and the density. */
    readonly section?: WholeSection;
    /** K_ser of one bolt of a row between two leaves, N/mm (EN 1995-1-1 Table 7.1). */
    readonly slip?: (row: BoltRow) => number | undefined;
    /** Rotational stiffness of a splice, N·mm/rad; where none is given the member runs through. */
    readonly splice?: (splice: Splice) => number | undefined;
}

export interface WholeSection {
    readonly instant: SectionStiffness;
    readonly final: SectionStiffness;
    /** kg/mm. */
    readonly mass: number;
    /** Outer sizes, mm. */
    readonly breadth: number;
    readonly depth: number;
}

/** N, N·mm², N (on the shear area). */
export interface SectionStiffness { readonly EA: number; readonly EI: number; readonly GA: number }

/** Rods, plates and timber of a hanger in series, N/mm. */
export interface HangerElasticity {
    readonly initial: number;
    /** After the timbers under the plates have crept. */
    readonly final: number;
}

/** Undefined where the stiffness is not known: then the member or the pair has no results. */
export interface PropertiesOf {
    readonly member: (member: Member) => ElasticProperties | undefined;
    readonly hanger: (hanger: Hanger) => HangerElasticity | undefined;
}
