import { timberTable } from './timber-table.js';

/** EN 14080:2013 Table 5, homogeneous glulam. */
export const homogeneousGlulamClasses = timberTable({ product: 'glulam', softwood: true, origin: 'EN 14080:2013 Table 5, from memory' }, [
    ['GL20h', 20,   16, 0.5, 20, 2.5, 3.5,  8400,  7000, 300, 650, 340, 370],
    ['GL22h', 22, 17.6, 0.5, 22, 2.5, 3.5, 10500,  8800, 300, 650, 370, 410],
    ['GL24h', 24, 19.2, 0.5, 24, 2.5, 3.5, 11500,  9600, 300, 650, 385, 420],
    ['GL26h', 26, 20.8, 0.5, 26, 2.5, 3.5, 12100, 10100, 300, 650, 405, 445],
    ['GL28h', 28, 22.3, 0.5, 28, 2.5, 3.5, 12600, 10500, 300, 650, 425, 460, 'EN 14080:2013 Table 5, seen in an engineering tutorial that cites it'],
    ['GL30h', 30,   24, 0.5, 30, 2.5, 3.5, 13600, 11300, 300, 650, 430, 480],
    ['GL32h', 32, 25.6, 0.5, 32, 2.5, 3.5, 14200, 11800, 300, 650, 440, 490]
]);
