import { bench } from './de/bench.js';
import { books } from './de/books.js';
import { bringList } from './de/bringList.js';
import { bringUp } from './de/bringUp.js';
import { buy } from './de/buy.js';
import { change } from './de/change.js';
import { contactLog } from './de/contactLog.js';
import { dossier } from './de/dossier.js';
import { frame } from './de/frame.js';
import { intake } from './de/intake.js';
import { pictures } from './de/pictures.js';
import { plan } from './de/plan.js';
import { prove } from './de/prove.js';
import { provenance } from './de/provenance.js';
import { set } from './de/set.js';
import { shelf } from './de/shelf.js';
import { tonight } from './de/tonight.js';
import { use } from './de/use.js';
import { wanted } from './de/wanted.js';
import { waysOut } from './de/waysOut.js';
import { words } from './de/words.js';
import type { Texts } from './texts.js';

export const de: Texts = {
  bench,
  books,
  bringList,
  bringUp,
  buy,
  change,
  contactLog,
  dossier,
  frame,
  intake,
  pictures,
  plan,
  prove,
  provenance,
  set,
  shelf,
  tonight,
  use,
  wanted,
  waysOut,
  words,
};
