import type { Masonry } from '../../../language/src/model.js';
import { masonryUnits } from './tables/masonry-factors.js';

/**
 * Characteristic strength with general purpose mortar, EN 1996-1-1 (3.2) and 3.6.1.2(2).
 * @param K Table 3.3
 * @param fb normalised mean strength of the units, MPa, counted up to 75
 * @param fm strength of the mortar, MPa, counted up to 20 and up to 2 fb
 */
export function masonryCharacteristicStrength(K: number, fb: number, fm: number): number {
    const unit = Math.min(fb, 75);
    return K * unit ** 0.7 * Math.min(fm, 20, 2 * unit) ** 0.3;
}

/** Joints along the face, as every wall thicker than one leaf of bricks has: EN 1996-1-1 3.6.1.2(6). */
export const longitudinalJointFactor = 0.8;

/**
 * f_k in MPa, as given or by EN 1996-1-1 3.6.1.2 from unit and mortar; undefined where neither is
 * known. Old walls are of more than one leaf, so a value from unit and mortar has K reduced to 0.8 K.
 */
export function masonryStrength(masonry: Masonry): number | undefined {
    if (masonry.fk) {
        return masonry.fk.value;
    }
    const unit = masonry.unit && masonryUnits[masonry.unit.kind];
    return masonry.unit && unit
        ? masonryCharacteristicStrength(longitudinalJointFactor * unit.K, masonry.unit.strength.value, masonry.unit.mortar.value)
        : undefined;
}

/** Whether the units are known to be of Group 1 (solid), which EN 1996-1-1 6.1.3(2) favours under a concentrated load. */
export function isGroup1(masonry: Masonry): boolean {
    return masonry.unit !== undefined && masonryUnits[masonry.unit.kind]?.group === 1;
}
