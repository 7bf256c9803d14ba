import type { Reader } from '../../db/reader.js';
import { dayOf, inWords, section, type DossierSection } from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

const secondsOfHour = 3600;

/** What was done, and what was measured first and last. */
export async function workSection(reader: Reader, item: DossierItem): Promise<DossierSection> {
  const tasks = await reader.rows<Record<string, string | null>>(
    `SELECT task.title AS "title", task.kind AS "kind", task.finished_at AS "finishedAt"
     FROM task JOIN project ON project.id = task.project_id
     WHERE project.item_id = ? AND task.status = 'DONE' ORDER BY task.finished_at, task.id`,
    [item.id],
  );
  const hours = Math.round(((item.investedSeconds ?? 0) / secondsOfHour) * 10) / 10;
  return section('Work done', {
    remarks: [
      `${hours} hours of work are recorded, net of breaks; ${tasks.length} tasks are finished.`,
    ],
    table:
      tasks.length === 0
        ? null
        : {
            columns: ['Finished', 'Task', 'Kind'],
            rows: tasks.map(({ title, kind, finishedAt }) => [
              dayOf(finishedAt),
              title ?? '',
              inWords(kind),
            ]),
          },
  });
}

interface Measured {
  subject: string;
  quantity: string;
  unit: string;
  value: string;
  takenAt: string;
}

/** Of everything that was measured: what it read first and what it read last. */
export async function readingsSection(reader: Reader, item: DossierItem): Promise<DossierSection> {
  const readings = await reader.rows<Measured>(
    `SELECT COALESCE(fitting.designator, 'the set') AS "subject", reading.quantity AS "quantity",
       reading.unit AS "unit", reading.value AS "value", reading.taken_at AS "takenAt"
     FROM reading
     LEFT JOIN fitting ON fitting.component_id = reading.component_id AND fitting.item_id = ?
     WHERE reading.item_id = ? OR fitting.id IS NOT NULL
     ORDER BY natural_key(COALESCE(fitting.designator, 'the set')), reading.quantity, reading.unit, reading.taken_at, reading.id`,
    [item.id, item.id],
  );
  const pairs = new Map<string, { first: Measured; last: Measured }>();
  for (const reading of readings) {
    const key = `${reading.subject}\n${reading.quantity}\n${reading.unit}`;
    pairs.set(key, { first: pairs.get(key)?.first ?? reading, last: reading });
  }
  const rows = [...pairs.values()].map(({ first, last }) => [
    first.subject,
    first.quantity,
    `${first.value} ${first.unit} (${dayOf(first.takenAt)})`,
    last === first ? 'measured once' : `${last.value} ${last.unit} (${dayOf(last.takenAt)})`,
  ]);
  return section('Readings', {
    remarks: rows.length === 0 ? ['Nothing is recorded as measured.'] : [],
    table: rows.length === 0 ? null : { columns: ['Where', 'Quantity', 'First', 'Last'], rows },
  });
}
