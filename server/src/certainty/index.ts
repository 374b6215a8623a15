export { breakEven, type BreakEven, type Searched } from './break-even.js';
export { breakEvens, type Progress } from './break-evens.js';
export { inputOf, withInput, type Input } from './input.js';
export { guessedPaths, ledger, type LedgerEntry } from './ledger.js';
export { politely, type Manners } from './politely.js';
export { sensitivity, type Sensitivity, type Variant } from './sensitivity.js';
export { worstFunction, type Compute, type Outcome, type WorstOf } from './worst.js';
export type { Worst } from './asking.js';
