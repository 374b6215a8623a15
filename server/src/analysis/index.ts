export { analyse } from './analyse.js';
export { durationOf, actionName } from './durations.js';
export type { ElasticProperties, PropertiesOf } from './elastic.js';
