import { changeRow } from '../../db/changeRow.js';
import { insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { minutesOf } from '../../domain/contactLog/logSpells.js';
import { OnAirUseEntity } from '../use/onAirUse.entity.js';
import type { NewContact, PlannedUse } from './contactLogPlan.js';

const bandName = /^\d{1,4}(\.\d{1,2})?(m|cm|mm)$/;

/** Adds the uses that a log comes to; one that goes on with an earlier log's use extends it. */
export async function keepPlannedUses(
  work: UnitOfWork,
  planned: readonly PlannedUse[],
): Promise<void> {
  const added = planned.filter(({ joins }) => joins.length === 0);
  await insertRows(
    work,
    OnAirUseEntity,
    added.map(({ rig, contacts, ...stretch }) => ({
      itemId: rig.id,
      rigUseId: null,
      ...timesOf(stretch),
      contacts: contacts.length,
      band: theOne(contacts.map(({ band }) => band).filter((band) => bandName.test(band ?? ''))),
      mode: theOne(contacts.map(({ mode }) => mode?.slice(0, 20) ?? null)),
      operatorId: null,
      note: 'Counted from a contact log.',
      contactKeys: contacts.map(({ key }) => key),
    })),
  );
  for (const { joins, contacts, ...stretch } of planned) {
    const [first, ...others] = joins;
    if (!first) continue;
    await changeRow(work, OnAirUseEntity, first.id, null, {
      ...timesOf(stretch),
      contacts: joins.reduce((sum, use) => sum + use.contacts, contacts.length),
      contactKeys: [...joins.flatMap(({ keys }) => keys ?? []), ...contacts.map(keyOf)],
    });
    // What lay between was logged later: what were two uses is one.
    for (const { id } of others) {
      await changeRow(work, OnAirUseEntity, id, null, { minutes: 0, contacts: 0, contactKeys: [] });
    }
  }
}

const keyOf = ({ key }: NewContact): string => key;

const timesOf = (stretch: { startedAtMs: number; endedAtMs: number }) => ({
  startedAt: new Date(stretch.startedAtMs).toISOString(),
  minutes: minutesOf(stretch),
});

/** What all of them have; null where they differ. */
const theOne = (all: readonly (string | null)[]): string | null => {
  const [first = null, ...others] = new Set(all);
  return others.length === 0 ? first : null;
};
