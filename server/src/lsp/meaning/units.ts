/** What each unit is called, for hovers and completion. */
import { dimensionName, units, type UnitOfMeasure } from '../../../../language/src/index.js';

const names: Readonly<Record<string, string>> = {
    '%': 'per cent',
    mm: 'millimetre', cm: 'centimetre', m: 'metre', in: 'inch', ft: 'foot',
    mm2: 'square millimetre', cm2: 'square centimetre', m2: 'square metre', in2: 'square inch', ft2: 'square foot',
    mm3: 'cubic millimetre', cm3: 'cubic centimetre', m3: 'cubic metre', in3: 'cubic inch', ft3: 'cubic foot',
    mm4: 'millimetre to the fourth', cm4: 'centimetre to the fourth', m4: 'metre to the fourth', in4: 'inch to the fourth',
    N: 'newton', kN: 'kilonewton', MN: 'meganewton', lbf: 'pound-force', kip: 'thousand pounds-force',
    g: 'gram', kg: 'kilogram; as a load times 9.80665 m/s²', t: 'tonne', lb: 'pound; as a load times 9.80665 m/s²',
    Nmm: 'newton millimetre', Nm: 'newton metre', kNm: 'kilonewton metre', lbfft: 'foot pound-force', lbfin: 'inch pound-force', kipft: 'kip foot', kipin: 'kip inch',
    Pa: 'pascal, one newton a square metre', kPa: 'kilopascal, one kilonewton a square metre', MPa: 'megapascal, one newton a square millimetre', GPa: 'gigapascal',
    'N/mm2': 'newton a square millimetre', 'kN/mm2': 'kilonewton a square millimetre', 'N/m2': 'newton a square metre', 'kN/m2': 'kilonewton a square metre', 'kN/cm2': 'kilonewton a square centimetre',
    psi: 'pound-force a square inch', ksi: 'kip a square inch', psf: 'pound-force a square foot', 'lbf/ft2': 'pound-force a square foot', 'lbf/in2': 'pound-force a square inch',
    'N/mm': 'newton a millimetre', 'N/m': 'newton a metre', 'kN/m': 'kilonewton a metre', 'kN/mm': 'kilonewton a millimetre',
    plf: 'pound-force a foot', 'lbf/ft': 'pound-force a foot', 'lbf/in': 'pound-force an inch', 'kip/ft': 'kip a foot',
    'kg/m3': 'kilogram a cubic metre', 't/m3': 'tonne a cubic metre', 'g/cm3': 'gram a cubic centimetre', 'lb/ft3': 'pound a cubic foot', pcf: 'pound a cubic foot',
    'kN/m3': 'kilonewton a cubic metre', 'N/m3': 'newton a cubic metre', 'kg/m2': 'kilogram a square metre', 'lb/ft2': 'pound a square foot', 'kg/m': 'kilogram a metre', 'lb/ft': 'pound a foot',
    Nmm2: 'newton square millimetre', Nm2: 'newton square metre', kNm2: 'kilonewton square metre',
    'Nmm2/mm': 'newton square millimetre a millimetre of width', 'Nm2/m': 'newton square metre a metre of width', 'kNm2/m': 'kilonewton square metre a metre of width',
    'mm/N': 'millimetre a newton', 'mm/kN': 'millimetre a kilonewton',
    day: 'day', days: 'days', year: 'year of 365.25 days', years: 'years of 365.25 days', week: 'week', weeks: 'weeks', h: 'hour', min: 'minute', s: 'second',
    deg: 'degree', '°': 'degree', rad: 'radian'
};

/** As it is written on a keyboard: `mm²` is `mm2`. */
export const plainSymbol = (symbol: string): string => symbol.replace(/[²³⁴]/g, digit => String('²³⁴'.indexOf(digit) + 2));

/** `kilonewton a square metre, a stress or area load` */
export function unitMeaning(unit: UnitOfMeasure): string {
    return `${unitName(unit)}, ${dimensionName(unit.dimension)}`;
}

export function unitName({ symbol }: UnitOfMeasure): string {
    return names[plainSymbol(symbol)] ?? symbol;
}

/** Each unit once, as it is written on a keyboard. */
export const plainUnits: readonly UnitOfMeasure[] = [...units.values()].filter(({ symbol }) => plainSymbol(symbol) === symbol);
export const isNamed = ({ symbol }: UnitOfMeasure): boolean => names[plainSymbol(symbol)] !== undefined;
