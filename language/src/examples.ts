/** One example for each construct of the language: the reference in README is made from these, and a test runs each. */

export interface Example {
    readonly construct: string;
    readonly text: string;
    readonly note: string;
    /** Where the text stands: by itself in a file, or among the statements of a member. */
    readonly inside?: 'member';
    /** Understood, but not computed by this version. */
    readonly notComputed?: true;
}

const member = (construct: string, text: string, note: string): Example => ({ construct, text, note, inside: 'member' });
const later = (example: Example): Example => ({ ...example, notComputed: true });

export const examples: readonly Example[] = [
    { construct: 'comment', text: '// to the end of the line\n/* or between\n   these marks */', note: 'Comments stand anywhere between words.' },
    { construct: 'job', text: 'job "Granary, north floor" {\n  revision B "bearings opened up"\n  basis EN1995\n  values recommended\n  service class 1\n  combinations 6.10a/b\n}', note: 'Every file of a calculation begins with its job. Without a block: basis EN 1995, recommended values, service class 2, equation 6.10.' },
    { construct: 'access', text: 'access {\n  piece <= 3.10 m\n  carry <= 50 kg\n}', note: 'The longest piece and the heaviest load that can be brought in.' },
    { construct: 'survey', text: 'survey {\n  services not checked\n  asbestos checked "sampled, none found"\n  damp source fixed "valley gutter relined"\n  heritage consent pending\n}', note: 'One line a subject, in free words, then what is known: checked, not checked, found, not found, fixed, not fixed, known, not known, pending, granted, refused, needed, not needed.' },
    { construct: 'values', text: 'values {\n  gamma_M solid 1.3\n  gamma_G 1.35\n  psi0 imposed A 0.7\n}', note: 'Nationally determined parameters that differ from the recommended ones: words, then the number.' },
    { construct: 'timber', text: 'timber oldOak {\n  grade D30 (judged "straight grain")\n  moisture 15 % (measured)\n}', note: 'A strength class of EN 338 or EN 14080, and how it is known.' },
    { construct: 'own properties', text: 'timber testedPine {\n  grade C18 (judged)\n  properties {\n    fm_k 21 MPa (tested "six pieces")\n    E0_mean 9.5 GPa (tested)\n    rho_k 340 kg/m3\n  }\n}', note: 'Values that stand before those of the class: fm_k ft0_k ft90_k fc0_k fc90_k fv_k E0_mean E0_05 E90_mean G_mean rho_k rho_mean.' },
    { construct: 'steel', text: 'steel oldIron {\n  properties {\n    fy 180 MPa (tested)\n    E 190 GPa\n  }\n}', note: 'Grades S235, S275, S355, or own values fy, fu, E, rho.' },
    { construct: 'masonry by strength', text: 'masonry rubble {\n  fk 1.2 MPa (assumed)\n}', note: 'The characteristic compressive strength itself.' },
    { construct: 'masonry by unit and mortar', text: 'masonry brick {\n  unit clay 15 MPa (judged) mortar 2.5 MPa (judged)\n}', note: 'The unit\'s normalised strength and the mortar\'s, for EN 1996-1-1 3.6.1.2; the kind of unit is clay unless said.' },
    { construct: 'wall', text: 'wall west {\n  of oldBrick\n  thick 330 mm\n  height 2.40 m\n}', note: 'What a member bears on: its masonry, its thickness and its height below the bearing.' },
    { construct: 'member', text: 'member J1 "joist over the store" {\n  of oldPine\n  section 75 x 200 mm (measured)\n  length 4.20 m\n  on north at 0.10 m bearing 120 mm\n  on south at 4.10 m bearing 120 mm\n}', note: 'A straight piece. Stations are measured along it from its own start.' },
    member('material by class', 'of C24', 'A strength class needs no declaration of its own.'),
    member('section', 'section 190 x 240 mm (measured "tape, three places")', 'Breadth by depth. The last unit is that of every side that has none; x or ×.'),
    member('length', 'length 4.80 m + 2 * 0.05 m', 'Any input may be an expression.'),
    member('bearing on a wall', 'on north at 0.10 m bearing 150 mm (measured) tied from end 200 mm', 'tied holds down as well as up; from end is the distance from the bearing to the nearest end of the wall or opening.'),
    { construct: 'bearing on a member', text: 'member B2 {\n  of C24\n  section 60 x 180 mm\n  length 3.00 m\n  on north at 0.10 m bearing 100 mm\n  on B1 at 2.90 m crossing at 1.40 m bearing 80 mm\n}', note: 'The first station is along this member, the one after crossing along the member that carries it. On a post, crossing may be left out: it is the top.' },
    member('spring', 'spring 500 N/mm at 2.00 m', 'An elastic support.'),
    { construct: 'pinned, fixed', text: 'member P1 "post" {\n  of C24\n  section 140 x 140 mm\n  length 2.60 m\n  stands\n  fixed at 0 m\n  pinned at 2.60 m\n}', note: 'Supports without a wall. stands makes a post.' },
    member('loss', 'loss 1.60 m .. 2.70 m { top 35 mm  left 20 mm (judged) } (probed "awl at 100 mm centres")', 'Depths lost from the faces between two stations. A face may have evidence of its own.'),
    member('notch', 'notch bottom 0 m .. 0.15 m deep 40 mm taper 60 mm', 'In the top or bottom face, between two stations; square unless a taper is said.'),
    member('restrained', 'restrained every 600 mm', 'Lateral restraint of the compression edge; restrained alone is continuous.'),
    member('precamber', 'precamber 5 mm', 'Upwards.'),
    member('slopes', 'slopes 32 deg', 'A member is horizontal unless it slopes or stands.'),
    member('no self weight', 'no self weight', 'Self weight is counted by itself otherwise.'),
    member('system strength', 'system strength', 'EN 1995-1-1 6.6, only when said.'),
    member('floor', 'floor {\n  width 4.50 m\n  spacing 400 mm\n  mass 80 kg/m2\n  deck 12 kNm2/m\n  damping 1 %\n}', 'For vibration by EN 1995-1-1 7.3.3: the member is one joist of this floor. Damping is 1 % unless said.'),
    member('hole', 'hole 20 mm at 1.20 m height 30 mm', 'Diameter, station, and height from the axis.'),
    later(member('fire', 'fire 30 min', 'The time it is to last.')),
    { construct: 'plies', text: 'member R2 {\n  of C24\n  plies 3 of 63 x 200 mm\n  length 4.90 m\n  on north at 0.10 m bearing 150 mm leaf 1, 2\n  on south at 4.80 m bearing 150 mm\n  ply 1, 3 butt at 1.90 m\n  ply 2 butt at 3.00 m\n  bolts M12 grade 8.8 every 350 mm zigzag 50 mm ends 100 mm\n}', note: 'Leaves side by side, counted from 1 from the left as seen from the start; where they are broken; and the bolts that join them. every spreads bolts evenly between the two end distances (ends, else the larger of 7d and 80 mm) with at most that pitch; zigzag sets them above the middle, in it, below it, in it, and so on from the start. Without a grade they count as 4.6, assumed. A support with leaf carries those leaves alone.' },
    { construct: 'bolts at stations', text: 'member R3 {\n  of C24\n  plies 2 of 63 x 200 mm\n  length 3.00 m\n  on north at 0.10 m bearing 150 mm\n  on south at 2.90 m bearing 150 mm\n  bolts M12 grade 8.8 (documented "stamped") at 0.20 m, 0.85 m, 1.50 m, 2.15 m, 2.80 m zigzag 50 mm\n}\nload shelf imposed E 0.4 kN at 1.20 m on R3 leaf 2', note: 'One bolt a station. A load is shared by the leaves by breadth, unless one leaf is said to carry it.' },
    { construct: 'flitch', text: 'member F1 {\n  of C24\n  flitch 2 of 75 x 225 mm with 1 steel S275 12 x 200 mm\n  length 4.00 m\n  on north at 0.10 m bearing 150 mm\n  on south at 3.90 m bearing 150 mm\n  bolts M12 grade 8.8 at 0.20 m, 0.80 m, 1.40 m\n}', note: 'Timber leaves with steel plates between: the thickness of a plate by its depth.' },
    { construct: 'steel beam', text: 'member S1 {\n  of S275\n  section HEA 140\n  length 4.90 m\n  on north at 0.10 m bearing 150 mm\n  on south at 4.80 m bearing 150 mm\n  splice at 1.90 m { end plate 150 x 12 mm  bolts 4 M16 grade 8.8 }\n}', note: 'A rolled section (or a flat, section 12 x 200 mm) of S235, S275, S355 or a declared steel, and a bolted splice. An end plate has its width and thickness and is as long as the section is deep, unless a third side is said.' },
    { construct: 'splice by covers', text: 'member S2 {\n  of S275\n  section HEA 140\n  length 4.90 m\n  on north at 0.10 m bearing 150 mm\n  on south at 4.80 m bearing 150 mm\n  splice at 3.20 m {\n    web plate 80 x 8 x 300 mm\n    flange plate 140 x 10 x 400 mm steel S355\n    bolts 8 M16 grade 8.8\n  }\n}', note: 'web, flange or cover plates: width, thickness, length. A plate is of the member\'s own steel unless it says one.' },
    { construct: 'let', text: 'let bay = 2.20 m\nload boards permanent 0.15 kN/m2 strip bay/2 + 0.10 m on B1', note: 'A value with a name. Order of declarations does not matter.' },
    { construct: 'functions', text: 'let reach = round(max(1.2 m, sqrt(2 m * 3 m), abs(0.5 m - 1 m)), to: 5 mm)', note: 'min, max, sqrt, abs, round; a dimension that does not fit is an error at the operand.' },
    { construct: 'quantities of things', text: 'let half = B1.span / 2\nload tool construction 0.5 kN at half on B1', note: 'A member has length, span (its longest), breadth and depth (of leaves those of one); a wall thick and height; a load its amount; a masonry fk.' },
    { construct: 'permanent load', text: 'load ceiling permanent 0.50 kN/m2 strip 2.20 m on B1 (assumed)', note: 'An area load has the width that it is collected from.' },
    { construct: 'imposed load', text: 'load storage imposed E 0.75 kN/m from 0.5 m to 2.5 m on B1 lasting long-term', note: 'Categories A to H of EN 1991-1-1. from … to limits it; lasting sets the duration that the action would else have.' },
    { construct: 'force', text: 'load valley snow 3.2 kN at 1.40 m on B1', note: 'A force stands at a station. Downwards is positive.' },
    { construct: 'mass as a load', text: 'load tank permanent 480 kg at 1.00 m on B1', note: 'Times g = 9.80665 m/s².' },
    { construct: 'wind', text: 'load uplift wind -0.4 kN/m on B1', note: 'A negative amount lifts.' },
    { construct: 'evidence', text: 'load chest imposed A 240 lb at 4 ft on B1 (measured "bathroom scale")', note: 'measured, probed, tested, graded, documented, judged or assumed, after any input. An input of consequence without it counts as assumed. Imperial units are as good as any.' },
    { construct: 'require', text: 'require B1.bending <= 90 %\nrequire B1.final <= span/300\nrequire B1.net section <= 100 %', note: 'Compares results: utilisations by the name of the check (or of the member, for its worst), and the deflections instant and final. span is the longest of the member named.' },
    { construct: 'band', text: 'masonry oldStone {\n  fk 1.5 .. 3.0 MPa (judged "soft mortar, some pushed out")\n}', note: 'Any input may be given as a band, low to high, where no one value is known. The unit behind the higher value is that of both. Every check is then the one of its worst corner, and says which that is.' },
    { construct: 'answer', text: 'answer services-unknown "traced and isolated" (measured)\nanswer uplift-not-tied on B1 "strapped to the wall at both ends" (documented)', note: 'What was done about a hazard, by the code that the hazard has on the sheet, for all that it is about or for one of them; and how that is known.' },
    { construct: 'breakeven', text: 'breakeven oldPine.fm_k\nbreakeven T9.section.depth\nbreakeven T9.south.bearing', note: 'The value of an input at which the first check fails. An input is called by what it is of: oldPine.grade, T9.loss.top, R2.bolts.every, storage (the amount of a load), storage.strip; where there are several of a kind, loss2, loss3 in the order of writing.' },
    { construct: 'hanger', text: 'hanger H3 carries T9 at 1.50 m from B1 at 1.50 m {\n  rods 2 M12 grade 4.6\n  head plate 70 x 10 x 300 mm steel S275\n  foot plate 70 x 10 x 300 mm steel S275\n  washers 40 x 6 mm\n  gap 40 mm\n}', note: 'Hangs one member from another by rods, at a station of each. Plates are width, thickness, length; gap is what is clear between the two timbers, nought unless said. Without a grade the rods count as 4.6, assumed.' },
    { construct: 'detail and use', text: 'detail rodHanger (old: member, new: member, at: length, rod: thread = M12) {\n  hanger carries old at at from new at at {\n    rods 2 rod grade 4.6\n    washers 40 x 6 mm\n  }\n}\nuse rodHanger H1 (old: T9, new: B1, at: 1.50 m)', note: 'A detail with parameters: a member, a wall, a thread, or a length, force, mass, stress, angle, time or number, with a value where the use may leave it out. The use makes a real hanger, called as the use is: H1 in stages and in require. An error inside a detail points at the use and at the line of the detail.' },
    { construct: 'details of details', text: 'detail oneRod (old: member, new: member, at: length) {\n  hanger carries old at at from new at at { rods 1 M16 grade 4.6 }\n}\ndetail pair (old: member, new: member, at: length, apart: length = 0.60 m) {\n  let half = apart / 2\n  use oneRod left (old: old, new: new, at: at - half)\n  use oneRod right (old: old, new: new, at: at + half)\n}\nuse pair P (old: T9, new: B1, at: 1.50 m)\nstage found { T9 }\nstage hung { B1, P  tighten P to 1.5 kN }\nrequire P.left.rods <= 80 %', note: 'A detail may use others, and have values of its own. Where it makes several things, each is called by the use and its own name, P.left, or by its order, P.1; in a stage P stands for all of them.' },
    { construct: 'ranges of parameters', text: 'detail rodsWithin (old: member, new: member, at: length from 0.30 m to 3.50 m, gap: length = 20 mm from 0 mm to 60 mm) {\n  hanger carries old at at from new at at {\n    rods 2 M12 grade 4.6\n    washers 40 x 6 mm\n    gap gap\n  }\n}\nuse rodsWithin H5 (old: T9, new: B1, at: 1.50 m)', note: 'What a detail is made for: a use that gives more or less is an error, there and at the parameter.' },
    { construct: 'parts of details', text: 'detail beamAcross (one: wall, other: wall, clear: length from 1 m to 4 m, wood: timber = C24, held: force) {\n  member beam {\n    of wood\n    section 75 x 200 mm\n    length clear + 0.30 m\n    on one at 0.10 m bearing 100 mm\n    on other at clear + 0.20 m bearing 100 mm\n  }\n  load middle permanent held at beam.length / 2 on beam\n}\nuse beamAcross X1 (one: north, other: south, clear: 2.40 m, held: 1.2 kN)\nload shelf permanent 0.2 kN/m on X1\nrequire X1.bending <= 80 %', note: 'A detail may hold members, walls, materials and loads. Where it makes one thing only, that is called as the use is; else each by both names, X1.beam. A timber or a steel is given by the name of a declared one, or by its class.' },
    later({ construct: 'include', text: 'include "details/hangers.padstone"', note: 'A path relative to this file, with / between its parts. What is declared there counts as if it stood here; a file that is included twice is read once, a circle is an error, and nothing is fetched from a network. Of a file that is a job of its own the settings are not used.' }),
    { construct: 'stages', text: 'stage found { T9 }\nstage propped { prop T9 at 2.00 m lift 3 mm }\nstage strengthened { B1 }\nstage relieved { release props }', note: 'In the order of writing. An element that no stage adds is there from the first; one that a stage adds was not there before, and has no stress when it comes. A prop may lift.' },
    { construct: 'steps of a stage', text: 'hanger H4 carries T9 at 1.50 m from B1 at 1.50 m { rods 2 M12 grade 4.6 }\nstage one "before" { T9  prop T9 at 2.00 m }\nstage two { B1, H4  tighten H4 to 2.5 kN }\nstage three { release T9 }\nstage four { remove H4 }', note: 'Names add members and hangers; remove takes them away; prop stands until release, of members or of all props; tighten sets the force of hangers.' },
    { construct: 'loadtest', text: 'loadtest bench "on blocks in the yard" {\n  T9 on blocks at 0.30 m, 3.70 m\n  weight 240 kg at 2.00 m spread 0.60 m\n  weight 480 kg at 2.00 m spread 0.60 m\n  read 240 kg 4 mm (measured "dial gauge")\n  read 480 kg 8 mm\n  read 0 kg 0.5 mm\n}', note: 'A proof load and its readings. A weight is all that lies on the member at one time, between the blocks; a reading is the sag under one of them, or under 0 kg after unloading. plies 1, 2 of R2 on blocks tests two leaves.' },
    { construct: 'option', text: 'option deeper "a deeper beam" {\n  replace B1 {\n    of C24\n    section 75 x 250 mm\n    length 3.00 m\n    on north at 0.10 m bearing 100 mm\n    on south at 2.90 m bearing 100 mm\n  }\n}', note: 'A whole alternative: the calculation with another member, said in full, in the place of one. All else of the file stays: loads, hangers and stages that name the member are of its replacement.' }
];

const prelude = `timber oldPine { grade C18 (judged) }
masonry oldBrick { fk 2.0 MPa (assumed) }
wall north { of oldBrick thick 330 mm }
wall south { of oldBrick thick 330 mm }
member B1 { of C24 section 75 x 225 mm length 3.00 m on north at 0.10 m bearing 100 mm on south at 2.90 m bearing 100 mm }
member T9 { of oldPine section 190 x 240 mm length 4.00 m on north at 0.10 m bearing 100 mm on south at 3.90 m bearing 100 mm }
`;

const usual: readonly (readonly [word: string, text: string])[] = [
    ['of', 'of oldPine'], ['section', 'section 190 x 240 mm'], ['length', 'length 4.90 m'],
    ['on', 'on north at 0.10 m bearing 150 mm'], ['on south', 'on south at 4.80 m bearing 150 mm']
];

/** A whole file with the example in it, and what it needs around it. */
export function exampleFile({ construct, text, inside }: Example): string {
    const job = construct === 'job' ? '' : 'job "Example"\n';
    const rest = usual.filter(([word]) => !text.startsWith(`${word} `)).map(([, line]) => `  ${line}\n`).join('');
    return `${job}${inside === 'member' ? `member X {\n${rest}  ${text.replace(/\n/g, '\n  ')}\n}` : text}\n${prelude}`;
}
