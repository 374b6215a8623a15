import type { MemberCheck } from './check.js';
import { bearing } from './en1995/bearing.js';
import { bending } from './en1995/bending.js';
import { final } from './en1995/final.js';
import { instant } from './en1995/instant.js';
import { shear } from './en1995/shear.js';

/** Every check of a timber member, in the order that a sheet shows them. */
export const memberChecks: readonly MemberCheck[] = [bending, shear, bearing, instant, final];
