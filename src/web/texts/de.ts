import { frame } from './de/frame.js';
import { set } from './de/set.js';
import { shelf } from './de/shelf.js';
import { tonight } from './de/tonight.js';
import { words } from './de/words.js';
import type { Texts } from './texts.js';

export const de: Texts = { frame, set, shelf, tonight, words };
