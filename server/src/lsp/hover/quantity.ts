import { CstUtils, type LeafCstNode } from 'langium';
import { dimensionName, formatQuantity, naturalUnit, units } from '../../../../language/src/units.js';
import { escape } from '../markdown.js';
import { unitName } from '../meaning/units.js';
import { type HoverOf } from './place.js';

/** A number with a unit: what it is in the units of the output, where that reads otherwise. */
export const hoverQuantity: HoverOf = ({ word }) => {
    const [number, symbol] = word ? literalAt(word) : [];
    const unit = symbol && units.get(symbol.text);
    if (!number || !symbol || !unit) {
        return undefined;
    }
    const quantity = { value: Number(number.text) * unit.factor, dimension: unit.dimension };
    const otherwise = naturalUnit(quantity) === symbol.text ? '' : ` = ${formatQuantity(quantity)}`;
    return {
        markdown: escape(`${number.text} ${symbol.text}${otherwise}, ${dimensionName(unit.dimension)}: ${unitName(unit)}`),
        source: { start: number.offset, end: symbol.end }
    };
};

/** Of an input, on its unit alone: on its number it is told how it is known. */
export const hoverUnit: HoverOf = place => place.word?.tokenType.name === 'UNIT' ? hoverQuantity(place) : undefined;

/** The number and its unit, from either. */
function literalAt(word: LeafCstNode): [CstNodeLike?, CstNodeLike?] {
    return word.tokenType.name === 'UNIT' ? [CstUtils.getPreviousNode(word, false), word]
        : word.tokenType.name === 'NUMBER' ? [word, CstUtils.getNextNode(word, false)]
            : [];
}

type CstNodeLike = Pick<LeafCstNode, 'text' | 'offset' | 'end'>;
