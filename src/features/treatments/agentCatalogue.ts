import { join } from 'node:path';
import { seedFolder } from '../hazards/seedFolder.js';
import { loadAgentCatalogue } from './loadAgentCatalogue.js';

/** Read once when the program starts: a broken file ends the start and not somebody's request. */
export const agentCatalogue = loadAgentCatalogue(join(seedFolder('agents'), 'agents.yaml'));
