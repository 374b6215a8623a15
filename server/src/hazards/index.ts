import type { Hazard } from '../results.js';
import type { HazardContext, HazardRule } from './hazard-rule.js';
import { dampSourceOpen } from './damp-source-open.js';
import { gradeJudged } from './grade-judged.js';
import { heritageConsentOpen } from './heritage-consent-open.js';
import { lossEdgeSharp } from './loss-edge-sharp.js';
import { lossNotProbed } from './loss-not-probed.js';
import { notchInField } from './notch-in-field.js';
import { oldFinishesUnknown } from './old-finishes-unknown.js';
import { servicesUnknown } from './services-unknown.js';
import { timberWet } from './timber-wet.js';
import { upliftNotTied } from './uplift-not-tied.js';

export const hazardRules: readonly HazardRule[] = [
    upliftNotTied, lossNotProbed, dampSourceOpen, timberWet, notchInField, lossEdgeSharp,
    gradeJudged, servicesUnknown, oldFinishesUnknown, heritageConsentOpen
];

const order = ['stop', 'warn', 'note'] as const;

/** Every hazard, the worst first. */
export function findHazards(context: HazardContext): Hazard[] {
    return hazardRules
        .flatMap(rule => rule.find(context).map(hazard => ({ code: rule.code, ...hazard })))
        .sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
}
