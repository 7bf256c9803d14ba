import { loadHazardCatalogue } from './loadHazardCatalogue.js';
import { seedFolder } from './seedFolder.js';

/** Read once when the program starts: a broken file ends the start and not somebody's request. */
export const hazardCatalogue = loadHazardCatalogue(seedFolder('hazards'));
