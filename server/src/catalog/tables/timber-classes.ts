import type { TimberStrength } from '../timber-strength.js';
import { combinedGlulamClasses } from './en14080-combined.js';
import { homogeneousGlulamClasses } from './en14080-homogeneous.js';
import { hardwoodClasses } from './en338-hardwood.js';
import { softwoodClasses } from './en338-softwood.js';

/** Every strength class that is known, by name. */
export const timberClasses: ReadonlyMap<string, TimberStrength> = new Map([
    ...softwoodClasses, ...hardwoodClasses, ...homogeneousGlulamClasses, ...combinedGlulamClasses
]);
