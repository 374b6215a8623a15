import { distancesClause } from '../checks/en1995/fasteners/distances.js';
import type { CheckResult } from '../results.js';
import type { HazardRule } from './hazard-rule.js';
import { joined } from './telling.js';

/** Timber splits from a bolt too near its end or edge, before any strength that was computed: EN 1995-1-1 Table 8.4. */
export const boltsNearEdge: HazardRule = {
    code: 'bolts-near-edge',
    find: ({ checks }) => {
        const near = checks.filter(check => !check.pass && isOfDistances(check));
        const once = [...new Map(near.map(check => [check.id, check])).values()];
        return once.length === 0 ? [] : [{
            severity: 'warn',
            subject: joined(once.map(({ subject }) => subject)),
            message: `Bolts or rods stand too near an end, an edge or each other: ${once.map(({ id, steps }) => `${id} (${steps[0]?.note ?? ''})`).join('; ')}`,
            action: 'Move them before anything is drilled: a leaf that splits is to be replaced.',
            decider: 'you',
            source: once[0]!.source
        }];
    }
};

/** The check of a hanger's edges is all of distances; that of bolts where a distance governs it. */
function isOfDistances({ check, steps }: CheckResult): boolean {
    return check === 'edge' || (check === 'plies' && steps.some(({ clause }) => clause === distancesClause));
}
