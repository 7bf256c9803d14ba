import type { ICalEventData } from 'ical-generator';
import type { Reader } from '../../db/reader.js';
import { calendarWords } from '../reports/calendarText.js';
import type { When } from '../reports/maintenanceCalendar.js';
import { readLoansFallingDue } from './loansFallingDue.reads.js';

/** The days by which things that are lent are to be back, as all-day events. */
export async function loanEvents(
  reader: Reader,
  { nowMs }: When,
  isPersonShown: boolean,
): Promise<ICalEventData[]> {
  const loans = await readLoansFallingDue(reader);
  return loans.map(({ loanId, version, itemName, direction, otherParty, dueOn }) => {
    const [year = 0, month = 1, day = 1] = dueOn.split('-').map(Number);
    const what = direction === 'OUT' ? 'is due back' : 'is to be given back';
    const who = direction === 'OUT' ? `Lent to ${otherParty}.` : `Lent to us by ${otherParty}.`;
    return {
      id: `${loanId}@reglow`,
      sequence: version - 1,
      stamp: new Date(nowMs),
      // The library writes the local day of a date without a time.
      start: new Date(year, month - 1, day),
      allDay: true,
      summary: calendarWords(`${itemName} ${what}`),
      ...(isPersonShown && { description: calendarWords(who) }),
    };
  });
}
