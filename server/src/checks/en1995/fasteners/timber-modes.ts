import type { ModeRule, PlaneNumbers } from './mode-rule.js';

const single = 'EN 1995-1-1 (8.6)';
const double = 'EN 1995-1-1 (8.7)';

const beta = ({ fh1_k, fh2_k }: PlaneNumbers): number => fh2_k / fh1_k;

/** A hinge in the other timber while the bolt turns in this one; `ratio` is the other's embedment strength over this one's. */
function oneHinge(fh: number, t: number, d: number, My: number, ratio: number): number {
    const root = 2 * ratio * (1 + ratio) + 4 * ratio * (2 + ratio) * My / (fh * d * t ** 2);
    return 1.05 * fh * t * d / (2 + ratio) * (Math.sqrt(root) - ratio);
}

const oneHingeIn2: Omit<ModeRule, 'letter' | 'name' | 'clause'> = {
    roped: true,
    formula: '1.05\\,\\frac{f_{h,1,k}\\,t_1\\,d}{2+\\beta}\\left[\\sqrt{2\\beta(1+\\beta)+\\frac{4\\beta(2+\\beta)\\,M_{y,Rk}}{f_{h,1,k}\\,d\\,t_1^2}}-\\beta\\right]',
    johansen: n => oneHinge(n.fh1_k, n.t1, n.d, n.My_Rk, beta(n))
};

const twoHinges: Omit<ModeRule, 'letter' | 'name' | 'clause'> = {
    roped: true,
    formula: '1.15\\,\\sqrt{\\frac{2\\beta}{1+\\beta}}\\,\\sqrt{2\\,M_{y,Rk}\\,f_{h,1,k}\\,d}',
    johansen: n => 1.15 * Math.sqrt(2 * beta(n) / (1 + beta(n))) * Math.sqrt(2 * n.My_Rk * n.fh1_k * n.d)
};

/** Two timbers, one shear plane: EN 1995-1-1 (8.6). */
export const singleShear: readonly ModeRule[] = [
    {
        letter: 'a', name: 'timber 1 crushed under a straight bolt', roped: false, clause: single,
        formula: 'f_{h,1,k}\\,t_1\\,d', johansen: n => n.fh1_k * n.t1 * n.d
    },
    {
        letter: 'b', name: 'timber 2 crushed under a straight bolt', roped: false, clause: single,
        formula: 'f_{h,2,k}\\,t_2\\,d', johansen: n => n.fh2_k * n.t2 * n.d
    },
    {
        letter: 'c', name: 'the straight bolt tilts in both timbers', roped: true, clause: single,
        formula: '\\frac{f_{h,1,k}\\,t_1\\,d}{1+\\beta}\\left[\\sqrt{\\beta+2\\beta^2\\left[1+\\frac{t_2}{t_1}+\\left(\\frac{t_2}{t_1}\\right)^2\\right]+\\beta^3\\left(\\frac{t_2}{t_1}\\right)^2}-\\beta\\left(1+\\frac{t_2}{t_1}\\right)\\right]',
        johansen: n => {
            const b = beta(n);
            const r = n.t2 / n.t1;
            return n.fh1_k * n.t1 * n.d / (1 + b) * (Math.sqrt(b + 2 * b ** 2 * (1 + r + r ** 2) + b ** 3 * r ** 2) - b * (1 + r));
        }
    },
    { letter: 'd', name: 'the bolt bends in timber 2 and turns in timber 1', clause: single, ...oneHingeIn2 },
    {
        letter: 'e', name: 'the bolt bends in timber 1 and turns in timber 2', roped: true, clause: single,
        formula: '1.05\\,\\frac{f_{h,1,k}\\,t_2\\,d}{1+2\\beta}\\left[\\sqrt{2\\beta^2(1+\\beta)+\\frac{4\\beta(1+2\\beta)\\,M_{y,Rk}}{f_{h,1,k}\\,d\\,t_2^2}}-\\beta\\right]',
        johansen: n => oneHinge(n.fh2_k, n.t2, n.d, n.My_Rk, 1 / beta(n))
    },
    { letter: 'f', name: 'the bolt bends in both timbers', clause: single, ...twoHinges }
];

/** One shear plane of three timbers, loaded alike in both planes; timber 2 is the middle one, of full thickness: EN 1995-1-1 (8.7). */
export const doubleShear: readonly ModeRule[] = [
    {
        letter: 'g', name: 'side timber crushed under a straight bolt', roped: false, clause: double,
        formula: 'f_{h,1,k}\\,t_1\\,d', johansen: n => n.fh1_k * n.t1 * n.d
    },
    {
        letter: 'h', name: 'middle timber crushed under a straight bolt', roped: false, clause: double,
        formula: '0.5\\,f_{h,2,k}\\,t_2\\,d', johansen: n => 0.5 * n.fh2_k * n.t2 * n.d
    },
    { letter: 'j', name: 'the bolt bends in the middle timber and turns in the side timber', clause: double, ...oneHingeIn2 },
    { letter: 'k', name: 'the bolt bends in both timbers', clause: double, ...twoHinges }
];

/** A shear plane between two inner timbers, each loaded alike in its two planes: the modes of (8.7) left to it, EN 1995-1-1 8.1.3(1). */
export const innerShear: readonly ModeRule[] = [
    {
        letter: 'h1', name: 'inner timber 1 crushed under a straight bolt', roped: false, clause: double,
        formula: '0.5\\,f_{h,1,k}\\,t_1\\,d', johansen: n => 0.5 * n.fh1_k * n.t1 * n.d
    },
    { ...doubleShear[1]!, letter: 'h2', name: 'inner timber 2 crushed under a straight bolt' },
    doubleShear[3]!
];
