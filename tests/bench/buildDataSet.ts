import Sqlite from 'better-sqlite3';
import { seededRandom } from '../../src/domain/estimates/seededRandom.js';
import { openCollection } from '../../src/features/openCollection.js';
import { rebuildComputed } from '../../src/features/rebuildComputed.js';

export const counts = { rigs: 2000, accessories: 200, parts: 30, tasks: 10, sessions: 100 };

const taskKinds = ['CLEANING', 'CAPACITORS', 'TUBES', 'ALIGNMENT', 'CABINET'];
const now = '2026-06-01T12:00:00.000Z';
const kept = { version: 1, recorded_at: now, changed_at: now };

type Counts = typeof counts;

/** An SQLite file with a large collection: 60,000 components, 20,000 tasks, 200,000 sessions. */
export async function buildDataSet(path: string, size: Counts = counts): Promise<void> {
  const url = `sqlite:${path}`;
  await (await openCollection(url)).close();
  const connection = new Sqlite(path);
  fill(connection, size);
  connection.close();
  const database = await openCollection(url);
  await database.write({ action: 'recompute', actorId: null, now }, rebuildComputed);
  await database.close();
}

type Value = string | number | null;

function fill(connection: Sqlite.Database, size: Counts): void {
  const random = seededRandom('bench');
  const upTo = (limit: number): number => Math.floor(random.nextUniform() * limit);
  const idOf = (kind: number, number: number): string =>
    `00000000-0000-7000-8${String(kind).padStart(3, '0')}-${String(number).padStart(12, '0')}`;
  const statements = new Map<string, Sqlite.Statement>();
  const add = (table: string, row: Record<string, Value>): void => {
    const names = Object.keys(row);
    let statement = statements.get(table);
    if (!statement) {
      const marks = names.map(() => '?').join(', ');
      statement = connection.prepare(
        `INSERT INTO ${table} (${names.join(', ')}) VALUES (${marks})`,
      );
      statements.set(table, statement);
    }
    statement.run(Object.values(row));
  };
  const instant = (minutes: number): string =>
    new Date(Date.parse('2016-01-01T00:00:00Z') + minutes * 60_000).toISOString();

  connection.transaction(() => {
    const person = idOf(1, 1);
    add('party', { id: person, ...kept, kind: 'PERSON', name: 'Bench' });
    for (let n = 0; n < 20; n++) add('place', { id: idOf(2, n), ...kept, name: `Shelf ${n}` });
    for (let n = 0; n < 40; n++) {
      const names = { maker: 'Quellmoor', designation: `Q-${n}` };
      add('model', { id: idOf(3, n), ...kept, item_kind: 'RIG', ...names });
      const role = { model_id: idOf(3, n), role: 'POWER_SUPPLY', is_required: 1 };
      add('model_role', { id: idOf(4, n), ...role });
      for (let v = 0; v < 10; v++) {
        const position = { designator: `V${v}`, zone: 'TUBES', is_required: 1, ordinal: v };
        add('fit_out_position', {
          id: idOf(5, n * 10 + v),
          ...kept,
          model_id: idOf(3, n),
          ...position,
        });
      }
    }
    const item = (number: string, kind: string, rest: Record<string, Value>) => ({
      ...kept,
      kind,
      inventory_number: number,
      ...rest,
    });
    for (let n = 0; n < size.accessories; n++) {
      const number = `A-${String(n).padStart(4, '0')}`;
      const rest = { model_id: null, role: 'POWER_SUPPLY', place_id: idOf(2, upTo(20)) };
      add('item', { id: idOf(7, n), ...item(number, 'ACCESSORY', rest) });
    }
    let minute = 0;
    for (let n = 0; n < size.rigs; n++) {
      const rig = idOf(6, n);
      const rest = { model_id: idOf(3, n % 40), role: null, place_id: idOf(2, upTo(20)) };
      add('item', { id: rig, ...item(`R-${String(n).padStart(4, '0')}`, 'RIG', rest) });
      const service = { accessory_id: idOf(7, n % size.accessories), rig_id: rig };
      const since = { role: 'POWER_SUPPLY', is_exclusive: 0, started_at: now };
      add('item_service', { id: idOf(8, n), ...kept, ...service, ...since });
      for (let c = 0; c < size.parts; c++) {
        const component = idOf(9, n * size.parts + c);
        add('component', { id: component, ...kept, marking: `part ${c}`, origin: 'ORIGINAL' });
        const fitting = { component_id: component, item_id: rig, designator: `V${c}` };
        add('fitting', { id: idOf(10, n * size.parts + c), ...kept, ...fitting, fitted_at: now });
      }
      const project = idOf(11, n);
      const projectRow = {
        item_id: rig,
        title: 'Revive',
        target_standard: 'WORKING',
        status: 'ACTIVE',
      };
      add('project', { id: project, ...kept, ...projectRow });
      for (let t = 0; t < size.tasks; t++) {
        const likely = 60 + upTo(300);
        add('task', {
          id: idOf(12, n * size.tasks + t),
          ...kept,
          project_id: project,
          ordinal: t,
          title: `Task ${t}`,
          kind: taskKinds[t % taskKinds.length] ?? 'OTHER',
          status: t < 6 ? 'DONE' : 'NOT_STARTED',
          optimistic_minutes: Math.round(likely / 2),
          likely_minutes: likely,
          pessimistic_minutes: likely * 3,
          earning_rule: 'ZERO_HUNDRED',
          hazard_kinds: '[]',
        });
      }
      for (let s = 0; s < size.sessions; s++) {
        const length = 10 + upTo(14);
        const task = idOf(12, n * size.tasks + (s % 6));
        add('work_session', {
          id: idOf(13, n * size.sessions + s),
          ...kept,
          person_id: person,
          item_id: rig,
          task_id: task,
          started_at: instant(minute),
          ended_at: instant(minute + length),
          zone: 'UTC',
        });
        minute += 25;
      }
      const expense = {
        amount_minor_units: 1000 + upTo(9000),
        currency: 'EUR',
        description: 'parts',
      };
      add('expense', {
        id: idOf(14, n),
        ...kept,
        item_id: rig,
        spent_on: '2025-05-01',
        ...expense,
      });
    }
  })();
}
