import { frame } from './de/frame.js';
import { shelf } from './de/shelf.js';
import { words } from './de/words.js';
import type { Texts } from './texts.js';

export const de: Texts = { frame, shelf, words };
