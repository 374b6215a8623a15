export { analyse } from './analyse.js';
export { durationOf, actionName } from './durations.js';
export type { ElasticProperties, HangerElasticity, PropertiesOf, SectionStiffness, WholeSection } from './elastic.js';
