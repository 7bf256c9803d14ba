import type { ImportOptions } from './importOptions.js';
import type { ItemDraft } from './itemDraft.js';
import type { ListRow } from './listRow.js';
import { readMade } from './readMade.js';
import { readPurchase } from './readPurchase.js';
import { readRole } from './readRole.js';

const longestNote = 10_000;

/** What a row says; null when something in it has to be mended. */
export function readItemDraft(row: ListRow, options: ImportOptions): ItemDraft | null {
  if (!row.hasGoodShape()) return null;
  const inventoryNumber = row.word('INVENTORY_NUMBER', 40);
  if (inventoryNumber === null) {
    row.refuse('INVENTORY_NUMBER', 'The inventory number is missing.');
  }
  const bought = readPurchase(row, options);
  const note = row.note(bought.purchase === null ? bought.forTheNote : []);
  if (note !== null && note.length > longestNote) {
    row.refuse(
      'NOTE',
      `The remarks come to ${note.length} characters; ${longestNote} is the most.`,
    );
  }
  const draft = {
    line: row.line,
    inventoryNumber: inventoryNumber ?? '',
    name: row.word('NAME'),
    model: modelOf(row),
    role: options.kind === 'RIG' ? null : roleOf(row, options),
    serialNumber: row.word('SERIAL_NUMBER'),
    madeEdtf: madeOf(row, options),
    place: row.text('PLACE'),
    note,
    purchase: bought.purchase,
  };
  return row.isSound ? draft : null;
}

function modelOf(row: ListRow): ItemDraft['model'] {
  const maker = row.word('MAKER');
  const designation = row.word('MODEL');
  if (maker !== null && designation !== null) return { maker, designation };
  if (maker === null && designation !== null) {
    row.refuse('MODEL', 'A model needs its maker: fill it in, or write “unknown” for the maker.');
  }
  if (maker !== null && designation === null) {
    row.refuse('MAKER', 'A maker needs the model: fill it in, or write “unknown” for the model.');
  }
  return null;
}

function roleOf(row: ListRow, { role: usual }: ImportOptions): ItemDraft['role'] {
  const word = row.text('ROLE');
  const role = word === null ? usual : readRole(word);
  if (role === null) {
    row.refuse(
      'ROLE',
      word === null
        ? 'What is this accessory for? Give its role, such as “power supply” or “speaker”.'
        : `“${word}” is not a role of accessories; write for example “power supply”, “speaker”, “microphone” or “key”.`,
    );
  }
  return role;
}

function madeOf(row: ListRow, { dateOrder, latestDay }: ImportOptions): string | null {
  const text = row.text('MADE');
  if (text === null) return null;
  const made = readMade(text, dateOrder, latestDay);
  if ('edtf' in made) return made.edtf;
  row.refuse('MADE', made.why);
  return null;
}
