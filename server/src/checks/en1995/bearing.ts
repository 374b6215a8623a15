import type { Step } from '../../results.js';
import type { Combination } from '../../analysis/actions.js';
import type { MemberCheck, MemberContext, Outcome } from '../check.js';
import { worstOf } from '../governing.js';
import { amount, quotient, step, term, utilisationStep } from '../steps.js';
import { compressionStrengthAtAngle } from './contact.js';
import { contactsOf, contactsWithoutLength, type Contact } from './contacts.js';
import { designStrengthStep, durationFactors, strengthTerm } from './design-strength.js';
import { wholeSection } from './section.js';
import { negligibleForce } from './free-length.js';

/** Stress under a force R (N) over an effective length and a width (mm), MPa. */
export function bearingStress(R: number, effectiveLength: number, width: number): number {
    return R / (effectiveLength * width);
}

export const bearing: MemberCheck = {
    name: 'bearing',
    clause: 'EN 1995-1-1 6.1.5',
    outcomes: context => {
        const factorOf = durationFactors(context);
        return contactsOf(context).flatMap(contact => worstAt(context, contact, factorOf) ?? []);
    },
    lacking: context => [
        ...contactsWithoutLength(context).map(({ support, at }) => `bearing on ${support} at ${(at / 1000).toFixed(2)} m: the length of the bearing is not given`),
        ...context.actions.supports.filter(({ tied, design }) => tied && design.min < 0)
            .map(({ support }) => `bearing on ${support}: the tie that holds it down`),
        ...context.actions.supports.filter(({ horizontal }) => horizontal && Math.max(horizontal.max, -horizontal.min) > negligibleForce)
            .map(({ support }) => `bearing on ${support}: what takes its horizontal force`)
    ]
};

function worstAt(context: MemberContext, contact: Contact, factorOf: ReturnType<typeof durationFactors>): Outcome | undefined {
    const { strength } = context;
    const characteristic = compressionStrengthAtAngle(strength.fc0_k, strength.fc90_k, contact.kc90, contact.angle);
    const uneven = unevenness(context, contact);
    return worstOf(contact.on.states.map(({ combination, R }): Outcome => {
        const pressing = uneven * Math.max(0, R);
        const demand = bearingStress(pressing, contact.effective, contact.width);
        const capacity = characteristic * factorOf(combination.duration);
        return {
            utilisation: quotient(demand, capacity),
            demand: amount(demand, 'MPa'),
            capacity: amount(capacity, 'MPa'),
            combination,
            at: contact.on.at,
            explain: () => explain(context, contact, combination, { R: Math.max(0, R), uneven, demand })
        };
    }));
}

/** How much more the leaf that bears most has than the mean of those that bear: by the jumps of their shear; 1 of one piece. */
function unevenness({ actions }: MemberContext, { on }: Contact): number {
    if (!actions.leaves) {
        return 1;
    }
    const jumps = actions.leaves.map(({ leaf }) => {
        const here = actions.stations.filter(station => station.leaf === leaf && Math.abs(station.x - on.at) < touching)
            .flatMap(({ states }) => states);
        return here.reduce((most, one) => here.reduce((m, other) => other.combination === one.combination ? Math.max(m, Math.abs(one.V - other.V)) : m, most), 0);
    }).filter(jump => jump > negligibleForce);
    const sum = jumps.reduce((total, jump) => total + jump, 0);
    return sum > 0 ? jumps.length * Math.max(...jumps) / sum : 1;
}

const touching = 1e-6;

interface Pressed { readonly R: number; readonly uneven: number; readonly demand: number }

function explain(context: MemberContext, contact: Contact, combination: Combination, { R, uneven, demand }: Pressed): readonly Step[] {
    const acrossGrain = Math.abs(contact.angle - Math.PI / 2) < 1e-9;
    const stress = step('\\sigma_{c,d}', uneven > 1 ? '\\frac{k_u F_{c,d}}{l_{ef} b}' : '\\frac{F_{c,d}}{l_{ef} b}', [
        ...uneven > 1 ? [term('k_u', uneven, '', 'the leaf that bears most over the mean')] : [],
        term('F_{c,d}', R / 1000, 'kN', contact.place), term('l_{ef}', contact.effective, 'mm'), term('b', contact.width, 'mm', 'width of the contact')
    ], amount(demand, 'MPa'), { clause: acrossGrain ? 'EN 1995-1-1 (6.4)' : 'EN 1995-1-1 6.2.2' });
    const across = designStrengthStep(context, combination.duration, 'f_{c,90,d}', strengthTerm(context, 'f_{c,90,k}', 'fc90_k'));
    const capacity = acrossGrain
        ? [capacityAcross(context, contact, across.result.value)]
        : capacityAtAngle(context, contact, combination, across.result.value);
    const limit = capacity.at(-1);
    return [
        lengthStep(contact),
        stress,
        across,
        ...capacity,
        ...limit ? [utilisationStep(term('\\sigma_{c,d}', demand, 'MPa'), term(limit.symbol, limit.result.value, 'MPa'), limit.clause ?? '')] : []
    ];
}

function lengthStep({ on, length, effective }: Contact): Step {
    const cut = on.bearing !== undefined && length < on.bearing ? `; the bearing of ${on.bearing} mm reaches past the end of the member` : '';
    return step('l_{ef}', 'l + \\Delta_l', [term('l', length, 'mm', 'contact', on.source), term('\\Delta_l', effective - length, 'mm', 'both sides together')],
        amount(effective, 'mm'), { clause: 'EN 1995-1-1 6.1.5(1)', note: `30 mm a side, no more than a, l or l1/2${cut}` });
}

function capacityAcross(context: MemberContext, { kc90, toNext }: Contact, fc90: number): Step {
    const { h } = wholeSection(context.member);
    const why = Number.isFinite(toNext) ? `next contact ${Math.round(toNext)} mm away, 2h = ${Math.round(2 * h)} mm` : 'no other contact';
    return step('R_{c,90,d}', 'k_{c,90} f_{c,90,d}', [term('k_{c,90}', kc90, '', why), term('f_{c,90,d}', fc90, 'MPa')],
        amount(kc90 * fc90, 'MPa'), { clause: 'EN 1995-1-1 (6.3)' });
}

function capacityAtAngle(context: MemberContext, { kc90, angle }: Contact, { duration }: Combination, fc90: number): readonly Step[] {
    const along = designStrengthStep(context, duration, 'f_{c,0,d}', strengthTerm(context, 'f_{c,0,k}', 'fc0_k'));
    const fc0 = along.result.value;
    return [along, step('f_{c,\\alpha,d}',
        '\\frac{f_{c,0,d}}{\\frac{f_{c,0,d}}{k_{c,90} f_{c,90,d}} \\sin^2 \\alpha + \\cos^2 \\alpha}', [
            term('f_{c,0,d}', fc0, 'MPa'), term('k_{c,90}', kc90), term('f_{c,90,d}', fc90, 'MPa'),
            term('\\alpha', angle * 180 / Math.PI, '', 'degrees between force and grain')
        ], amount(compressionStrengthAtAngle(fc0, fc90, kc90, angle), 'MPa'), { clause: 'EN 1995-1-1 (6.16)' })];
}
