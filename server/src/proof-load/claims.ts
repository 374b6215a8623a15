/** What a proof load proves and what it does not, what it rests on, and how nobody is hurt by it. */
import type { LoadTest, Member, PliesSection } from '../../../language/src/model.js';
import { deflection, station } from '../sheet/numbers.js';
import { fullTestLoad, recoveryRequired, recoverySource } from './criteria.js';
import type { Figures } from './figures.js';
import { kilograms, modulus, outcomeOf, percentDown } from './words.js';

export interface Subject {
    readonly test: LoadTest;
    readonly member: Member;
    /** `leaves 1, 2 of R1`, `T2`. */
    readonly what: string;
    readonly figures: Figures;
    /** k_mod for permanent load and for the hours of a test; undefined of steel. */
    readonly kmod?: { readonly permanent: number; readonly shortTerm: number };
}

/** Of readings alone; a prediction proves nothing. */
export function proves({ what, member, figures }: Subject): readonly string[] {
    const { points, greatest, service, design, back, band, recovery } = figures;
    if (points.every(({ read }) => read === undefined)) {
        return [];
    }
    const { weight } = greatest;
    const shares = service && design
        ? `: ${percentDown(service.moment)} of the moment and ${percentDown(service.shear)} of the shear that the member has in service, ${percentDown(design.moment)} and ${percentDown(design.shear)} of the design values` : '';
    return [
        `${what} carried ${kilograms(weight.mass.value)} at ${station(weight.at.value)} for as long as it was left on${shares}`,
        ...back && band ? [`its modulus of elasticity${member.section.shape === 'plies' ? ', bolts being as stiff as their rule says,' : ''} is ${modulus(back.E)}${back.scatter === undefined ? ' by one reading' : ` ± ${modulus(back.scatter)} (one standard error)`}; its class has ${modulus(band.mean.E)} in the mean and ${modulus(band.low.E)} at 5 %`] : [],
        ...recovery !== undefined && recovery >= recoveryRequired ? [`it came back by ${percentDown(recovery)} of what it sank, at least the ${percentDown(recoveryRequired)} that are asked for within 24 hours (${recoverySource})`] : []
    ];
}

export function doesNotProve({ test, member, figures, kmod }: Subject): readonly string[] {
    const { points, service, design, back, band } = figures;
    const read = points.some(one => one.read !== undefined);
    const { section } = member;
    return [
        ...read ? [] : ['anything at all: nothing was read'],
        ...['in doubt', 'stiffer'].includes(outcomeOf(figures)) ? ['that the member is as the calculation takes it: the readings are others than predicted'] : [],
        ...kmod ? [`that it bears a load for years: k_mod of EN 1995-1-1 Table 3.1 is ${kmod.permanent.toFixed(2)} for permanent load and ${kmod.shortTerm.toFixed(2)} for the hours of a test, and it goes on sinking by creep`] : [],
        ...service === undefined || design === undefined ? ['how much of its service and design loads it can bear: the member itself has no results to compare with']
            : [...belowOne('service', service), ...belowOne('design', design), ...shortOfFull(service)],
        ...section.shape === 'plies' ? ofLeaves(section, test, service) : [],
        ...kmod ? ['what it does when it is wetter or drier than on the day'] : [],
        'any other piece of the same class, or its grade: what one piece bears says nothing of its neighbour',
        'its bearings in place, its hangers, the walls and what holds it upright: it lay on blocks',
        ...band && read && !back ? ['its modulus of elasticity: none within a tenth and ten times of its class explains the readings'] : []
    ];
}

function belowOne(name: string, { moment, shear }: NonNullable<Figures['service']>): readonly string[] {
    return Math.min(moment, shear) < 1 ? [`that it bears its ${name} load: the test reached ${percentDown(moment)} of that moment and ${percentDown(shear)} of that shear`] : [];
}

function shortOfFull({ moment }: NonNullable<Figures['service']>): readonly string[] {
    return moment < fullTestLoad(1) ? [`what a full load test would: that puts ${fullTestLoad(1)} times the unfactored design load on for 24 hours (New York City Building Code 1708.3.2, not written for timber)`] : [];
}

function ofLeaves({ count, butts }: PliesSection, { leaves, blocks }: LoadTest, service: Figures['service']): readonly string[] {
    const tested = new Set(leaves ?? Array.from({ length: count }, (_, i) => i + 1));
    const left = Array.from({ length: count }, (_, i) => i + 1).filter(leaf => !tested.has(leaf));
    const stations = blocks.map(({ value }) => value);
    const outside = butts.filter(({ leaf, at }) => tested.has(leaf) && (at.value <= Math.min(...stations) || at.value >= Math.max(...stations)));
    const each = service ? `; each one that was had ${percentDown(service.moment * count / tested.size)} of an even share of the service moment` : '';
    return [
        ...left.length > 0 ? [`${left.length === 1 ? `leaf ${left[0]}, which was` : `leaves ${left.join(', ')}, which were`} not tested${each}`] : [],
        ...outside.map(({ leaf, at }) => `the butt of leaf ${leaf} at ${station(at.value)} and the bolts about it: it is outside the blocks and was not bent`)
    ];
}

export function assumptions({ member, figures, test }: Subject): readonly string[] {
    const bolted = member.section.shape === 'plies';
    const many = (test.leaves?.length ?? (bolted && member.section.shape === 'plies' ? member.section.count : 1)) > 1;
    return [
        'Its own weight is there before the first reading and is not in the deflections; forces count it.',
        'The blocks are taken as rigid and the give of the bearings is left out: measure from the member, not from the ground, or read the settlement of the blocks and take it off.',
        'Shear deformation is included.',
        ...figures.band ? [
            'The band is from the 5 % modulus of the class to the 95 % one of a lognormal distribution with that mean and 5 % value (JCSS Probabilistic Model Code 3.5, from memory), G going with E.',
            'The modulus is back-figured by least squares through nought with G at its mean, so that shear is taken off first.'
        ] : ['Steel is taken at its modulus, without a band.'],
        ...bolted ? [`Bolts have the slip modulus of EN 1995-1-1 Table 7.1 throughout${many ? '; the leaves are soft or stiff together, so that the band is rather too wide' : ''}.`] : []
    ];
}

/** Clear height of catch props below the greatest predicted sinking, mm: common practice, no source. */
const catchGap = 25;

/** Common practice, no source, but where one is named. */
export function cautions({ greatest, points }: Figures): readonly string[] {
    const most = Math.max(...points.map(({ high }) => high));
    return [
        'Nobody under it, on it or beside it within its own height from the first weight to the last, and a barrier to keep others off.',
        `Catch props or packs under it that it cannot fall past, about ${Math.ceil((most + catchGap) / 5) * 5} mm below it (the greatest predicted sinking and ${catchGap} mm).`,
        'Hold it upright at the blocks and keep the weights from rolling or sliding.',
        `Load up to ${kilograms(greatest.weight.mass.value)} in at least four equal steps (ACI 318 chapter 20 asks for as many), gently, and wait after each until it has come to rest.`,
        `Stop and unload when it goes on sinking without more load, cracks, or sinks more than ${deflection(greatest.high)}.`,
        'Unload in the same steps, and read the nought again at once and within 24 hours.'
    ];
}
