import type { Support } from '../../../../language/src/model.js';
import type { Step } from '../../results.js';
import type { AnyMember, AnyMemberCheck, MasonryBearing, Outcome } from '../check.js';
import { patchesOf, type Patch } from '../en1995/contacts.js';
import { worstOf } from '../governing.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { concentratedLoadResistance, loadSpread, type LoadSpread } from './concentrated-load.js';

interface WallContact {
    readonly contact: Patch;
    readonly wall: MasonryBearing;
    readonly support: Support | undefined;
    /** No further than through the wall. */
    readonly across: number;
    readonly area: number;
    readonly fd: number;
    readonly spread: LoadSpread | undefined;
    readonly whyNoSpread: string;
}

export const masonry: AnyMemberCheck = {
    name: 'masonry',
    clause: 'EN 1996-1-1 6.1.3',
    outcomes: context => wallContacts(context).flatMap(at => worstAt(context, at) ?? []),
    lacking: context => context.actions.supports
        .filter(({ kind, support }) => kind === 'wall' && !context.masonryOf(support))
        .map(({ support }) => `masonry under ${support}: its strength or thickness is not given`)
};

function wallContacts(context: AnyMember): readonly WallContact[] {
    const gammaM = (): number => context.parameters.gammaM('masonry');
    return patchesOf(context).flatMap(contact => {
        const wall = contact.on.kind === 'wall' ? context.masonryOf(contact.on.support) : undefined;
        if (!wall) {
            return [];
        }
        const support = context.member.supports.find(({ on, at }) => on === contact.on.support && at.value === contact.on.at);
        const across = Math.min(contact.length, wall.thickness);
        const found = spreadOf(wall, support, contact.width, across);
        return [{
            contact, wall, support, across,
            area: across * contact.width,
            fd: wall.fk / gammaM(),
            spread: typeof found === 'string' ? undefined : found,
            whyNoSpread: typeof found === 'string' ? found : ''
        }];
    });
}

/** The spread under the load where its conditions are known to hold, or why β = 1 is taken. The bearing is taken to begin at the wall's face. */
function spreadOf(wall: MasonryBearing, support: Support | undefined, along: number, across: number): LoadSpread | string {
    if (!wall.group1) {
        return 'the units are not known to be of Group 1';
    }
    if ((wall.thickness - across) / 2 > wall.thickness / 4) {
        return 'the load stands more than a quarter of the thickness off the axis of the wall';
    }
    if (wall.height === undefined || !support?.fromWallEnd) {
        return 'the height of the wall or the distance to its end is not given';
    }
    return loadSpread({ along, across, thickness: wall.thickness, hc: wall.height, a1: support.fromWallEnd.value });
}

function worstAt({ parameters }: AnyMember, at: WallContact): Outcome | undefined {
    const resistance = concentratedLoadResistance(at.spread?.beta ?? 1, at.area, at.fd);
    return worstOf(at.contact.on.states.map(({ combination, R }): Outcome => {
        const N = Math.max(0, R);
        return {
            utilisation: quotient(N, resistance),
            demand: amount(N / 1000, 'kN'),
            capacity: amount(resistance / 1000, 'kN'),
            combination,
            at: at.contact.on.at,
            explain: () => explain(at, N, resistance, parameters.gammaM('masonry'))
        };
    }));
}

function explain(at: WallContact, N: number, resistance: number, gammaM: number): readonly Step[] {
    const { wall, area, across, contact, fd, spread } = at;
    return [
        step('f_d', '\\frac{f_k}{\\gamma_M}', [
            term('f_k', wall.fk, 'MPa', undefined, wall.input?.source ?? wall.source), term('\\gamma_M', gammaM, '', 'EN 1996-1-1 2.4.3')
        ], amount(fd, 'MPa')),
        step('A_b', 'l b', [term('l', across, 'mm', 'into the wall', contact.on.source), term('b', contact.width, 'mm', 'along the wall')], amount(area, 'mm2'),
            { note: 'the wall away from the bearing (its own load, bending and buckling) is not part of this' }),
        ...N > resistance ? [padstoneStep(at, N)] : [],
        spread ? spreadStep(at, spread) : step('\\beta', '1', [], amount(1, ''), { clause: 'EN 1996-1-1 6.1.3', note: at.whyNoSpread }),
        step('N_{Rdc}', '\\beta A_b f_d', [term('\\beta', spread?.beta ?? 1), term('A_b', area, 'mm2'), term('f_d', fd, 'MPa')],
            amount(resistance / 1000, 'kN'), { clause: 'EN 1996-1-1 (6.10)' }),
        utilisationStep(term('N_{Edc}', N / 1000, 'kN', contact.place), term('N_{Rdc}', resistance / 1000, 'kN'), 'EN 1996-1-1 (6.9)')
    ];
}

function spreadStep({ wall, support }: WallContact, { share, beta }: LoadSpread): Step {
    const a1 = term('a_1', support?.fromWallEnd?.value ?? NaN, 'mm', 'to the end of the wall', support?.fromWallEnd?.source);
    return step('\\beta', '\\max(1, \\min((1 + 0.3 \\frac{a_1}{h_c}) (1.5 - 1.1 r), 1.25 + \\frac{a_1}{2 h_c}, 1.5))', [
        a1, term('h_c', wall.height ?? NaN, 'mm', 'height of the wall'), term('r', share, '', 'A_b / A_ef, load spread at 60°')
    ], amount(beta, ''), { clause: 'EN 1996-1-1 (6.11)' });
}

/** What would do: the same stress without any help of the wall around it, spread by a stone at 45°. Common practice, no source. */
function padstoneStep({ across, contact, fd }: WallContact, N: number): Step {
    const length = N / (across * fd);
    return step('L_p', '\\frac{N_{Edc}}{l f_d}', [
        term('N_{Edc}', N / 1000, 'kN', contact.place), term('l', across, 'mm', 'into the wall'), term('f_d', fd, 'MPa')
    ], amount(length, 'mm'), {
        clause: 'common practice, no source',
        note: `a padstone at least ${roundUp(length, 10)} mm long along the wall and ${roundUp((length - contact.width) / 2, 5)} mm thick, the member on its middle, would carry it`
    });
}

const roundUp = (value: number, to: number): number => Math.ceil(value / to - 1e-9) * to;
