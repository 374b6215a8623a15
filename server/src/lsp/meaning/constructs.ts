/** What a word of the language is for: the README's note and example of its construct. */
import { examples } from '../../../../language/src/index.js';

/** By the rule of the grammar that the word stands in. */
const constructs: Readonly<Record<string, string>> = {
    Job: 'job', Revision: 'job', Basis: 'job', Recommended: 'job', ServiceClass: 'job', Combinations: 'job', CombinationRule: 'job', Include: 'include',
    Access: 'access', AccessLimit: 'access', Survey: 'survey', Values: 'values', Timber: 'timber', Grade: 'timber', Moisture: 'timber', Properties: 'own properties',
    Steel: 'steel', Masonry: 'masonry by strength', Strength: 'masonry by strength', Unit: 'masonry by unit and mortar', Wall: 'wall', Thickness: 'wall', Height: 'wall',
    Member: 'member', OfMaterial: 'material by class', SectionStatement: 'section', LengthStatement: 'length', Plies: 'plies', Ply: 'plies', Leaves: 'plies', Flitch: 'flitch',
    Bolts: 'bolts at stations', BoltGrade: 'bolts at stations', BoltStations: 'bolts at stations', BoltSpacing: 'plies', BoltZigzag: 'plies', BoltEnds: 'plies',
    Bearing: 'bearing on a wall', BearingLength: 'bearing on a wall', Tied: 'bearing on a wall', WallEnd: 'bearing on a wall', Crossing: 'bearing on a member',
    Spring: 'spring', Pinned: 'pinned, fixed', Fixed: 'pinned, fixed', Stands: 'pinned, fixed', Loss: 'loss', FaceLoss: 'loss', Notch: 'notch', Hole: 'hole',
    Splice: 'steel beam', Plate: 'splice by covers', Restrained: 'restrained', Precamber: 'precamber', Slopes: 'slopes', NoSelfWeight: 'no self weight',
    SystemStrength: 'system strength', Floor: 'floor', FloorFact: 'floor', Fire: 'fire', Let: 'let', Call: 'functions',
    Load: 'permanent load', LoadStrip: 'permanent load', LoadRun: 'imposed load', LoadLasting: 'imposed load', DurationName: 'imposed load', LoadAt: 'force', LoadOn: 'force', ActionName: 'imposed load',
    Hanger: 'hanger', Rods: 'hanger', Washers: 'hanger', Gap: 'hanger', Detail: 'detail and use', Parameter: 'detail and use', Use: 'detail and use',
    Stage: 'stages', Prop: 'steps of a stage', Release: 'steps of a stage', Tighten: 'steps of a stage', Remove: 'steps of a stage', Add: 'steps of a stage',
    Require: 'require', BreakEven: 'breakeven', LoadTest: 'loadtest', TestPiece: 'loadtest', TestWeight: 'loadtest', TestReading: 'loadtest',
    Option: 'option', Replace: 'option', Answer: 'answer', Evidence: 'evidence', EvidenceName: 'evidence'
};

export const constructNames: readonly string[] = [...new Set(Object.values(constructs))];

export interface ConstructHelp {
    readonly note: string;
    readonly example: string;
}

export function constructHelp(rule: string): ConstructHelp | undefined {
    const example = examples.find(({ construct }) => construct === constructs[rule]);
    return example && { note: example.note, example: example.text };
}

/** As Markdown. */
export function constructMarkdown(rule: string): string | undefined {
    const help = constructHelp(rule);
    return help && `${help.note}\n\n\`\`\`padstone\n${help.example}\n\`\`\``;
}
