import { newton, step } from '../../steps.js';
import { unsound, type Problem, type Verdict } from '../../verdict.js';
import { designStep, designValue, unsoundFactors, type DesignFactors } from '../../en1995/fasteners/design-value.js';
import { washerArea, type WasherEnd } from '../../en1995/fasteners/axial.js';
import { verifyForce } from '../../en1995/fasteners/verify.js';

/** A rod's washer on timber: 3 f_c,90,k on the contact. EN 1995-1-1 8.5.2(2). `force` of one rod, N, design value. */
export function washerOnGrain(washer: WasherEnd, force: number, factors: DesignFactors): Verdict | Problem {
    const area = washerArea(washer);
    const bad = unsound('positive', { 'the washer': washer.outer, 'its hole': washer.hole, 'the strength across the grain': washer.fc90_k, 'the contact of the washer': area })
        ?? unsoundFactors(factors)
        ?? unsound('finite', { 'the force of a rod': force });
    if (bad) {
        return bad;
    }
    const Rk = 3 * washer.fc90_k * area;
    return verifyForce({
        demand: Math.max(0, force), demandSymbol: 'F_{t,Ed}', capacity: designValue(Rk, factors), capacitySymbol: 'F_{w,Rd}', clause: 'EN 1995-1-1 8.5.2(2)'
    }, () => [
        step('F_{w,Rk}', '3.0\\,f_{c,90,k}\\,A_w', [['f_{c,90,k}', washer.fc90_k, 'MPa'], ['A_w', area, 'mm2', 'washer less its hole']], newton(Rk), { clause: 'EN 1995-1-1 8.5.2(2)' }),
        designStep('F_{w,Rd}', 'F_{w,Rk}', Rk, factors)
    ]);
}
