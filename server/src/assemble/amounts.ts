/** From the analysis' N and mm to the units that people read. */
import type { Amount } from '../results.js';

export const kN = (newtons: number): Amount => ({ value: newtons / 1e3, unit: 'kN' });
export const kNm = (newtonMillimetres: number): Amount => ({ value: newtonMillimetres / 1e6, unit: 'kNm' });
export const metres = (millimetres: number): Amount => ({ value: millimetres / 1e3, unit: 'm' });
export const mm = (value: number): Amount => ({ value, unit: 'mm' });

/** A size as a person writes it: `240`, `62.5`. */
export const tidy = (value: number): string => String(Number(value.toFixed(1)));
