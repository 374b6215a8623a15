import { expect, it } from 'vitest';
import { isElsewhere, originOfSymbol } from './origins.js';

it.each([
    ['M_{y,d}', 'from the analysis'], ['V_d', 'from the analysis'], ['N_{Edc}', 'from the analysis'], ['F_{c,90,d}', 'from the analysis'], ['F_{t,Ed}', 'from the analysis'],
    ['w_{fin}', 'from the analysis'], ['\\gamma_{M2}', 'a value of the basis'], ['k_{mod}', 'a value of the basis'], ['f_{m,k}', 'of the class of the material'],
    ['E_{0,05}', 'of the class of the material'], ['b', 'as drawn'], ['t_1', 'as drawn'], ['I_{tor}', 'as drawn'], ['F_{v,Rd}', 'of this part'], ['M_{Rd}', 'of this part']
])('%s is %s', (symbol, words) => expect(originOfSymbol(symbol).words).toBe(words));

it('is elsewhere where it is a force or a factor', () => expect(['V_d', '\\gamma_M', 'b', 'f_{m,k}'].map(isElsewhere)).toEqual([true, true, false, false]));
