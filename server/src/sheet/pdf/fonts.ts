/** DejaVu Sans (free, its licence beside it): the Greek, the signs of mathematics and the marks that the sheet uses. */
export const fontFamily = 'DejaVuSans';

/** Files of the font in a folder, as the package `dejavu-fonts-ttf` has them. */
export function fontFiles(folder: string): Record<string, { normal: string; bold: string; italics: string; bolditalics: string }> {
    const [normal, bold] = [`${folder}/DejaVuSans.ttf`, `${folder}/DejaVuSans-Bold.ttf`];
    return { [fontFamily]: { normal, bold, italics: normal, bolditalics: bold } };
}
