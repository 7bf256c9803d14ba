import { frame } from './en/frame.js';
import { set } from './en/set.js';
import { shelf } from './en/shelf.js';
import { tonight } from './en/tonight.js';
import { words } from './en/words.js';

/** Every text of the pages, in English; other languages have the same. */
export const en = { frame, set, shelf, tonight, words };
