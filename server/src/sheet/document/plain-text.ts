/** Text of a file as it may stand in a document: it moves no cursor and turns no other text round. */

/** Controls, and marks and overrides of direction, which would reorder what stands beside them. */
const unprintable = /[\p{Cc}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF]/gu;
const rightToLeft = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

export function printable(text: string): string {
    return text.replace(unprintable, '');
}

/** The same, text from right to left by itself. */
export function isolated(text: string): string {
    const shown = printable(text);
    return rightToLeft.test(shown) ? `\u2068${shown}\u2069` : shown;
}
