import type { RowSource } from '../../db/rowSource.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { AdiProblem } from '../../domain/contactLog/readAdi.js';
import type { LoggedContact } from '../../domain/contactLog/loggedContact.js';
import { logSpells, type Stretch } from '../../domain/contactLog/logSpells.js';
import { nameKey } from '../../domain/nameKey.js';
import { contactKey } from './contactKey.js';
import type { LogOptions } from './logOptions.js';
import { readRecordedUses, type RecordedUse } from './recordedUses.reads.js';
import { readRigsOfLog, type LogRig } from './rigOfText.js';

export interface NewContact extends Stretch {
  key: string;
  band: string | null;
  mode: string | null;
}

/** A use to be added, or those of earlier logs that it goes on with. */
export interface PlannedUse extends Stretch {
  rig: LogRig;
  contacts: NewContact[];
  /** Uses from earlier logs that it joins, the first to be extended. */
  joins: RecordedUse[];
}

/** What a log comes to in the collection as it is. */
export interface ContactLogPlan {
  uses: PlannedUse[];
  duplicates: AdiProblem[];
  leftOut: { reason: string; contacts: number }[];
  problems: AdiProblem[];
  /** Each text in MY_RIG, in the order of the log, and what it was taken for. */
  rigTexts: RigText[];
}

export interface RigText {
  /** null: contacts that say no rig. */
  text: string | null;
  contacts: number;
  inventoryNumber: string | null;
  isLeftOut: boolean;
}

/** Counts the contacts of a log against what is recorded; changes nothing. */
export async function contactLogPlan(
  source: RowSource,
  contacts: readonly LoggedContact[],
  options: LogOptions,
): Promise<ContactLogPlan> {
  const rigs = await readRigsOfLog(source, options);
  const gapMs = options.gapMinutes * 60_000;
  const fromMs =
    contacts.reduce((least, one) => Math.min(least, one.startedAtMs), Infinity) - gapMs;
  const untilMs = contacts.reduce((most, one) => Math.max(most, one.endedAtMs), 0) + gapMs;
  const recorded = contacts.length === 0 ? [] : await readRecordedUses(source, fromMs, untilMs);
  const plan: ContactLogPlan = {
    uses: [],
    duplicates: [],
    leftOut: [],
    problems: [],
    rigTexts: rigTextsOf(contacts, rigs),
  };
  const firstAt = new Map<string, number | null>(
    recorded.flatMap(({ keys }) => (keys ?? []).map((key): [string, null] => [key, null])),
  );
  const ofRig = new Map<string, { rig: LogRig; contacts: NewContact[] }>();
  const ignored = contacts.filter(({ rigText }) => rigs.isIgnored(rigText));
  for (const contact of contacts) {
    if (rigs.isIgnored(contact.rigText)) continue;
    const rig = rigs.rigOf(contact.rigText);
    if (rig === null) continue;
    const key = contactKey(contact);
    const before = firstAt.get(key);
    if (before !== undefined) {
      const where = before === null ? 'It was counted before.' : `As the one at ${before}.`;
      plan.duplicates.push({ offset: contact.offset, message: where });
      continue;
    }
    firstAt.set(key, contact.offset);
    const { startedAtMs, endedAtMs, band, mode } = contact;
    const own = ofRig.get(rig.id) ?? { rig, contacts: [] };
    own.contacts.push({ key, startedAtMs, endedAtMs, band, mode });
    ofRig.set(rig.id, own);
  }
  for (const [text, own] of groupedBy(ignored, ({ rigText }) => rigText ?? '')) {
    plan.leftOut.push({ reason: `“${text}” is to be left out.`, contacts: own.length });
  }
  plan.problems.push(...unknownRigs(contacts, rigs));
  for (const own of ofRig.values()) planRig(plan, own, recorded, gapMs);
  return plan;
}

function rigTextsOf(
  contacts: readonly LoggedContact[],
  rigs: Awaited<ReturnType<typeof readRigsOfLog>>,
): RigText[] {
  return [...groupedBy(contacts, ({ rigText }) => nameKey(rigText ?? '')).values()].map((own) => {
    const text = own[0]?.rigText ?? null;
    const isLeftOut = rigs.isIgnored(text);
    const rig = isLeftOut ? null : rigs.rigOf(text);
    return { text, contacts: own.length, inventoryNumber: rig?.inventoryNumber ?? null, isLeftOut };
  });
}

/** One problem for each text that names no rig, at its first contact. */
function unknownRigs(
  contacts: readonly LoggedContact[],
  rigs: Awaited<ReturnType<typeof readRigsOfLog>>,
): AdiProblem[] {
  const unknown = contacts.filter(
    ({ rigText }) => !rigs.isIgnored(rigText) && rigs.rigOf(rigText) === null,
  );
  return [...groupedBy(unknown, ({ rigText }) => nameKey(rigText ?? '')).values()].map((own) => {
    const [{ offset, rigText } = { offset: 0, rigText: null }] = own;
    const message =
      rigText === null
        ? `Contacts that do not say with which rig they were made: ${own.length}. Say which rig it was.`
        : `MY_RIG “${rigText.slice(0, 80)}” (contacts: ${own.length}) is no rig here, or more than one. Say which rig is meant, or that they are to be left out.`;
    return { offset, message };
  });
}

function planRig(
  plan: ContactLogPlan,
  { rig, contacts }: { rig: LogRig; contacts: NewContact[] },
  recorded: readonly RecordedUse[],
  gapMs: number,
): void {
  const own = recorded.filter(
    ({ rigId, startedAtMs, endedAtMs }) => rigId === rig.id && endedAtMs > startedAtMs,
  );
  const earlier = own.filter(({ keys }) => keys !== null);
  const byHand = own.filter(({ keys }) => keys === null);
  for (const { contacts: parts, ...stretch } of logSpells([...earlier, ...contacts], gapMs)) {
    const fresh = parts.filter((part): part is NewContact => 'key' in part);
    if (fresh.length === 0) continue;
    const written = byHand.find(
      ({ startedAtMs, endedAtMs }) =>
        startedAtMs <= stretch.endedAtMs && endedAtMs >= stretch.startedAtMs,
    );
    if (written) {
      const { startedAtMs } = written;
      const since = new Date(startedAtMs).toISOString();
      const reason = `${rig.inventoryNumber} has a use from ${since} that was written down by hand. Correct it to 0 hours, and these contacts can be counted.`;
      plan.leftOut.push({ reason, contacts: fresh.length });
      continue;
    }
    const joins = parts.filter((part): part is RecordedUse => 'rigId' in part);
    plan.uses.push({ ...stretch, rig, contacts: fresh, joins });
  }
}
