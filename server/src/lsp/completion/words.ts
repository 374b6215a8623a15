/** Words that the grammar leaves open and the evaluation knows: classes, sizes, categories, names of parameters. */
import { CompletionItemKind, type CompletionItem } from 'vscode-languageserver';
import { steelClasses, surveyStates } from '../../../../language/src/index.js';
import { parameterDefaults } from '../../catalog/parameter-names.js';
import { propertyNames } from '../../catalog/timber-properties.js';
import { boltGrade, boltGradeNames, boltSize, boltSizes, categories, inOneLine, loadCategory, steelClass, timberClass, timberClassNames } from '../meaning/classes.js';

export type Word = Pick<CompletionItem, 'label' | 'kind' | 'detail' | 'documentation' | 'insertText' | 'filterText'>;

const classWord = (documentation: (name: string) => string | undefined) => (label: string): Word =>
    ({ label, kind: CompletionItemKind.EnumMember, detail: inOneLine(label), documentation: markdown(documentation(label)) });

const markdown = (value: string | undefined): Word['documentation'] => value === undefined ? undefined : { kind: 'markdown', value };

export const timberWords: readonly Word[] = timberClassNames.map(classWord(timberClass));
export const steelWords: readonly Word[] = steelClasses.map(classWord(steelClass));
export const boltWords: readonly Word[] = boltSizes.map(classWord(boltSize));
const gradeWords: readonly Word[] = boltGradeNames.map(classWord(boltGrade));

const plain = (kind: CompletionItemKind, labels: readonly string[], detail?: string): readonly Word[] => labels.map(label => ({ label, kind, detail }));

const steelProperties = ['fy', 'fu', 'E', 'rho'];
/** In free words; these are what the hazard rules look for. */
const surveySubjects = ['services', 'asbestos', 'lead', 'damp source', 'heritage consent', 'attic floor boards'];

/** What the grammar says of the place, the word that begins the declaration, and the word before the cursor. */
export interface OpenPlace {
    readonly type: string | undefined;
    readonly property: string | undefined;
    readonly word: string | undefined;
    readonly previous: string | undefined;
    /** The word that begins the block. */
    readonly block: string | undefined;
}

export function openWords({ type, property, word, previous, block }: OpenPlace): readonly Word[] {
    if (type === 'BoltGrade') {
        return gradeWords;
    }
    if (block === 'properties' && (property === 'entries' || property === 'name')) {
        return plain(CompletionItemKind.Property, word === 'steel' ? steelProperties : propertyNames);
    }
    if (block === 'values' && (property === 'entries' || property === 'words')) {
        return parameterWords;
    }
    switch (property) {
        case 'grade': return steelWords;
        case 'name': return type === 'Basis' ? plain(CompletionItemKind.EnumMember, ['EN1995']) : previous === 'grade' ? (word === 'steel' ? steelWords : timberWords) : [];
        case 'thread': return boltWords;
        case 'category': return categories.map(label => ({ label, kind: CompletionItemKind.EnumMember, documentation: markdown(loadCategory(label)) }));
        case 'type': return plain(CompletionItemKind.TypeParameter, ['member', 'wall', 'thread', 'length', 'force', 'mass', 'stress', 'angle', 'time', 'number']);
        case 'value': return type === 'ServiceClass' ? plain(CompletionItemKind.EnumMember, ['1', '2', '3']) : [];
        case 'parts': case 'word': return word === 'survey' ? [...plain(CompletionItemKind.EnumMember, surveyStates), ...plain(CompletionItemKind.Property, surveySubjects)] : [];
        default: return [];
    }
}

const parameterWords: readonly Word[] = [...parameterDefaults.values()].map(({ name, value, origin }) =>
    ({ label: name, kind: CompletionItemKind.Constant, detail: `${value}, ${origin}`, insertText: `${name} ${value}`, filterText: name }));
