/**
 * Rolled sections, mm and kg/m: outline only, the rest is computed from it (section-geometry.ts).
 *
 * `seen`: h, b, tw, tf and mass read in TU Delft open textbook "Structural Design Essentials" (TeachBooks,
 * commit 9f143f4e3da9), page "Section tables"; EN 10365 nominal dimensions. The root radius r is from memory
 * in every row: area and second moments computed with it agree with the seen ones.
 * A row `memory` is from memory as a whole.
 */

export type RowOrigin = 'seen' | 'memory';
/** h, b, tw, tf, r, kg/m, origin. */
export type IRow = readonly [h: number, b: number, tw: number, tf: number, r: number, mass: number, origin: RowOrigin];

export const ipeRows: Readonly<Record<string, IRow>> = {
    'IPE 80': [80, 46, 3.8, 5.2, 5, 6, 'memory'],
    'IPE 100': [100, 55, 4.1, 5.7, 7, 8.1, 'seen'],
    'IPE 120': [120, 64, 4.4, 6.3, 7, 10.4, 'seen'],
    'IPE 140': [140, 73, 4.7, 6.9, 7, 12.9, 'seen'],
    'IPE 160': [160, 82, 5, 7.4, 9, 15.8, 'seen'],
    'IPE 180': [180, 91, 5.3, 8, 9, 18.8, 'memory'],
    'IPE 200': [200, 100, 5.6, 8.5, 12, 22.4, 'seen'],
    'IPE 220': [220, 110, 5.9, 9.2, 12, 26.2, 'seen'],
    'IPE 240': [240, 120, 6.2, 9.8, 15, 30.7, 'seen'],
    'IPE 270': [270, 135, 6.6, 10.2, 15, 36.1, 'seen'],
    'IPE 300': [300, 150, 7.1, 10.7, 15, 42.2, 'seen'],
    'IPE 330': [330, 160, 7.5, 11.5, 18, 49.1, 'seen'],
    'IPE 360': [360, 170, 8, 12.7, 18, 57.1, 'seen'],
    'IPE 400': [400, 180, 8.6, 13.5, 21, 66.3, 'seen'],
    'IPE 450': [450, 190, 9.4, 14.6, 21, 77.6, 'seen'],
    'IPE 500': [500, 200, 10.2, 16, 21, 90.7, 'seen'],
    'IPE 550': [550, 210, 11.1, 17.2, 24, 105.5, 'seen'],
    'IPE 600': [600, 220, 12, 19, 24, 122.4, 'seen']
};

export const heaRows: Readonly<Record<string, IRow>> = {
    'HEA 100': [96, 100, 5, 8, 12, 16.7, 'seen'],
    'HEA 120': [114, 120, 5, 8, 12, 19.9, 'seen'],
    'HEA 140': [133, 140, 5.5, 8.5, 12, 24.7, 'seen'],
    'HEA 160': [152, 160, 6, 9, 15, 30.4, 'seen'],
    'HEA 180': [171, 180, 6, 9.5, 15, 35.5, 'seen'],
    'HEA 200': [190, 200, 6.5, 10, 18, 42.3, 'seen'],
    'HEA 220': [210, 220, 7, 11, 18, 50.5, 'seen'],
    'HEA 240': [230, 240, 7.5, 12, 21, 60.3, 'seen'],
    'HEA 260': [250, 260, 7.5, 12.5, 24, 68.2, 'seen'],
    'HEA 280': [270, 280, 8, 13, 24, 76.4, 'seen'],
    'HEA 300': [290, 300, 8.5, 14, 27, 88.3, 'seen'],
    'HEA 320': [310, 300, 9, 15.5, 27, 97.6, 'seen'],
    'HEA 340': [330, 300, 9.5, 16.5, 27, 104.8, 'seen']
};

export const hebRows: Readonly<Record<string, IRow>> = {
    'HEB 100': [100, 100, 6, 10, 12, 20.4, 'seen'],
    'HEB 120': [120, 120, 6.5, 11, 12, 26.7, 'seen'],
    'HEB 140': [140, 140, 7, 12, 12, 33.7, 'seen'],
    'HEB 160': [160, 160, 8, 13, 15, 42.6, 'seen'],
    'HEB 180': [180, 180, 8.5, 14, 15, 51.2, 'seen'],
    'HEB 200': [200, 200, 9, 15, 18, 61.3, 'seen'],
    'HEB 220': [220, 220, 9.5, 16, 18, 71.5, 'seen'],
    'HEB 240': [240, 240, 10, 17, 21, 83.2, 'seen'],
    'HEB 260': [260, 260, 10, 17.5, 24, 93, 'seen'],
    'HEB 280': [280, 280, 10.5, 18, 24, 103.1, 'seen'],
    'HEB 300': [300, 300, 11, 19, 27, 117, 'seen'],
    'HEB 320': [320, 300, 11.5, 20.5, 27, 126.7, 'seen'],
    'HEB 340': [340, 300, 12, 21.5, 27, 134.2, 'seen']
};

/**
 * UPN channels with flanges that taper by 8 %: tf at half the flange's breadth, root radius r = tf, toe radius r/2.
 * h, b, tw and mass seen as above; tf and the radii, It (mm4) and Iw (mm6) from memory.
 */
export type ChannelRow = readonly [h: number, b: number, tw: number, tf: number, r: number, mass: number, It: number, Iw: number];

export const upnRows: Readonly<Record<string, ChannelRow>> = {
    'UPN 80': [80, 45, 6, 8, 8, 8.64, 2.16e4, 0.17e9],
    'UPN 100': [100, 50, 6, 8.5, 8.5, 10.6, 2.81e4, 0.41e9],
    'UPN 120': [120, 55, 7, 9, 9, 13.4, 4.15e4, 0.9e9],
    'UPN 140': [140, 60, 7, 10, 10, 16, 5.68e4, 1.8e9],
    'UPN 160': [160, 65, 7.5, 10.5, 10.5, 18.8, 7.39e4, 3.26e9],
    'UPN 180': [180, 70, 8, 11, 11, 22, 9.55e4, 5.57e9],
    'UPN 200': [200, 75, 8.5, 11.5, 11.5, 25.3, 11.9e4, 9.07e9],
    'UPN 220': [220, 80, 9, 12.5, 12.5, 29.4, 16e4, 14.6e9],
    'UPN 240': [240, 85, 9.5, 13, 13, 33.2, 19.7e4, 22.1e9],
    'UPN 260': [260, 90, 10, 14, 14, 37.9, 25.5e4, 33.3e9],
    'UPN 280': [280, 95, 10, 15, 15, 41.8, 31e4, 48.5e9],
    'UPN 300': [300, 100, 10, 16, 16, 46.2, 37.4e4, 69.1e9]
};
