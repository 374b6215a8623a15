/** What schemas are written with; each says what it is. */
export type Schema = Readonly<Record<string, unknown>>;

export const text = (description: string): Schema => ({ type: 'string', description });
export const place = (what: string): Schema => ({ type: 'integer', minimum: 1, description: `${what} in the file, from 1.` });
export const list = (description: string, items: Schema): Schema => ({ type: 'array', description, items });
export const choice = (description: string, values: readonly string[]): Schema => ({ enum: values, description });
export const orNull = (description: string): Schema => ({ type: ['string', 'null'], description });

/** All properties are required, save those named in `optional`; nothing else may stand there. */
export function object(description: string, properties: Readonly<Record<string, Schema>>, optional: readonly string[] = []): Schema {
    const required = Object.keys(properties).filter(name => !optional.includes(name));
    return { type: 'object', description, properties, required, additionalProperties: false };
}

/** A quantity in one unit, or in any where none is given. */
export function amount(description: string, unit?: string): Schema {
    return object(description, {
        value: { type: ['number', 'null'], description: 'Null where it could not be computed.' },
        unit: unit === undefined ? text('Unit of the value; empty for a plain ratio.') : { const: unit }
    });
}

export function range(description: string, unit: string): Schema {
    return object(description, { min: amount('Least value.', unit), max: amount('Greatest value.', unit) });
}

export const nullable = (description: string, schema: Schema): Schema => ({ anyOf: [schema, { type: 'null' }], description });
