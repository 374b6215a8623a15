/**
 * What can hurt someone or the building. One file, one rule, named as its code; the source of each stands at its head.
 * `stop` forbids a pass until it is answered, `warn` is to be settled before the work, `note` is to be known.
 *
 * | code                     | severity    | fires when                                                                     |
 * |--------------------------|-------------|--------------------------------------------------------------------------------|
 * | uplift-not-tied          | stop        | a bearing that is not tied lifts, EN 1990 EQU                                  |
 * | stage-unsupported        | stop        | the file has stages and the analysis finds a mechanism                         |
 * | work-in-failing-stage    | stop        | a check of strength fails in a stage that another follows                      |
 * | stage-fails              | stop        | any check fails in the last stage, or in an earlier one a check of use alone   |
 * | removed-before-relief    | stop        | a stage takes out what had load on it, or a pull in it, at the end of the last |
 * | hanger-slack             | stop        | a hanger would push in some combination                                        |
 * | prop-lifts-off           | stop        | a prop would pull in some combination                                          |
 * | proof-load-in-doubt      | stop        | readings of a load test speak against its member                               |
 * | prop-under-loss          | stop / warn | a prop stands at a loss: of the bottom / of other faces                        |
 * | leaves-broken-together   | stop        | every leaf is broken within one depth                                          |
 * | prop-footing-unknown     | warn        | always with a prop                                                             |
 * | jacked-too-far           | warn        | a prop lifts more than 1/500 of the span                                       |
 * | proof-load               | warn        | always with a load test                                                        |
 * | loss-not-probed          | warn        | a loss is not probed, measured or tested                                       |
 * | break-even-close         | warn        | a check fails within 10 mm or 20 % more of a loss than given                   |
 * | damp-source-open         | warn        | something is decayed and the survey has no stopped source of damp              |
 * | timber-wet               | warn        | a timber has 20 % moisture or more                                             |
 * | notch-in-field           | warn        | a notch reaches into the middle half of a span                                 |
 * | hole-in-field            | warn        | so does a hole above a quarter of the depth, or out of its middle third        |
 * | bearing-short            | warn        | a bearing is under 90 mm on a wall or 40 mm on timber                          |
 * | bearing-on-weak-masonry  | warn        | a member bears on masonry that is assumed, or under 1 MPa                      |
 * | bearing-near-opening     | warn        | `from end` is less than the wall's thickness                                   |
 * | bolts-near-edge          | warn        | a distance of Table 8.4 fails `plies`, or `edge` fails                         |
 * | grade-judged             | warn        | a judged or assumed grade, and a check of strength above 80 %                  |
 * | piece-too-long           | warn / note | a piece is longer than the access: with / without stages that say what is new  |
 * | piece-too-heavy          | warn / note | so with its mass, by the file's limit or two people's at ISO 11228-1's 25 kg   |
 * | services-unknown         | warn / note | services are not checked: with / without bolts, hangers, holes or splices      |
 * | old-finishes-unknown     | warn        | asbestos or lead is not checked                                                |
 * | attic-floor-not-boarded  | warn        | the survey has an open line on the attic's floor or its boards                 |
 * | heritage-consent-open    | warn        | the survey has a line on consent, and it is not given                          |
 * | tightening-dries-out     | warn / note | drying takes of a hanger's tightening: half and more / less                    |
 * | loss-edge-sharp          | note        | a loss takes more than a sixth of the depth                                    |
 * | splice-play              | note        | a splice has cover, web or flange plates                                       |
 * | steel-bare-in-fire       | note        | there is a hanger, a rolled member or a flitch beam                            |
 * | tannin-on-steel          | note        | a hardwood of class D, oak or chestnut is bolted or hung                       |
 * | dissimilar-metals        | note        | old iron is spliced or hung by new steel, not in service class 1               |
 * | engineer-must-sign       | note        | a later stage adds or removes a member, or a hanger joins two                  |
 */
import type { Hazard } from '../results.js';
import type { HazardContext, HazardRule, LateContext, LateHazardRule } from './hazard-rule.js';
import { atticFloorNotBoarded } from './attic-floor-not-boarded.js';
import { bearingNearOpening } from './bearing-near-opening.js';
import { bearingOnWeakMasonry } from './bearing-on-weak-masonry.js';
import { bearingShort } from './bearing-short.js';
import { boltsNearEdge } from './bolts-near-edge.js';
import { breakEvenClose } from './break-even-close.js';
import { dampSourceOpen } from './damp-source-open.js';
import { dissimilarMetals } from './dissimilar-metals.js';
import { engineerMustSign } from './engineer-must-sign.js';
import { gradeJudged } from './grade-judged.js';
import { hangerSlack } from './hanger-slack.js';
import { heritageConsentOpen } from './heritage-consent-open.js';
import { holeInField } from './hole-in-field.js';
import { jackedTooFar } from './jacked-too-far.js';
import { leavesBrokenTogether } from './leaves-broken-together.js';
import { lossEdgeSharp } from './loss-edge-sharp.js';
import { lossNotProbed } from './loss-not-probed.js';
import { notchInField } from './notch-in-field.js';
import { oldFinishesUnknown } from './old-finishes-unknown.js';
import { pieceTooHeavy } from './piece-too-heavy.js';
import { pieceTooLong } from './piece-too-long.js';
import { proofLoad } from './proof-load.js';
import { proofLoadInDoubt } from './proof-load-in-doubt.js';
import { propFootingUnknown } from './prop-footing-unknown.js';
import { propLiftsOff } from './prop-lifts-off.js';
import { propUnderLoss } from './prop-under-loss.js';
import { removedBeforeRelief } from './removed-before-relief.js';
import { servicesUnknown } from './services-unknown.js';
import { splicePlay } from './splice-play.js';
import { stageFails } from './stage-fails.js';
import { stageUnsupported } from './stage-unsupported.js';
import { steelBareInFire } from './steel-bare-in-fire.js';
import { tanninOnSteel } from './tannin-on-steel.js';
import { tighteningDriesOut } from './tightening-dries-out.js';
import { timberWet } from './timber-wet.js';
import { upliftNotTied } from './uplift-not-tied.js';
import { workInFailingStage } from './work-in-failing-stage.js';

export { applyAnswers, type AnsweredHazards } from './apply-answers.js';

/** Within one severity, in this order. */
export const hazardRules: readonly HazardRule[] = [
    upliftNotTied, stageUnsupported, workInFailingStage, stageFails, removedBeforeRelief, hangerSlack, propLiftsOff,
    propUnderLoss, leavesBrokenTogether, propFootingUnknown, jackedTooFar, proofLoad,
    lossNotProbed, dampSourceOpen, timberWet, notchInField, holeInField,
    bearingShort, bearingOnWeakMasonry, bearingNearOpening, boltsNearEdge, gradeJudged,
    pieceTooLong, pieceTooHeavy, servicesUnknown, oldFinishesUnknown, atticFloorNotBoarded, heritageConsentOpen,
    tighteningDriesOut, lossEdgeSharp, splicePlay, steelBareInFire, tanninOnSteel, dissimilarMetals, engineerMustSign
];

/** Of what is only found after the checks. */
export const lateHazardRules: readonly LateHazardRule[] = [proofLoadInDoubt, breakEvenClose];

/** Every hazard, rule by rule; `applyAnswers` puts the worst first. */
export function findHazards(context: HazardContext): Hazard[] {
    return hazardsBy(hazardRules, context);
}

export function findLateHazards(context: LateContext): Hazard[] {
    return hazardsBy(lateHazardRules.filter(({ needs }) => context[needs] !== undefined), context);
}

/** Whether nobody can say yet that a hazard does not arise. */
export function isUndecided(code: string, context: LateContext): boolean {
    return lateHazardRules.some(rule => rule.code === code && context[rule.needs] === undefined);
}

function hazardsBy<Context>(rules: readonly HazardRule<Context>[], context: Context): Hazard[] {
    return rules.flatMap(rule => rule.find(context).map(hazard => ({ code: rule.code, ...hazard })));
}
