import { readFile, stat } from 'node:fs/promises';
import type { Command } from 'commander';
import type { Database } from '../db/database.js';
import type { ContactLogReport } from '../features/contactLog/contactLogReport.js';
import { importContactLog } from '../features/contactLog/importContactLog.js';
import { actOfCommand } from './actOfCommand.js';
import { CommandFailure } from './commandFailure.js';
import type { Surroundings } from './surroundings.js';
import { withCollection } from './withCollection.js';

const mostBytes = 100_000_000;
const mostGapMinutes = 1440;

interface WrittenLogOptions {
  rig?: string;
  map: string[];
  ignore: string[];
  gapMinutes: string;
  dryRun: boolean;
}

const several = (value: string, before: string[]): string[] => [...before, value];

export const addImportLog = (program: Command, around: Surroundings): Command =>
  program
    .command('import-log')
    .description('Count a log of contacts (ADIF, .adi) into the use of rigs: all of it or nothing.')
    .argument('<file>', 'the log')
    .option('--rig <inventory number>', 'the rig of contacts without MY_RIG')
    .option('--map <text=inventory number>', 'which rig a text in MY_RIG means', several, [])
    .option('--ignore <text>', 'leave out the contacts with this text in MY_RIG', several, [])
    .option('--gap-minutes <minutes>', 'nothing logged for longer ends a use', '60')
    .option('--dry-run', 'check and count everything, and change nothing', false)
    .action((file: string, options: WrittenLogOptions) => importLog(around, file, options));

/** @throws CommandFailure when something in the log has to be mended. */
async function importLog(
  around: Surroundings,
  file: string,
  written: WrittenLogOptions,
): Promise<void> {
  const gapMinutes = Number(written.gapMinutes);
  if (!Number.isInteger(gapMinutes) || gapMinutes < 1 || gapMinutes > mostGapMinutes) {
    throw new CommandFailure(`--gap-minutes: a whole number from 1 to ${mostGapMinutes}.`);
  }
  const text = await logInFile(file);
  const report = await withCollection(around, async (database) =>
    importContactLog(database, actOfCommand(around, 'importContactLog'), text, {
      isDryRun: written.dryRun,
      gapMinutes,
      ignore: written.ignore,
      rigId: written.rig === undefined ? null : await rigByNumber(database, '--rig', written.rig),
      rigTexts: await Promise.all(
        written.map.map(async (pair) => {
          const at = pair.lastIndexOf('=');
          if (at < 1) throw new CommandFailure(`--map: “${pair}” is not a text and a rig.`);
          const rigId = await rigByNumber(database, '--map', pair.slice(at + 1));
          return { text: pair.slice(0, at), rigId };
        }),
      ),
    }),
  );
  showReport(around, report);
  if (report.problemCount === 0) return;
  throw new CommandFailure(
    `Nothing was counted: ${report.problemCount} ${report.problemCount === 1 ? 'problem has' : 'problems have'} to be mended first.`,
  );
}

async function rigByNumber(database: Database, option: string, number: string): Promise<string> {
  const [rig] = await database.reader.rows<{ id: string }>(
    `SELECT id AS "id" FROM item WHERE kind = 'RIG' AND inventory_number = ?`,
    [number.trim()],
  );
  if (rig) return rig.id;
  throw new CommandFailure(`${option}: there is no rig with the inventory number “${number}”.`);
}

/** ASCII by the standard; in practice UTF-8, or the older Windows characters. */
async function logInFile(file: string): Promise<string> {
  const { size } = await stat(file);
  if (size > mostBytes) {
    throw new CommandFailure(`${file} has ${size} bytes; ${mostBytes} is the most. Export less.`);
  }
  const bytes = await readFile(file);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

const mostShown = 50;

function showReport({ print }: Surroundings, report: ContactLogReport): void {
  for (const { day, inventoryNumber, contacts, hours } of report.days) {
    print(`${day}  ${inventoryNumber}  ${contacts} contacts, ${hours} h`);
  }
  print(report.basis.method);
  for (const { reason, contacts } of report.leftOut) print(`Not counted: ${contacts}. ${reason}`);
  if (report.duplicateCount > 0) print(`Counted before, or twice in it: ${report.duplicateCount}.`);
  if (report.fieldsLeftOut.length > 0) {
    const names = report.fieldsLeftOut.map(({ name }) => name).join(', ');
    print(`Not read, and left in the log: ${names}.`);
  }
  showPlaces(print, report.remarks);
  showPlaces(print, report.problems);
  const unseen = report.problemCount - Math.min(report.problems.length, mostShown);
  if (unseen > 0) print(`… and ${unseen} problems more.`);
  const isCounted = report.contactsLoaded > 0;
  print(`${report.contactsRead} contacts read, ${report.contactsLoaded} counted now.`);
  if (report.isDryRun && !isCounted) print('Nothing was changed: it was only to be checked.');
}

function showPlaces(print: (line: string) => void, places: ContactLogReport['problems']): void {
  for (const { offset, line, message } of places.slice(0, mostShown)) {
    print(`Line ${line}, character ${offset}: ${message}`);
  }
}
