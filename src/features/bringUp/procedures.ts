import { seedFolder } from '../hazards/seedFolder.js';
import { loadProcedures } from './loadProcedures.js';

/** Read once when the program starts: a broken file ends the start and not somebody's request. */
export const procedures = loadProcedures(seedFolder('procedures'));
