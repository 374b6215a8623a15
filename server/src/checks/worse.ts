/** Which of two utilisations is worse. */

/** A utilisation is a number of nought or more; anything else comes of an input that is none, and is the worst there is. */
export function isSound(utilisation: number): boolean {
    return utilisation >= 0;
}

export function isWorse(utilisation: number, than: number | undefined): boolean {
    return than === undefined || (isSound(than) && !(isSound(utilisation) && utilisation <= than));
}
