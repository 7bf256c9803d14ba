import { bench } from './en/bench.js';
import { books } from './en/books.js';
import { bringList } from './en/bringList.js';
import { bringUp } from './en/bringUp.js';
import { buy } from './en/buy.js';
import { change } from './en/change.js';
import { contactLog } from './en/contactLog.js';
import { dossier } from './en/dossier.js';
import { frame } from './en/frame.js';
import { intake } from './en/intake.js';
import { pictures } from './en/pictures.js';
import { plan } from './en/plan.js';
import { prove } from './en/prove.js';
import { provenance } from './en/provenance.js';
import { set } from './en/set.js';
import { shelf } from './en/shelf.js';
import { tonight } from './en/tonight.js';
import { use } from './en/use.js';
import { wanted } from './en/wanted.js';
import { waysOut } from './en/waysOut.js';
import { words } from './en/words.js';

/** Every text of the pages, in English; other languages have the same. */
export const en = {
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
