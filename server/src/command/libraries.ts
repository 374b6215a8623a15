import type { Evaluation } from '../../../language/src/model.js';

/** A file of details or values for others to include: by itself there is nothing of it to compute. */
export const isLibrary = (evaluation: Evaluation | undefined): boolean => evaluation?.findings.some(({ code }) => code === 'library') === true;
