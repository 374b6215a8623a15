import type { Member } from '../../../language/src/model.js';

/** What the analysis needs of a material: mean values. */
export interface ElasticProperties {
    /** MPa. */
    readonly E: number;
    /** MPa. */
    readonly G: number;
    /** kg/m³. */
    readonly density: number;
    /** EN 1995-1-1 Table 3.2. */
    readonly kdef: number;
}

export type PropertiesOf = (member: Member) => ElasticProperties | undefined;
