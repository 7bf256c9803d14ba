import type { Act, Database } from '../../db/database.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import { loggedContact, type LoggedContact } from '../../domain/contactLog/loggedContact.js';
import { readAdi, type AdiProblem } from '../../domain/contactLog/readAdi.js';
import { todayAtBench } from '../pace/todayAtBench.js';
import { contactLogPlan, type ContactLogPlan } from './contactLogPlan.js';
import { contactLogReport, type ContactLogReport } from './contactLogReport.js';
import { keepPlannedUses } from './keepPlannedUses.js';
import type { LogOptions } from './logOptions.js';

/**
 * Counts a contact log (ADIF, ADI form) into uses of rigs on the air: all of it is sound and loaded,
 * in one transaction, or nothing is. The same log again, or a longer one, counts nothing twice.
 */
export async function importContactLog(
  database: Database,
  act: Act,
  text: string,
  options: LogOptions,
): Promise<ContactLogReport> {
  const nowMs = Date.parse(act.now);
  const log = readAdi(text);
  const read = log.records.map((record) => loggedContact(record));
  const contacts = read.filter((one): one is LoggedContact => !Array.isArray(one));
  const problems: AdiProblem[] = [
    ...log.problems,
    ...read.flatMap((one) => (Array.isArray(one) ? one : [])),
    ...contacts.filter(({ endedAtMs }) => endedAtMs > nowMs + MINUTE_MS).map(toCome),
  ];
  const isXml = /^\s*(<\?xml|<adx)/i.test(text);
  if (isXml) problems.splice(0, problems.length, xmlForm);
  else if (log.records.length === 0 && problems.length === 0) problems.push(nothingInIt);
  const { zone } = await todayAtBench(database.reader, nowMs);
  const report = (plan: ContactLogPlan, isLoaded: boolean) =>
    contactLogReport(
      text,
      log,
      { contacts, plan, problems: [...problems, ...plan.problems] },
      options,
      { nowMs, zone, isLoaded },
    );
  const checked = await contactLogPlan(database.reader, contacts, options);
  const isSound = problems.length === 0 && checked.problems.length === 0;
  if (options.isDryRun || !isSound) return report(checked, false);
  const loaded = await database.write(act, async (work) => {
    await oneAtATime(work, 'contact log');
    const plan = await contactLogPlan(rowSourceInWork(work), contacts, options);
    if (plan.problems.length === 0) await keepPlannedUses(work, plan.uses);
    return plan;
  });
  return report(loaded, loaded.problems.length === 0);
}

const MINUTE_MS = 60_000;

const toCome = ({ offset }: LoggedContact): AdiProblem => ({
  offset,
  message: 'This contact lies in the future. Look at its date and time; they are UTC.',
});

const xmlForm: AdiProblem = {
  offset: 0,
  message: 'This is the XML form of ADIF (ADX). Export the log in the ADI form.',
};

const nothingInIt: AdiProblem = {
  offset: 0,
  message:
    'There is no contact in it: a record is fields as `<name:length>data`, ended by `<eor>`.',
};
