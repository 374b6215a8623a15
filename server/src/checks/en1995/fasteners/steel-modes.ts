import type { ModeRule } from './mode-rule.js';

/** Timber 1 is the timber that bears on the plate; timber 2, where named, the middle one between two plates. */
const oneHingeAtPlate: Omit<ModeRule, 'letter' | 'clause'> = {
    name: 'the bolt bends at the plate and turns in the timber', roped: true,
    formula: 'f_{h,1,k}\\,t_1\\,d\\left[\\sqrt{2+\\frac{4\\,M_{y,Rk}}{f_{h,1,k}\\,d\\,t_1^2}}-1\\right]',
    johansen: n => n.fh1_k * n.t1 * n.d * (Math.sqrt(2 + 4 * n.My_Rk / (n.fh1_k * n.d * n.t1 ** 2)) - 1)
};

const crushed: Omit<ModeRule, 'letter' | 'clause'> = {
    name: 'timber crushed under a straight bolt', roped: false,
    formula: 'f_{h,1,k}\\,t_1\\,d', johansen: n => n.fh1_k * n.t1 * n.d
};

const middleCrushed: Omit<ModeRule, 'letter' | 'clause'> = {
    name: 'middle timber crushed under a straight bolt', roped: false,
    formula: '0.5\\,f_{h,2,k}\\,t_2\\,d', johansen: n => 0.5 * n.fh2_k * n.t2 * n.d
};

function hingeInTimber(timber: 1 | 2): Omit<ModeRule, 'letter' | 'clause'> {
    return {
        name: 'the bolt bends in the timber', roped: true,
        formula: `1.15\\,\\sqrt{2\\,M_{y,Rk}\\,f_{h,${timber},k}\\,d}`,
        johansen: n => 1.15 * Math.sqrt(2 * n.My_Rk * (timber === 1 ? n.fh1_k : n.fh2_k) * n.d)
    };
}

function hingesAtBoth(timber: 1 | 2): Omit<ModeRule, 'letter' | 'clause'> {
    return {
        name: 'the bolt bends at the plate and in the timber', roped: true,
        formula: `2.3\\,\\sqrt{M_{y,Rk}\\,f_{h,${timber},k}\\,d}`,
        johansen: n => 2.3 * Math.sqrt(n.My_Rk * (timber === 1 ? n.fh1_k : n.fh2_k) * n.d)
    };
}

/** A thin plate on one timber: EN 1995-1-1 (8.9). */
export const thinPlate: readonly ModeRule[] = [
    {
        letter: 'a', name: 'the bolt turns in the timber', roped: false, clause: 'EN 1995-1-1 (8.9)',
        formula: '0.4\\,f_{h,1,k}\\,t_1\\,d', johansen: n => 0.4 * n.fh1_k * n.t1 * n.d
    },
    { letter: 'b', clause: 'EN 1995-1-1 (8.9)', ...hingeInTimber(1) }
];

/** A thick plate on one timber: EN 1995-1-1 (8.10), letters as corrected by A1:2008. */
export const thickPlate: readonly ModeRule[] = [
    { letter: 'c', clause: 'EN 1995-1-1 (8.10)', ...crushed },
    { letter: 'd', clause: 'EN 1995-1-1 (8.10)', ...oneHingeAtPlate },
    { letter: 'e', clause: 'EN 1995-1-1 (8.10)', ...hingesAtBoth(1) }
];

/** A plate of any thickness between two timbers: EN 1995-1-1 (8.11). */
export const centralPlate: readonly ModeRule[] = [
    { letter: 'f', clause: 'EN 1995-1-1 (8.11)', ...crushed },
    { letter: 'g', clause: 'EN 1995-1-1 (8.11)', ...oneHingeAtPlate },
    { letter: 'h', clause: 'EN 1995-1-1 (8.11)', ...hingesAtBoth(1) }
];

/** A timber between two thin plates: EN 1995-1-1 (8.12). */
export const thinOuterPlates: readonly ModeRule[] = [
    { letter: 'j', clause: 'EN 1995-1-1 (8.12)', ...middleCrushed },
    { letter: 'k', clause: 'EN 1995-1-1 (8.12)', ...hingeInTimber(2) }
];

/** A timber between two thick plates: EN 1995-1-1 (8.13). */
export const thickOuterPlates: readonly ModeRule[] = [
    { letter: 'l', clause: 'EN 1995-1-1 (8.13)', ...middleCrushed },
    { letter: 'm', clause: 'EN 1995-1-1 (8.13)', ...hingesAtBoth(2) }
];
