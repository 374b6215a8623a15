/** Which declared things can stand in a place. */
import * as ast from '../../../../language/src/generated/ast.js';

const members = ['Member', 'Parameter'];
const elements = ['Member', 'Hanger', 'Use'];

const byPlace: Readonly<Record<string, readonly string[]>> = {
    'Bearing.on': ['Wall', ...members], 'LoadOn.member': ['Member'], 'Hanger.carried': members, 'Hanger.carrier': members, 'Prop.member': ['Member'], 'Release.members': ['Member'],
    'Tighten.hangers': ['Hanger', 'Use'], 'Add.elements': elements, 'Remove.elements': elements, 'TestPiece.member': ['Member'], 'Replace.member': ['Member'], 'Use.detail': ['Detail'],
    'Answer.subject': ['Member', 'Hanger', 'Use', 'Wall', 'Timber']
};

const ofValue = ['Let', 'Load', 'Wall', 'Masonry', 'Member', 'Parameter'];
const inDeclaration: Readonly<Record<string, readonly string[]>> = {
    require: ['Member', 'Hanger', 'Use', 'Let'],
    breakeven: ['Member', 'Load', 'Timber', 'Steel', 'Masonry', 'Wall', 'Hanger', 'Let']
};

/** `word` begins the declaration; `kind` is that of a parameter whose value is wanted. */
export function wantedThings(type: string, property: string, word: string | undefined, kind: string | undefined): readonly string[] {
    if (kind === 'member' || kind === 'wall') {
        return kind === 'member' ? members : ['Wall', 'Parameter'];
    }
    if (kind === 'thread') {
        return ['Parameter'];
    }
    if (property === 'material') {
        return word === 'wall' ? [ast.Masonry.$type] : ['Timber', 'Steel'];
    }
    return byPlace[`${type}.${property}`] ?? inDeclaration[word ?? ''] ?? ofValue;
}
