import type { RowSource } from '../../db/rowSource.js';
import { nameKey } from '../../domain/nameKey.js';
import type { LogOptions } from './logOptions.js';

export interface LogRig {
  id: string;
  inventoryNumber: string;
}

/** Which rig a contact was made with, by what its log says of the equipment. */
export interface RigsOfLog {
  /** null: nothing in the collection is called so, or more than one thing is. */
  rigOf(text: string | null): LogRig | null;
  isIgnored(text: string | null): boolean;
}

/**
 * As the person said for a text; else by inventory number, name or model, where only one rig is
 * called so.
 */
export async function readRigsOfLog(source: RowSource, options: LogOptions): Promise<RigsOfLog> {
  const rigs = await source.rows<LogRig & { name: string | null; model: string | null }>(
    `SELECT item.id AS "id", item.inventory_number AS "inventoryNumber", item.name AS "name",
       model.designation AS "model"
     FROM item LEFT JOIN model ON model.id = item.model_id
     WHERE item.kind = 'RIG' ORDER BY item.id`,
  );
  const byId = new Map(rigs.map((rig) => [rig.id, rig]));
  const byKey = new Map<string, LogRig | null>();
  for (const rig of rigs) {
    const { inventoryNumber, name, model } = rig;
    const keys = new Set([inventoryNumber, name, model].flatMap((text) => keyOf(text) ?? []));
    for (const key of keys) byKey.set(key, byKey.has(key) ? null : rig);
  }
  // An inventory number is one rig's alone, whatever else is called like it.
  for (const rig of rigs) byKey.set(nameKey(rig.inventoryNumber), rig);
  for (const { text, rigId } of options.rigTexts) byKey.set(nameKey(text), byId.get(rigId) ?? null);
  const usual = options.rigId === null ? null : (byId.get(options.rigId) ?? null);
  const ignored = new Set(options.ignore.map(nameKey));
  return {
    rigOf: (text) => (text === null ? usual : (byKey.get(nameKey(text)) ?? null)),
    isIgnored: (text) => text !== null && ignored.has(nameKey(text)),
  };
}

const keyOf = (text: string | null): string | null => (text === null ? null : nameKey(text));
