/** Which units can stand after a number, the usual ones first. */
import type { AstNode } from 'langium';
import * as ast from '../../../../language/src/generated/ast.js';
import { plainUnits } from '../meaning/units.js';
import { sameDimension, units, type UnitOfMeasure } from '../../../../language/src/index.js';

const size = ['mm', 'in'];
const station = ['m', 'mm', 'ft'];
const mass = ['kg', 'lb'];

/** By the property that a value is given for. */
const usual: Readonly<Record<string, readonly string[]>> = {
    'SectionStatement.size': size, 'Plies.size': size, 'Flitch.size': size, 'Flitch.plate': size, 'Plate.size': size, 'Washers.size': size, 'BearingLength.value': size,
    'FaceLoss.depth': size, 'Notch.depth': size, 'Notch.taper': size, 'Hole.diameter': size, 'Hole.height': size, 'Gap.value': size, 'Restrained.spacing': size, 'Precamber.value': size,
    'BoltSpacing.value': size, 'BoltZigzag.value': size, 'BoltEnds.value': size, 'Thickness.value': size, 'Prop.lift': size, 'TestReading.deflection': size, 'WallEnd.value': size,
    'FloorFact.spacing': size,
    'LengthStatement.value': station, 'Bearing.at': station, 'Spring.at': station, 'Pinned.at': station, 'Fixed.at': station, 'Crossing.value': station, 'Loss.from': station, 'Loss.to': station,
    'Notch.from': station, 'Notch.to': station, 'Hole.at': station, 'Splice.at': station, 'Ply.at': station, 'BoltStations.stations': station, 'Height.value': station, 'LoadStrip.value': station,
    'LoadRun.from': station, 'LoadRun.to': station, 'LoadAt.at': station, 'Hanger.carriedAt': station, 'Hanger.carrierAt': station, 'Prop.at': station, 'TestPiece.stations': station,
    'TestWeight.at': station, 'TestWeight.spread': station, 'AccessLimit.piece': station, 'FloorFact.width': station,
    'Strength.value': ['MPa', 'psi'], 'Unit.strength': ['MPa', 'psi'], 'Unit.mortar': ['MPa', 'psi'], 'Moisture.value': ['%'], 'FloorFact.damping': ['%'], 'FloorFact.mass': ['kg/m2', 'lb/ft2'],
    'FloorFact.deck': ['kNm2/m'], 'Spring.stiffness': ['N/mm', 'kN/m'], 'Slopes.value': ['deg'], 'Fire.value': ['min', 'h'], 'AccessLimit.carry': mass, 'TestWeight.amount': mass, 'TestReading.weight': mass,
    'Tighten.force': ['kN', 'N', 'lbf'], 'Require.right': ['%', 'mm', 'm'], 'Require.left': ['%', 'mm', 'm']
};

const ofProperties: readonly (readonly [RegExp, readonly string[]])[] = [[/^(f|E|G)/, ['MPa', 'GPa', 'N/mm2', 'psi', 'ksi']], [/^rho/, ['kg/m3', 'lb/ft3']]];
/** Of the parameters of details. */
export const unitsOfKind: Readonly<Record<string, readonly string[]>> = {
    length: station, force: ['kN', 'N', 'lbf'], mass, stress: ['MPa', 'kN/m2', 'psi'], angle: ['deg'], time: ['day', 'min', 'year'], number: ['%']
};

/** Where the dimension is not known, all units. */
export function wantedUnits(literal: AstNode, kindOfParameter?: string): readonly UnitOfMeasure[] {
    const first = unitsOfKind[kindOfParameter ?? ''] ?? usualUnits(literal);
    if (first === undefined) {
        return plainUnits;
    }
    const known = first.map(symbol => units.get(symbol)!);
    const others = plainUnits.filter(unit => !known.includes(unit) && known.some(({ dimension }) => sameDimension(dimension, unit.dimension)));
    return [...known, ...others];
}

function usualUnits(literal: AstNode): readonly string[] | undefined {
    for (let node: AstNode | undefined = literal; node?.$container; node = node.$container) {
        const { $container: owner, $containerProperty: property } = node;
        if (ast.isOperation(owner) && (owner.operator === '*' || owner.operator === '/')) {
            return undefined;
        }
        const found = ast.isLoad(owner) && property === 'amount' ? amountUnits(owner)
            : ast.isProperty(owner) ? ofProperties.find(([pattern]) => pattern.test(owner.name))?.[1]
                : usual[`${owner.$type}.${(ast.isAccessLimit(owner) || ast.isFloorFact(owner)) ? owner.kind : property}`];
        if (found) {
            return found;
        }
    }
    return undefined;
}

function amountUnits(load: ast.Load): readonly string[] {
    const all = ['kN/m2', 'kN/m', 'kN', 'kg', 'kg/m2', 'kg/m', 'psf', 'plf', 'lbf'];
    const first = load.parts.some(ast.isLoadStrip) ? ['kN/m2', 'kg/m2', 'psf'] : load.parts.some(ast.isLoadAt) ? ['kN', 'kg', 'lbf'] : [];
    return [...new Set([...first, ...all])];
}
