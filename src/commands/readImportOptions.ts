import type { ImportOptions } from '../features/import/importOptions.js';
import { headerKey } from '../features/import/headerKey.js';
import type { ListDelimiter } from '../features/import/listDelimiter.js';
import type { ListEncoding } from '../features/import/listEncoding.js';
import { ListField } from '../features/import/listField.js';
import { readRole } from '../features/import/readRole.js';
import { CommandFailure } from './commandFailure.js';

/** The options of `import` as commander hands them over. */
export interface WrittenOptions {
  kind: string;
  dryRun: boolean;
  dateOrder?: string;
  decimalMark?: string;
  delimiter?: string;
  encoding?: string;
  currency?: string;
  role?: string;
  firstDay: boolean;
  map: string[];
  ignore: string[];
}

const mostProblems = 100_000;

/** @throws CommandFailure naming the option that says nothing known. */
export function readImportOptions(written: WrittenOptions, latestDay: string): ImportOptions {
  const role = written.role === undefined ? null : readRole(written.role);
  if (written.role !== undefined && role === null) {
    throw new CommandFailure(
      `--role: “${written.role}” is not a role of accessories; write for example "power supply", "speaker" or "key".`,
    );
  }
  return {
    kind: written.kind === 'rigs' ? 'RIG' : 'ACCESSORY',
    isDryRun: written.dryRun,
    encoding: (written.encoding as ListEncoding | undefined) ?? null,
    delimiter: (written.delimiter?.toUpperCase() as ListDelimiter | undefined) ?? null,
    dateOrder:
      written.dateOrder === undefined
        ? null
        : written.dateOrder === 'day-first'
          ? 'DAY_FIRST'
          : 'MONTH_FIRST',
    decimalMark:
      written.decimalMark === undefined ? null : written.decimalMark === 'comma' ? ',' : '.',
    currency: written.currency ?? null,
    role,
    takesFirstDay: written.firstDay,
    mapping: written.map.map(readMapping),
    ignore: written.ignore,
    latestDay,
    mostProblems,
  };
}

const fieldByKey = new Map(
  (Object.keys(ListField) as ListField[]).map((field) => [headerKey(field), field]),
);

/** "Serial=serialNumber", "Serial=serial number" or "Serial=SERIAL_NUMBER". */
function readMapping(text: string): ImportOptions['mapping'][number] {
  const at = text.lastIndexOf('=');
  const word = text.slice(at + 1).replace(/([a-z])([A-Z])/g, '$1 $2');
  const field = fieldByKey.get(headerKey(word));
  if (at > 0 && field !== undefined) return { column: text.slice(0, at), field };
  throw new CommandFailure(
    `--map: “${text}” is not a column and a field, as in "Tag=inventory number". The fields are: ${[...fieldByKey.keys()].join(', ')}.`,
  );
}
