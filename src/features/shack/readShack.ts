import type { RowSource } from '../../db/rowSource.js';
import type { ReadinessFacts } from '../../domain/readiness/readinessFacts.js';
import { shackModel, type ShackModel } from '../../domain/shack/shackModel.js';
import { zoneOfBench } from '../pace/zoneOfBench.js';
import { readReadinessAsOf } from '../standing/readinessAsOf.js';

/** Every rig of the collection with what serves it, as it stands or stood at an instant. */
export async function readShack(
  source: RowSource,
  atMs: number,
): Promise<{ facts: ReadonlyMap<string, ReadinessFacts>; model: ShackModel; zone: string }> {
  const rigs = await source.rows<{ id: string }>(
    `SELECT id AS "id" FROM item WHERE kind = 'RIG' ORDER BY inventory_number`,
  );
  const facts = await readReadinessAsOf(
    source,
    rigs.map(({ id }) => id),
    atMs,
  );
  const zone = await zoneOfBench(source);
  return { facts, model: shackModel([...facts.values()], atMs, zone), zone };
}
