import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../language/src/index.js';
import { applyFix, errorsOf, inMember, marked, soundJob } from './check.js';

/** Text with the marked range, code, message, and the line that the fix makes of it. */
type Row = readonly [text: string, code: string, message: string, mended?: string];

const member: readonly Row[] = [
    ['loss 1 m .. ⟦5 m⟧ { top 20 mm }', 'loss-outside', 'this is 1 m past the end (4 m) of J3'],
    ['loss ⟦-1 m⟧ .. 2 m { top 20 mm }', 'loss-outside', 'this is 1 m before the start of J3'],
    ['loss ⟦2 m .. 1 m⟧ { top 20 mm }', 'empty-run', 'this ends before it begins'],
    ['⟦loss 1 m .. 2 m { top 120 mm bottom 80 mm }⟧', 'nothing-left', 'this loss leaves nothing of J3: 200 mm of a section 200 mm deep'],
    ['⟦loss 1 m .. 2 m { left 75 mm }⟧', 'nothing-left', 'this loss leaves nothing of J3: 75 mm of a section 75 mm broad'],
    ['loss 1 m .. 2 m { top ⟦-5 mm⟧ }', 'negative', '-5 mm is negative: this cannot be'],
    ['loss 1 m .. 2 m { top 20 mm ⟦top 30 mm⟧ }', 'duplicate-face', 'the top face is given twice'],
    ['notch bottom 0 m .. 0.2 m deep ⟦200 mm⟧', 'nothing-left', 'this notch leaves nothing of J3: 200 mm of a section 200 mm deep'],
    ['hole 20 mm at ⟦4.5 m⟧', 'loss-outside', 'this hole is not on J3'],
    ['on north at ⟦5 m⟧', 'support-outside', 'this support is 1 m past the end (4 m) of J3'],
    ['on north at ⟦-0.2 m⟧', 'support-outside', 'this support is 200 mm before the start of J3'],
    ['on ⟦nort⟧ at 1 m', 'unknown-name', 'unknown name \'nort\': did you mean \'north\'?', 'on north at 1 m'],
    ['on ⟦boards⟧ at 1 m', 'wrong-kind', '\'boards\' is a load, not a wall or a member'],
    ['on ⟦J3⟧ at 1 m crossing at 1 m', 'on-itself', 'J3 cannot stand on itself'],
    ['⟦on J1 at 1 m⟧', 'no-crossing', 'where J3 crosses J1 is not said: add crossing at a station along J1', 'on J1 at 1 m crossing at 1.00 m'],
    ['on north at 2 m bearing ⟦0 mm⟧', 'not-positive', '0 mm is nought: this is more than nought'],
    ['spring ⟦500 N⟧ at 2 m', 'wrong-dimension', 'expected a line load, found a force', 'spring 500 N/mm at 2 m'],
    ['precamber ⟦5⟧', 'unit-missing', 'a unit is missing: expected a length, such as 5 mm', 'precamber 5 mm'],
    ['slopes ⟦95 deg⟧', 'too-steep', 'a slope is less than 90 deg: a post says stands'],
    ['⟦floor { width 4 m }⟧', 'floor-incomplete', 'this floor lacks its spacing, mass, deck'],
    ['⟦length 4 m⟧', 'said-twice', 'J3 says this twice'],
    ['fire ⟦30 mm⟧', 'wrong-dimension', 'expected a time, found a length', 'fire 30 min'],
    ['precamber 5 ⟦mmm⟧', 'unknown-unit', 'unknown unit \'mmm\': did you mean \'mm\'?', 'precamber 5 mm'],
    ['precamber 3⟦,⟧5 mm', 'decimal-comma', 'decimals are written with a point, not a comma', 'precamber 3.5 mm'],
    ['⟦precambre⟧ 5 mm', 'syntax', '\'precambre\' is not a statement of a member: did you mean \'precamber\'?', 'precamber 5 mm'],
    ['restrained ⟦evry⟧ 600 mm', 'syntax', '\'evry\' is not a statement of a member: did you mean \'every\'?', 'restrained every 600 mm'],
    ['precamber 5 mm (⟦mesured⟧)', 'syntax', 'how it is known (measured, probed, tested, graded, documented, judged, assumed) is missing after \'(\', where \'mesured\' stands: did you mean \'measured\'?', 'precamber 5 mm (measured)'],
    ['⟦precamber⟧', 'syntax', 'a value is missing after \'precamber\', such as 4.90 m'],
    ['precamber 5 mm ⟦"note⟧', 'syntax', 'this text is not closed: a " is missing', 'precamber 5 mm "note"'],
    ['precamber 5 mm ⟦/* note⟧', 'syntax', 'this comment is not closed: */ is missing'],
    ['precamber 5 mm ⟦§⟧', 'syntax', '\'§\' has no meaning here'],
    ['loss 1 m .. 2 m { top 3 ⟦mm⟧', 'syntax', '} is missing: the block of a loss is not closed'],
    ['loss 1 m ⟦2⟧ m { top 3 mm }', 'syntax', '\'..\' is missing after \'m\', where \'2\' stands']
];

const lengths: readonly Row[] = [
    ['length ⟦4.9 kN⟧', 'wrong-dimension', 'expected a length, found a force', 'length 4.9 m'],
    ['length ⟦4⟧', 'unit-missing', 'a unit is missing: expected a length, such as 4 m', 'length 4 m'],
    ['length ⟦-4 m⟧', 'not-positive', '-4 m is negative: this is more than nought'],
    ['length ⟦1e308 m⟧', 'number-too-large', 'this number is too large to be a measure of anything in a building'],
    ['length ⟦1e999 m⟧', 'number-too-large', 'this number is too large to be a measure of anything in a building'],
    ['length ⟦2000 m⟧', 'too-large', '2000 m is too large: at most 1000 m'],
    ['length 4 m + ⟦2 kN⟧', 'wrong-dimension', 'expected a length, found a force: only like can be added to like'],
    ['length 4 m / ⟦0⟧', 'division-by-zero', 'this is nought: nothing can be divided by it'],
    ['length max(4 m, ⟦3 kg⟧)', 'wrong-dimension', 'expected a length, found a mass'],
    ['length sqrt(⟦4 m⟧)', 'wrong-dimension', 'expected an area or a plain number, found a length'],
    ['length 1 m * sqrt(⟦-4⟧)', 'negative-root', 'the square root of a negative number'],
    ['length ⟦round(4.1 m)⟧', 'wrong-arguments', 'say what to round to: round(…, to: 5 mm)'],
    ['length ⟦J1.bending⟧', 'result-in-input', 'J1.bending is a result: results can be used in require and breakeven alone'],
    ['length ⟦J1.weight⟧', 'unknown-quantity', 'J1.weight is not available in an input in this version'],
    ['length ⟦J1.lenght⟧', 'unknown-quantity', 'J1.lenght is not a value: did you mean \'length\'?', 'length J1.length'],
    ['length ⟦J3.length⟧', 'circle', 'circle of definitions: J3.length → J3.length'],
    ['length ⟦reach⟧', 'unknown-name', 'unknown name \'reach\'']
];

const top: readonly Row[] = [
    ['load x snow 3 kN/m on ⟦J7⟧', 'unknown-name', 'unknown name \'J7\': did you mean \'J1\'?', 'load x snow 3 kN/m on J1'],
    ['load x snow 3 kN/m on ⟦north⟧', 'wrong-kind', '\'north\' is a wall, not a member'],
    ['load ⟦x⟧ snow 3 kN/m', 'load-on-nothing', 'load x is on nothing: say on which member'],
    ['load x snow 3 kN at ⟦9 m⟧ on J1', 'load-outside', 'this load is 5 m past the end (4 m) of J1'],
    ['load x snow 3 kN/m from 1 m to ⟦9 m⟧ on J1', 'load-outside', 'this load is 5 m past the end (4 m) of J1'],
    ['load x snow ⟦3 kN⟧ on J1', 'load-without-place', 'where this force stands is not said: at a station along the member, such as at 2.45 m'],
    ['load x snow ⟦3 kN/m2⟧ on J1', 'load-without-strip', 'an area load needs the width it is collected from: strip 2.20 m'],
    ['load x snow 3 kN/m ⟦strip 2 m⟧ on J1', 'load-misplaced', 'only an area load has a strip'],
    ['load x snow 3 kN/m ⟦at 2 m⟧ on J1', 'load-misplaced', 'only a force stands at one station: from 0 m to 2 m limits a spread load'],
    ['load x ⟦imposed⟧ 3 kN/m on J1', 'no-category', 'an imposed load has a category A to H (EN 1991-1-1): A rooms to live in, E storage, H roofs'],
    ['load x imposed ⟦Z⟧ 3 kN/m on J1', 'unknown-category', 'unknown category \'Z\': imposed loads are A to H'],
    ['load x snow ⟦3⟧ on J1', 'unit-missing', 'a unit is missing: expected a force, a line load or an area load, such as 3 kN/m', 'load x snow 3 kN/m on J1'],
    ['load x snow ⟦3 mm⟧ strip 2 m on J1', 'wrong-dimension', 'expected a force, a line load or an area load, found a length', 'load x snow 3 kN/m2 strip 2 m on J1'],
    ['load ⟦boards⟧ snow 3 kN/m on J1', 'duplicate-name', '\'boards\' is already the name of something else'],
    ['member K { of C24 section ⟦190 x 240⟧ length 3 m on north at 1 m }', 'unit-missing', 'a unit is missing: a size is in mm, cm, m, in or ft', 'member K { of C24 section 190 x 240 mm length 3 m on north at 1 m }'],
    ['member K { of C24 section ⟦0⟧ x 240 mm length 3 m on north at 1 m }', 'not-positive', 'a side of a size is more than nought'],
    ['member K { of C24 section ⟦-75⟧ x 240 mm length 3 m on north at 1 m }', 'not-positive', 'a side of a size is more than nought'],
    ['member K { of C24 section ⟦75 kN⟧ x 240 mm length 3 m on north at 1 m }', 'wrong-dimension', 'expected a length, found a force'],
    ['member K { of C24 section ⟦75 x 240 x 3 mm⟧ length 3 m on north at 1 m }', 'wrong-size', 'expected 2 sides, found 3'],
    ['member ⟦K⟧ { section 1 x 1 m length 3 m on north at 1 m }', 'no-material', 'K has no material: say one, such as of C24'],
    ['member ⟦K⟧ { of C24 length 3 m on north at 1 m }', 'no-section', 'K has no section: say one, such as section 75 x 200 mm'],
    ['member ⟦K⟧ { of C24 section 1 x 1 m on north at 1 m }', 'no-length', 'K has no length: say one, such as length 4.90 m'],
    ['member ⟦K⟧ { of C24 section 1 x 1 m length 3 m }', 'no-support', 'K has no support: say what it is on, such as on north at 0.10 m bearing 100 mm'],
    ['member K { of ⟦C25⟧ section 1 x 1 m length 3 m on north at 1 m }', 'unknown-name', 'unknown name \'C25\': did you mean \'C20\'?', 'member K { of C20 section 1 x 1 m length 3 m on north at 1 m }'],
    ['member ⟦section⟧ { }', 'syntax', '\'section\' is a word of the language and cannot be a name'],
    ['timber x { grade ⟦C19⟧ }', 'unknown-grade', 'unknown strength class \'C19\': did you mean \'C14\'?', 'timber x { grade C14 }'],
    ['timber ⟦x⟧ { }', 'no-grade', 'x has no grade: say one, such as grade C18 (judged "slow grown")'],
    ['timber x { properties { ⟦fmk⟧ 24 MPa } }', 'unknown-property', 'unknown property \'fmk\': did you mean \'fm_k\'?', 'timber x { properties { fm_k 24 MPa } }'],
    ['masonry b { fk ⟦3⟧ }', 'unit-missing', 'a unit is missing: expected a stress or area load, such as 3 MPa', 'masonry b { fk 3 MPa }'],
    ['let a = ⟦b⟧\nlet b = c\nlet c = a', 'circle', 'circle of definitions: b → c → a → b'],
    ['let ⟦a⟧', 'syntax', '\'=\' is missing after \'a\''],
    ['survey { ⟦damp source fixd⟧ }', 'unknown-survey-state', 'what is known of \'damp source fixd\' is not said: one of checked, not checked, found, not found, fixed, not fixed, known, not known, pending, granted, refused, needed, not needed'],
    ['require ⟦J1.bendng⟧ <= 90 %', 'unknown-check', 'unknown result \'J1.bendng\': did you mean \'bending\'?', 'require J1.bending <= 90 %'],
    ['require J1.bending <= ⟦90 mm⟧', 'wrong-dimension', 'expected a plain number, found a length'],
    ['require J1.final <= ⟦90 %⟧', 'wrong-dimension', 'expected a length, found a plain number'],
    ['breakeven ⟦bords⟧', 'unknown-input', 'no input is called \'bords\': did you mean \'boards\'?', 'breakeven boards'],
    ['use ⟦foo⟧ H1 (at: 3 m)', 'unknown-name', 'unknown detail \'foo\''],
    ['detail d (at: ⟦lenght⟧) { }', 'unknown-type', 'unknown kind of parameter \'lenght\': did you mean \'length\'?', 'detail d (at: length) { }'],
    ['detail d (at: length = ⟦3 kN⟧) { }', 'wrong-dimension', 'expected a length, found a force', 'detail d (at: length = 3 m) { }'],
    ['detail d (at: length, ⟦at⟧: force) { }', 'duplicate-name', '\'at\' is already a parameter of d'],
    ['detail d (old: member) { }\nuse d H1 (⟦oldd⟧: J1)', 'unknown-parameter', 'd has no parameter \'oldd\': did you mean \'old\'?', 'use d H1 (old: J1)'],
    ['detail d (old: member, at: length = 3 m) { }\nuse d ⟦H1⟧ ()', 'missing-parameter', 'H1 does not say old of d'],
    ['detail d (old: member) { }\nuse d H1 (old: ⟦north⟧)', 'wrong-kind', '\'north\' is a wall, not a member'],
    ['detail d (old: member) { }\nuse d H1 (old: ⟦3 m⟧)', 'wrong-kind', 'expected the name of a member'],
    ['detail d (at: length) { }\nuse d H1 (at: ⟦3 kN⟧)', 'wrong-dimension', 'expected a length, found a force', 'use d H1 (at: 3 m)'],
    ['include "d.padstone"\nuse d H1 (old: ⟦J9⟧, rod: M16)', 'unknown-name', 'unknown name \'J9\': did you mean \'J1\'?', 'use d H1 (old: J1'],
    ['detail d (rod: thread = ⟦W12⟧) { }', 'wrong-kind', 'expected a thread such as M12'],
    ['stage a { prop J1 at ⟦3 kN⟧ }', 'wrong-dimension', 'expected a length, found a force', 'stage a { prop J1 at 3 m }'],
    ['stage a { prop J1 at ⟦reach⟧ }', 'unknown-name', 'unknown name \'reach\''],
    ['option o { replace J1 { of C24 section 1 x 1 m length 3 m on ⟦nort⟧ at 1 m } }', 'unknown-name', 'unknown name \'nort\': did you mean \'north\'?', 'on north at'],
    ['stage a { ⟦J8⟧ }', 'unknown-name', 'unknown name \'J8\': did you mean \'J1\'?', 'stage a { J1 }'],
    ['option o { replace J1 { of C24 section 1 x 1 m length ⟦3 kg⟧ on north at 1 m } }', 'wrong-dimension', 'expected a length, found a mass', 'option o { replace J1 { of C24 section 1 x 1 m length 3 m on north at 1 m } }'],
    ['job ⟦"again"⟧', 'duplicate-job', 'a file is one job: this is the second'],
    ['⟦}⟧', 'syntax', 'this } closes nothing'],
    ['⟦membr⟧ K { }', 'syntax', '\'membr\' begins no statement: did you mean \'member\'?', 'member K { }'],
    ['values { ⟦gamma_G⟧ }', 'syntax', 'a name and its number is missing after \'{\', where \'gamma_G\' stands, such as gamma_M solid 1.3']
];

/** In a member of leaves, 4 m long, on walls at 0.1 m and 3.9 m. */
const leaves: readonly Row[] = [
    ['bolts M12 every ⟦0 mm⟧', 'not-positive', '0 mm is nought: this is more than nought'],
    ['bolts M12 every ⟦-20 mm⟧', 'not-positive', '-20 mm is negative: this is more than nought'],
    ['bolts M12 every ⟦1 mm⟧', 'too-many-bolts', 'these are 3833 bolts: at most 500 in a row are computed'],
    ['⟦bolts M12 every 300 mm ends 2.1 m⟧', 'bolts-nowhere', 'no bolt fits between two end distances of 2100 mm'],
    ['⟦bolts M12 grade 8.8⟧', 'bolts-nowhere', 'where these bolts are is not said: every 350 mm, or at 0.20 m, 0.55 m'],
    ['bolts M12 at 1 m ⟦every 300 mm⟧', 'bolts-both-ways', 'bolts are either at stations or every so far between the ends'],
    ['bolts M12 at 1 m ⟦at 2 m⟧', 'said-twice', 'these bolts say this twice'],
    ['bolts ⟦2⟧ M12 at 1 m', 'misplaced-count', 'only the bolts of a splice are counted: each station has one bolt here'],
    ['bolts M12 at ⟦4.2 m⟧', 'bolt-outside', 'this bolt is 200 mm past the end (4 m) of J3'],
    ['bolts M12 at 1 m, ⟦1 m⟧', 'bolts-collide', 'two bolts are in one place here'],
    ['bolts M12 at 1 m\n  bolts M16 at ⟦1.01 m⟧', 'bolts-collide', 'two bolts are in one place here'],
    ['bolts M12 at 1 m, 1.01 m zigzag ⟦100 mm⟧', 'bolt-outside', 'a bolt 100 mm from the axis is cut by the edge of a leaf 200 mm deep'],
    ['bolts M12 every 400 mm zigzag ⟦95 mm⟧', 'bolt-outside', 'a bolt 95 mm from the axis is cut by the edge of a leaf 200 mm deep'],
    ['bolts ⟦M13⟧ at 1 m', 'unknown-thread', 'unknown thread \'M13\': did you mean \'M10\'?', 'bolts M10 at 1 m'],
    ['bolts M12 grade ⟦7.7⟧ at 1 m', 'unknown-grade', 'unknown bolt grade \'7.7\': known are 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 10.9'],
    ['ply ⟦4⟧ butt at 1 m', 'no-such-leaf', 'there is no leaf 4: they count from 1 to 3, from the left'],
    ['ply ⟦0⟧ butt at 1 m', 'no-such-leaf', 'there is no leaf 0: they count from 1 to 3, from the left'],
    ['ply ⟦1.5⟧ butt at 1 m', 'no-such-leaf', 'there is no leaf 1.5: they count from 1 to 3, from the left'],
    ['ply 1 butt at ⟦4.2 m⟧', 'butt-outside', 'this butt is 200 mm past the end (4 m) of J3'],
    ['ply 1 butt at ⟦-1 m⟧', 'butt-outside', 'this butt is 1 m before the start of J3'],
    ['ply 1 butt at ⟦4 m⟧', 'butt-outside', 'a leaf ends here already: nothing is broken'],
    ['ply 2 butt at ⟦3.9 m⟧', 'butt-at-support', 'leaf 2 of J3 is broken where it bears'],
    ['ply 2 butt at ⟦3.86 m⟧', 'butt-at-support', 'leaf 2 of J3 is broken where it bears'],
    ['⟦ply 1, 2, 3 butt at 2 m⟧', 'all-leaves-broken', 'every leaf of J3 is broken at 2 m: nothing is whole there'],
    ['ply 1, 2 butt at 2.008 m\n  ⟦ply 3 butt at 2 m⟧', 'all-leaves-broken', 'every leaf of J3 is broken at 2 m: nothing is whole there'],
    ['on north at 2 m leaf ⟦7⟧', 'no-such-leaf', 'there is no leaf 7: they count from 1 to 3, from the left'],
    ['on north at 2 m leaf 1, 2\n  on south at ⟦2 m⟧ leaf 2', 'duplicate-support', 'J3 has a support at this station already'],
    ['hole ⟦0 mm⟧ at 1 m', 'not-positive', '0 mm is nought: this is more than nought'],
    ['⟦hole 40 mm at 1 m height 85 mm⟧', 'hole-outside', 'this hole breaks through an edge of J3: it is a notch'],
    ['splice at ⟦5 m⟧ { cover plate 60 x 8 x 300 mm steel S275 bolts 4 M12 }', 'splice-outside', 'this splice is 1 m past the end (4 m) of J3'],
    ['splice at 2 m { ⟦cover plate 60 x 8 x 300 mm⟧ bolts 4 M12 }', 'no-grade', 'this plate is of no steel: say which, such as steel S235'],
    ['splice at 2 m { cover plate 60 x 8 x 300 mm steel ⟦S276⟧ bolts 4 M12 }', 'unknown-grade', 'unknown steel \'S276\': did you mean \'S275\'?', 'steel S275'],
    ['splice at 2 m { cover plate ⟦60 x 8 mm⟧ steel S275 bolts 4 M12 }', 'wrong-size', 'expected 3 sides, found 2'],
    ['splice at 2 m { ⟦head plate 60 x 8 x 30 mm steel S275⟧ bolts 4 M12 }', 'misplaced-plate', 'a head plate belongs to a hanger: a splice has end, cover, web or flange plates'],
    ['splice at 2 m { cover plate 60 x 8 x 300 mm steel S275 ⟦bolts M12⟧ }', 'no-count', 'how many bolts these are is not said: bolts 4 M16 grade 8.8'],
    ['splice at 2 m { cover plate 60 x 8 x 300 mm steel S275 bolts 4 M12 ⟦every 30 mm⟧ }', 'misplaced-bolts', 'the bolts of a splice are counted: bolts 4 M16 grade 8.8'],
    ['⟦splice at 2 m { cover plate 60 x 8 x 300 mm steel S275 }⟧', 'splice-incomplete', 'this splice lacks its bolts']
];

/** Whole members. */
const sections: readonly Row[] = [
    ['of C24 plies ⟦0⟧ of 63 x 200 mm', 'not-whole', 'expected a whole number from 1'],
    ['of C24 plies ⟦2.5⟧ of 63 x 200 mm', 'not-whole', 'expected a whole number from 1'],
    ['of C24 plies 2 of ⟦63 x 200⟧', 'unit-missing', 'a unit is missing: a size is in mm, cm, m, in or ft', 'plies 2 of 63 x 200 mm'],
    ['of S275 ⟦plies 3 of 63 x 200 mm⟧', 'wrong-material', 'K is of steel: leaves are of timber'],
    ['of C24 ⟦section HEA 140⟧', 'wrong-material', 'HEA 140 is a rolled section of steel, and K is of timber'],
    ['of C24 section 75 x 200 mm ⟦bolts M12 at 1 m⟧', 'no-leaves', 'K has no leaves to bolt together: say them, such as plies 3 of 63 x 200 mm'],
    ['of C24 section 75 x 200 mm ⟦ply 1 butt at 1 m⟧', 'no-leaves', 'K has no plies to break: say them, such as plies 3 of 63 x 200 mm'],
    ['of C24 section 75 x 200 mm on south at 2 m leaf ⟦2⟧', 'no-such-leaf', 'there is no leaf 2'],
    ['of C24 plies 1 of 63 x 200 mm ⟦ply 1 butt at 2 m⟧', 'all-leaves-broken', 'the one leaf of K is broken at 2 m'],
    ['of C24 ⟦flitch 2 of 75 x 225 mm with 1 steel 12 x 200 mm⟧', 'no-grade', 'the plate is of no steel: say which, such as steel S235'],
    ['of C24 flitch 2 of 75 x 225 mm with 1 steel ⟦C24⟧ 12 x 200 mm', 'unknown-grade', 'unknown steel \'C24\'']
];

const hung: readonly Row[] = [
    ['hanger H carries J1 at 1 m from ⟦J1⟧ at 2 m { rods 2 M12 }', 'hung-on-itself', 'J1 cannot hang from itself'],
    ['hanger H carries J1 at ⟦5 m⟧ from J2 at 1 m { rods 2 M12 }', 'hanger-outside', 'this hanger is 1 m past the end (4 m) of J1'],
    ['hanger H carries J1 at 1 m from J2 at ⟦-1 m⟧ { rods 2 M12 }', 'hanger-outside', 'this hanger is 1 m before the start of J2'],
    ['hanger H carries ⟦north⟧ at 1 m from J2 at 1 m { rods 2 M12 }', 'wrong-kind', '\'north\' is a wall, not a member'],
    ['hanger H carries ⟦J9⟧ at 1 m from J2 at 1 m { rods 2 M12 }', 'unknown-name', 'unknown name \'J9\': did you mean \'J1\'?', 'carries J1 at'],
    ['⟦hanger H carries J1 at 1 m from J2 at 1 m { }⟧', 'no-rods', 'H has no rods: say them, such as rods 2 M12 grade 4.6'],
    ['⟦hanger carries J1 at 1 m from J2 at 1 m { rods 2 M12 }⟧', 'no-name', 'this hanger has no name: only in a detail may it go without, and is called as the use is'],
    ['hanger H carries J1 at 1 m from J2 at 1 m { rods ⟦0⟧ M12 }', 'not-whole', 'expected a whole number from 1'],
    ['hanger H carries J1 at 1 m from J2 at 1 m { rods 2 ⟦M11⟧ }', 'unknown-thread', 'unknown thread \'M11\': did you mean \'M10\'?', 'rods 2 M10'],
    ['hanger H carries J1 at 1 m from J2 at 1 m { rods 2 M12 gap ⟦-4 mm⟧ }', 'negative', '-4 mm is negative: this cannot be'],
    ['hanger H carries J1 at 1 m from J2 at 1 m { rods 2 M12 ⟦rods 1 M10⟧ }', 'said-twice', 'H says this twice'],
    ['hanger H carries J1 at 1 m from J2 at 1 m { rods 2 M12 ⟦web plate 70 x 10 x 300 mm steel S275⟧ }', 'misplaced-plate', 'a hanger has a head plate and a foot plate: a web plate belongs to a splice'],
    ['hanger H carries J1 at 1 m from J2 at 1 m { rods 2 M12 ⟦head plate 70 x 10 x 300 mm⟧ }', 'no-grade', 'this plate is of no steel: say which, such as steel S235'],
    ['load l snow 1 kN at 1 m on J1 leaf ⟦2⟧', 'no-such-leaf', 'there is no leaf 2'],
    ['member K { of C24 plies 2 of 63 x 200 mm length 3 m on north at 1 m bolts M12 at 1 m }\nloadtest t { plies 1, ⟦3⟧ of K on blocks at 0 m, 3 m }', 'no-such-leaf', 'there is no leaf 3: they count from 1 to 2, from the left']
];

/** What is asked of a calculation. */
const asked: readonly Row[] = [
    ['masonry b { fk ⟦3 .. 1.5 MPa⟧ }', 'empty-band', 'the lower value of a band stands first, and is less than the higher'],
    ['masonry b { fk ⟦2 MPa .. 2 MPa⟧ }', 'empty-band', 'the lower value of a band stands first, and is less than the higher'],
    ['masonry b { fk 1.5 MPa .. ⟦3 mm⟧ }', 'wrong-dimension', 'expected a stress or area load, found a length: a band is between two of a kind'],
    ['masonry b { fk 1.5 .. ⟦3⟧ }', 'unit-missing', 'a unit is missing: expected a stress or area load, such as 3 MPa', 'fk 1.5 .. 3 MPa'],
    ['masonry b { fk ⟦0⟧ .. 3 MPa }', 'not-positive', '0 kN/m2 is nought: this is more than nought'],
    ['let a = ⟦1 m .. 2 m⟧', 'band-misplaced', 'a value with a name is one number: give the band to the input that uses it'],
    ['member K { of C24 section 1 x 1 m length 4 m slopes ⟦20 .. 30 deg⟧ on north at 0.1 m }', 'band-misplaced', 'no band can stand here: say one value'],
    ['member K { of C24 plies 2 of 63 x 200 mm length 4 m on north at 0.1 m bolts M12 at ⟦1 m .. 2 m⟧ }', 'band-misplaced', 'no band can stand here: say one value'],
    ['breakeven ⟦J1.section⟧', 'unknown-input', 'J1.section is several inputs: J1.section.breadth, J1.section.depth'],
    ['loadtest t { ⟦J9⟧ on blocks at 0 m, 3 m weight 1 kg at 1 m }', 'unknown-name', 'unknown name \'J9\': did you mean \'J1\'?', 't { J1 on'],
    ['loadtest t { ⟦north⟧ on blocks at 0 m, 3 m weight 1 kg at 1 m }', 'wrong-kind', '\'north\' is a wall, not a member'],
    ['loadtest ⟦t⟧ { weight 1 kg at 1 m }', 'load-test-on-nothing', 't tests nothing: say what is on blocks, such as T9 on blocks at 0.30 m, 3.70 m'],
    ['loadtest t { J1 on blocks at 0 m, 3 m ⟦J2 on blocks at 0 m, 3 m⟧ weight 1 kg at 1 m }', 'said-twice', 't says this twice'],
    ['loadtest t { ⟦J1 on blocks at 1 m⟧ weight 1 kg at 1 m }', 'too-few-blocks', 'a piece lies on two blocks at least, such as on blocks at 0.30 m, 3.70 m'],
    ['loadtest t { J1 on blocks at 1 m, ⟦1 m⟧ weight 1 kg at 1 m }', 'duplicate-support', 'there is a block at this station already'],
    ['loadtest t { J1 on blocks at 1 m, ⟦4.5 m⟧ weight 1 kg at 2 m }', 'block-outside', 'this block is 500 mm past the end (4 m) of J1'],
    ['loadtest t { J1 on blocks at ⟦-1 m⟧, 3 m weight 1 kg at 2 m }', 'block-outside', 'this block is 1 m before the start of J1'],
    ['loadtest ⟦t⟧ { J1 on blocks at 0 m, 3 m }', 'no-weights', 't has no weights: say them, such as weight 240 kg at 2.00 m'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight 9 kg at ⟦3.5 m⟧ }', 'weight-outside', 'this weight lies between no blocks'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight 9 kg at 2.8 m spread ⟦600 mm⟧ }', 'weight-outside', 'this weight reaches past the blocks'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight ⟦0 kg⟧ at 2 m }', 'not-positive', '0 kg is nought: this is more than nought'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight ⟦-9 kg⟧ at 2 m }', 'not-positive', '-9 kg is negative: this is more than nought'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight ⟦9 mm⟧ at 2 m }', 'wrong-dimension', 'expected a mass or a force, found a length', 'weight 9 kg at'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight 9 kg at 2 m weight ⟦9 kg⟧ at 1.5 m }', 'duplicate-weight', 'there is a weight of 9 kg already: readings tell weights by their mass'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight 9 kg at 2 m weight 20 kg at 2 m read ⟦10 kg⟧ 4 mm }', 'unknown-weight', 'no weight of 10 kg lies on it: there is 9 kg, 20 kg, and 0 kg after unloading'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight 9 kg at 2 m read ⟦-9 kg⟧ 4 mm }', 'negative', '-9 kg is negative: this cannot be'],
    ['loadtest t { J1 on blocks at 1 m, 3 m weight 9 kg at 2 m read 9 kg ⟦-4 mm⟧ }', 'negative', '-4 mm is negative: this cannot be'],
    ['option ⟦o⟧ { }', 'empty-option', 'option o changes nothing: say what it replaces, such as replace R1 { … }'],
    ['option o { replace ⟦north⟧ { of C24 section 1 x 1 m length 3 m on south at 1 m } }', 'wrong-kind', '\'north\' is a wall, not a member'],
    ['option o { replace ⟦J8⟧ { of C24 section 1 x 1 m length 3 m on south at 1 m } }', 'unknown-name', 'unknown name \'J8\': did you mean \'J1\'?', 'replace J1 {'],
    ['option o { replace J1 { of C24 section 1 x 1 m length 4 m on north at 1 m } replace ⟦J1⟧ { of C24 section 1 x 1 m length 4 m on north at 1 m } }', 'replaced-twice', 'option o replaces J1 twice'],
    ['option o { replace ⟦J1⟧ { of C24 length 4 m on north at 1 m } }', 'no-section', 'J1 has no section: say one, such as section 75 x 200 mm'],
    ['option o { replace J1 { of C24 section 1 x 1 m length 4 m on north at 1 m } }\noption ⟦o⟧ { replace J2 { of C24 section 1 x 1 m length 4 m on north at 1 m } }', 'duplicate-name', '\'o\' is already the name of something else'],
    ['⟦answer services-unknown "traced"⟧', 'no-evidence', 'how this is known is not said: add it behind, such as (measured) or (documented "report of 3 May")'],
    ['answer services-unknown ⟦""⟧ (measured)', 'empty-answer', 'what was done is not said'],
    ['answer uplift-not-tied on ⟦J9⟧ "strapped" (measured)', 'unknown-name', 'unknown name \'J9\': did you mean \'J1\'?', 'on J1 "'],
    ['answer services-unknown "traced" (measured)\n⟦answer services-unknown "again" (measured)⟧', 'answered-twice', 'services-unknown is answered already']
];

function check(source: string, [, code, message, mended]: Row): void {
    const { text, start, end } = marked(source);
    const errors = errorsOf(text);
    const finding = errors.find(error => error.code === code && error.message === message);
    expect(finding, JSON.stringify(errors.map(error => [error.code, error.message]))).toBeDefined();
    expect(errors.filter(error => error.source.start === finding!.source.start && error.code === code)).toHaveLength(1);
    expect(text.slice(finding!.source.start, finding!.source.end)).toBe(text.slice(start, end));
    const lines = text.slice(0, start).split('\n');
    expect([finding!.source.line, finding!.source.column]).toEqual([lines.length, lines.at(-1)!.length + 1]);
    if (mended !== undefined) {
        expect(applyFix(text, finding!)).toContain(mended);
    } else {
        expect(finding!.fix).toBeUndefined();
    }
}

const named = (rows: readonly Row[]): readonly (readonly [string, Row])[] => rows.map(row => [row[0], row]);

describe('errors of a member', () => {
    it.each(named(member))('%s', (_, row) => check(inMember(row[0]), row));
    it('a second support at one station', () => {
        const text = inMember('on north at 0.1 m bearing 80 mm');
        const [finding] = errorsOf(text);
        expect(finding).toMatchObject({ code: 'duplicate-support', message: 'J3 has a support at this station already' });
        expect(finding!.related).toHaveLength(1);
    });
});

describe('errors of leaves', () => {
    const text = (line: string) => inMember(line).replace(/(member J3 \{\n  of C24\n  )section 75 x 200 mm/, '$1plies 3 of 63 x 200 mm');
    it.each(named(leaves))('%s', (_, row) => check(text(row[0]), row));
});

describe('errors of sections', () => {
    it.each(named(sections))('%s', (_, row) => check(`${soundJob}member K { ${row[0]} length 4 m on north at 0.1 m bearing 100 mm }\n`, row));
    it.each([['M12', '12 x 200'], ['M14', '12 x 200'], ['M30', '63 x 30'], ['M30', '30 x 200']])('%s in a leaf of %s mm', (size, leaf) => {
        const [finding] = errorsOf(`${soundJob}member K { of C24 plies 3 of ${leaf} mm bolts ${size} at 1 m length 4 m on north at 0.1 m bearing 100 mm }\n`);
        expect(finding).toMatchObject({ code: 'bolt-too-large', message: `${size} leaves nothing of a leaf of ${leaf.replace('x', '×')} mm` });
    });
});

describe('errors of hangers', () => {
    it.each(named(hung))('%s', (_, row) => check(`${soundJob}${row[0]}\n`, row));
});

describe('errors of values', () => {
    it.each(named(lengths))('%s', (_, row) => check(inMember('', row[0]), row));
});

describe('errors of declarations', () => {
    it.each(named(top))('%s', (_, row) => check(`${soundJob}${row[0]}\n`, row));
});

describe('errors of what is asked', () => {
    it.each(named(asked))('%s', (_, row) => check(`${soundJob}${row[0]}\n`, row));

    it('too many options', () => {
        const options = Array.from({ length: 21 }, (_, i) => `option o${i} { replace J1 { of C24 section 1 x 1 m length 4 m on north at 1 m } }\n`).join('');
        expect(errorsOf(soundJob + options)).toMatchObject([{ code: 'too-many-options', message: 'these are 21 options: at most 20 are computed' }]);
    });
});

describe('errors of the job', () => {
    const job = (setting: string) => soundJob.replace('"Test"', `"Test" { ${setting} }`);
    it.each(named([
        ['service class ⟦4⟧', 'unknown-service-class', 'a service class is 1, 2 or 3'],
        ['basis ⟦EN1996⟧', 'unknown-basis', 'unknown basis \'EN1996\': did you mean \'EN1995\'?', 'basis EN1995'],
        ['combinations ⟦6.11⟧', 'unknown-combinations', 'combinations are 6.10 or 6.10a/b of EN 1990']
    ]))('%s', (_, row) => check(job(row[0]), row));

    it.each(['', '  \n', '// nothing\n', soundJob.replace('job "Test"', '')])('no job: %j', text => {
        const { findings } = evaluateText(text, 'test.padstone');
        expect(findings.map(finding => [finding.severity, finding.code])).toContainEqual(['error', 'no-job']);
        expect(errorsOf(applyFix(text, findings.find(finding => finding.code === 'no-job')!))).toEqual([]);
    });
});
