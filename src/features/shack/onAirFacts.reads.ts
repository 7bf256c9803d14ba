import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { outputQuantity, type OutputReading } from '../../domain/capability/measuredOutput.js';
import type { AsMade } from '../../domain/capability/outputStanding.js';
import { convertUnit } from '../readings/ucum.js';

/** The bands and modes of rigs as their models were made; none, no entry. */
export async function readCapabilities(
  { rows, dialect }: RowSource,
  rigIds: readonly string[],
): Promise<Map<string, AsMade[]>> {
  const found = await rows<{
    rigId: string;
    band: string;
    mode: string;
    milliwatts: number | null;
  }>(
    `SELECT item.id AS "rigId", capability.band AS "band", capability.mode AS "mode",
       capability.output_milliwatts AS "milliwatts"
     FROM item JOIN model_capability AS capability ON capability.model_id = item.model_id
     WHERE ${dialect.isAnyOf('item.id')} ORDER BY capability.id`,
    [listParameter(rigIds)],
  );
  const made = found.map(({ rigId, band, mode, milliwatts }) => ({
    rigId,
    band,
    mode,
    watts: milliwatts === null ? null : milliwatts / 1000,
  }));
  return groupedBy(made, ({ rigId }) => rigId);
}

/** Readings of output power on a band, taken on rigs up to an instant, in watts; none, no entry. */
export async function readOutputs(
  { rows, dialect }: RowSource,
  rigIds: readonly string[],
  at: string,
): Promise<Map<string, OutputReading[]>> {
  const found = await rows<{
    readingId: string;
    rigId: string;
    quantity: string;
    value: string;
    unit: string;
    takenAt: string;
  }>(
    `SELECT reading.id AS "readingId", reading.item_id AS "rigId", reading.quantity AS "quantity",
       reading.value AS "value", reading.unit AS "unit", reading.taken_at AS "takenAt"
     FROM reading WHERE ${dialect.isAnyOf('reading.item_id')} AND reading.taken_at <= ?
     ORDER BY reading.taken_at, reading.id`,
    [listParameter(rigIds), at],
  );
  const outputs = found.flatMap(({ readingId, rigId, quantity, value, unit, takenAt }) => {
    const named = outputQuantity(quantity);
    const watts = named && convertUnit(value, unit, 'W');
    if (!named || watts === null) return [];
    return [{ ...named, rigId, readingId, watts: Number(watts), takenAtMs: Date.parse(takenAt) }];
  });
  return groupedBy(outputs, ({ rigId }) => rigId);
}
