import type { Model } from '../../../language/src/model.js';
import { isGroup1, masonryStrength } from '../catalog/masonry.js';
import type { MasonryBearing } from '../checks/check.js';

/** What a bearing on this wall stands on; undefined where the file does not say what the wall is of. */
export function masonryBearing(model: Model, wallName: string): MasonryBearing | undefined {
    const wall = model.walls.find(candidate => candidate.name === wallName);
    const material = model.materials.find(candidate => candidate.kind === 'masonry' && candidate.name === wall?.material);
    if (!wall?.thickness || material?.kind !== 'masonry') {
        return undefined;
    }
    const fk = masonryStrength(material);
    return fk === undefined ? undefined : {
        fk, group1: isGroup1(material), thickness: wall.thickness.value, height: wall.height?.value, source: material.source, input: material.fk
    };
}
