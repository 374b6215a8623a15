/** What the rules of the grammar are called in messages. */

export interface Expected { readonly what: string; readonly example?: string }

export const tokenNames: Readonly<Record<string, string>> = {
    NUMBER: 'a number', ID: 'a name', STRING: 'a text in "quotes"', UNIT: 'a unit', TIMES: '\'x\' and the other side', EOF: 'the end of the file'
};

const value: Expected = { what: 'a value', example: '4.90 m' };
const size: Expected = { what: 'a size', example: '190 x 240 mm' };
const aName: Expected = { what: 'a name' };

/** By the rule that was being read. */
export const expectations: Readonly<Record<string, Expected>> = {
    Expression: value, Sum: value, Product: value, Prefixed: value, Primary: value, Input: value, Literal: value,
    Size: size, SectionStatement: size, Name: aName, SoftWord: aName, Word: { what: 'a word' },
    RevisionMark: { what: 'a mark', example: 'C' },
    ActionName: { what: 'the kind of load (permanent, imposed A to H, snow, wind, construction)' },
    EvidenceName: { what: 'how it is known (measured, probed, tested, graded, documented, judged, assumed)' },
    DurationName: { what: 'a duration (permanent, long-term, medium-term, short-term, instantaneous)' },
    CombinationRule: { what: '6.10 or 6.10a/b' },
    Values: { what: 'a name and its number', example: 'gamma_M solid 1.3' }, ValueEntry: { what: 'a name and its number', example: 'gamma_M solid 1.3' },
    Survey: { what: 'what was looked for and what is known', example: 'damp source fixed "valley relined"' },
    Properties: { what: 'a property and its value', example: 'fm_k 24 MPa' }
};

export const blockNames: Readonly<Record<string, string>> = {
    Job: 'the job', Survey: 'the survey', Member: 'a member', Replace: 'a member', Timber: 'a timber', Masonry: 'a masonry', Steel: 'a steel',
    Wall: 'a wall', Loss: 'a loss', Floor: 'a floor', LoadTest: 'a load test', Option: 'an option', Stage: 'a stage', Hanger: 'a hanger',
    Detail: 'a detail', Splice: 'a splice', Access: 'the access', Values: 'the values', Properties: 'the properties'
};

/** The block around a block, where it is not the file. */
export const outerBlocks: Readonly<Record<string, string>> = {
    Loss: 'Member', Floor: 'Member', Splice: 'Member', Properties: 'Timber', Replace: 'Option', Hanger: 'Detail'
};
