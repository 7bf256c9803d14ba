import { fieldsRead, type LoggedContact } from '../../domain/contactLog/loggedContact.js';
import { minutesOf } from '../../domain/contactLog/logSpells.js';
import type { AdiProblem, AdiText } from '../../domain/contactLog/readAdi.js';
import { dayInZone } from '../../domain/dates/dayInZone.js';
import { hundredths, shownBasis } from '../standing/standingFacts.js';
import type { ContactLogPlan, PlannedUse } from './contactLogPlan.js';
import type { LogOptions } from './logOptions.js';

const mostPlaces = 1000;

export type ContactLogReport = ReturnType<typeof contactLogReport>;

/** What came of reading a log, for the person who brought it. */
export function contactLogReport(
  text: string,
  log: AdiText,
  read: { contacts: readonly LoggedContact[]; plan: ContactLogPlan; problems: AdiProblem[] },
  options: LogOptions,
  moment: { nowMs: number; zone: string; isLoaded: boolean },
) {
  const { plan, problems } = read;
  const lineOf = lineFinder(text);
  const places = (found: readonly AdiProblem[]) =>
    [...found]
      .sort((one, two) => one.offset - two.offset)
      .slice(0, mostPlaces)
      .map(({ offset, message }) => ({ offset, line: lineOf(offset), message }));
  const counted = plan.uses.reduce((sum, { contacts }) => sum + contacts.length, 0);
  return {
    isDryRun: options.isDryRun,
    adifVersion: log.header.get('ADIF_VER')?.value ?? null,
    contactsRead: log.records.length,
    contactsLoaded: moment.isLoaded ? counted : 0,
    days: daysOf(plan.uses, moment.zone),
    duplicateCount: plan.duplicates.length,
    duplicates: places(plan.duplicates),
    rigTexts: plan.rigTexts,
    leftOut: plan.leftOut,
    fieldsLeftOut: fieldsLeftOut(log),
    remarks: places(log.remarks),
    problemCount: problems.length,
    problems: places(problems),
    basis: shownBasis(
      {
        method: `Contacts counted per rig and day. Hours run from the start of the first contact to the end of the last; where nothing was logged for more than ${options.gapMinutes} minutes, a new use begins. A use has at least one minute.`,
        counted: [
          { what: 'contacts counted', count: counted },
          { what: 'uses', count: plan.uses.length },
          { what: 'duplicates', count: plan.duplicates.length },
        ],
      },
      moment.nowMs,
      [
        'Times of the log are UTC, as ADIF says; a day is a day of the zone of the collection, and a use is of the day on which it began.',
        'A contact without an end lasts no time. An end before the start, without a date of its own, is of the next day.',
        'The rig was on the air between two contacts that are no further apart than that.',
      ],
    ),
  };
}

function daysOf(uses: readonly PlannedUse[], zone: string) {
  const days = new Map<string, { inventoryNumber: string; day: string; at: number[] }>();
  for (const use of uses) {
    const { inventoryNumber } = use.rig;
    const slot = (atMs: number) => {
      const day = dayInZone(atMs, zone);
      const key = `${inventoryNumber} ${day}`;
      const known = days.get(key) ?? { inventoryNumber, day, at: [0, 0] };
      days.set(key, known);
      return known.at;
    };
    for (const { startedAtMs } of use.contacts) add(slot(startedAtMs), 1, 0);
    const before = use.joins.reduce((sum, one) => sum + minutesOf(one), 0);
    add(slot(use.startedAtMs), 0, minutesOf(use) - before);
  }
  return [...days.values()]
    .map(({ at: [contacts = 0, minutes = 0], ...day }) => ({
      ...day,
      contacts,
      hours: hundredths(minutes / 60),
    }))
    .sort((one, two) => (keyOf(one) < keyOf(two) ? -1 : 1));
}

const keyOf = ({ day, inventoryNumber }: { day: string; inventoryNumber: string }) =>
  `${day} ${inventoryNumber}`;

function add(at: number[], contacts: number, minutes: number): void {
  at.splice(0, 2, (at[0] ?? 0) + contacts, (at[1] ?? 0) + minutes);
}

/** Fields that are not read, by name, the most frequent first. */
function fieldsLeftOut({ records }: AdiText): { name: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const { fields } of records) {
    for (const name of fields.keys()) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const isRead = new Set<string>(fieldsRead);
  return [...counts]
    .filter(([name]) => !isRead.has(name))
    .map(([name, count]) => ({ name, count }))
    .sort((one, two) => two.count - one.count || (one.name < two.name ? -1 : 1));
}

/** The line of an offset, from 1; asked for in any order. */
function lineFinder(text: string): (offset: number) => number {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return (offset) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low + 1;
  };
}
