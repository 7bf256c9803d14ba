import { limitDepth } from './limitDepth.js';
import { limitSelections } from './limitSelections.js';

/** What holds for every document, whichever way it came in. */
export const mostTokens = 4000;
export const documentRules = [limitDepth, limitSelections];
