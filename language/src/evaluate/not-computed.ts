/** What this version understands but does not compute. Taking a row out says that it is computed from now on. */
import type { SourceRef } from '../model.js';
import type { Context } from './context.js';

export type Construct =
    'plies' | 'ply' | 'bolts' | 'leaves' | 'flitch' | 'steel' | 'splices' | 'holes' | 'weakenings' | 'hangers' | 'stages' | 'prop under a loss'
    | 'include' | 'use' | 'fire' | 'band';

const reasons: Readonly<Partial<Record<Construct, string>>> = {
    weakenings: 'losses and notches are computed in members of one piece of timber alone',
    'prop under a loss': 'a prop that bears on wood that is lost is not computed',
    include: 'included files are not read here',
    use: 'the detail is in a file that is not read here',
    fire: 'fire is not computed in this version',
    band: 'what is worked out from a band, and a proof load, have its middle alone'
};

/** Names a thing once, however often it is said. */
export function notComputed(context: Context, construct: Construct, what: string, members: readonly string[], at: SourceRef): void {
    const why = reasons[construct];
    if (why !== undefined && !context.notComputed.has(what)) {
        context.notComputed.set(what, { what, why, members: [...new Set(members)], source: at });
    }
}
