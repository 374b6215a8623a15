/** Mean densities of EN 338 and EN 14080 are those of timber at 20 °C and 65 % relative humidity: about 12 % (EN 384, from memory). */
const referenceMoisture = 0.12;

/**
 * Density with the water that is in the timber, kg/m³: the dry mass of the class's, and its water by the definition of
 * moisture content (mass of water over dry mass, EN 13183-1). What the timber swells by is left out and one drier than
 * 12 % counts as of 12 %: both make a piece to be carried rather too heavy than too light.
 * @param moisture ratio; undefined where nothing is known
 */
export function withWater(density: number, moisture = referenceMoisture): number {
    return density * (1 + Math.max(referenceMoisture, moisture)) / (1 + referenceMoisture);
}
