import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { readConfidences, type CountedConfidence } from './confidence.reads.js';
import type { ProvenanceEventKind } from './provenanceEventKind.js';

export interface FactItem {
  id: string;
  inventoryNumber: string;
  serialNumber: string | null;
  madeEdtf: string | null;
  modelId: string | null;
  firstYearMade: number | null;
  lastYearMade: number | null;
}
export interface FactEvent {
  id: string;
  itemId: string;
  kind: ProvenanceEventKind;
  dateEdtf: string | null;
  earliestOn: string | null;
  latestOn: string | null;
  fromPartyId: string | null;
  toPartyId: string | null;
  placeName: string | null;
  note: string | null;
}
export interface FactHandover {
  id: string;
  itemId: string;
  on: string;
  partyId: string | null;
}
export interface FactCode {
  componentId: string;
  itemId: string;
  designator: string;
  dateCode: string;
  origin: 'ORIGINAL' | 'REPLACEMENT' | 'UNKNOWN';
  fittedAt: string;
}
export interface FactSerial {
  modelId: string;
  serialNumber: string;
  earliest: string;
  latest: string;
}

/** Everything on record that bears on the past of an item. */
export interface ProvenanceFacts {
  item: FactItem;
  events: FactEvent[];
  confidences: ReadonlyMap<string, CountedConfidence>;
  acquisitions: FactHandover[];
  disposals: FactHandover[];
  codes: FactCode[];
  serials: FactSerial[];
  /** Whose collection it is; null if not recorded. */
  ownerId: string | null;
}

/** The facts of any number of items, with a fixed number of statements. */
export async function readProvenanceFacts(
  source: RowSource,
  itemIds: readonly string[],
): Promise<ProvenanceFacts[]> {
  const { rows, dialect } = source;
  const ids = [listParameter(itemIds)];
  const items = await rows<FactItem>(
    `SELECT item.id AS "id", item.inventory_number AS "inventoryNumber",
       item.serial_number AS "serialNumber", item.made_edtf AS "madeEdtf",
       item.model_id AS "modelId", model.first_year_made AS "firstYearMade",
       model.last_year_made AS "lastYearMade"
     FROM item LEFT JOIN model ON model.id = item.model_id WHERE ${dialect.isAnyOf('item.id')}`,
    ids,
  );
  const events = await rows<FactEvent>(
    `SELECT id AS "id", item_id AS "itemId", kind AS "kind", date_edtf AS "dateEdtf",
       earliest_on AS "earliestOn", latest_on AS "latestOn", from_party_id AS "fromPartyId",
       to_party_id AS "toPartyId", place_name AS "placeName", note AS "note"
     FROM provenance_event WHERE ${dialect.isAnyOf('item_id')} ORDER BY id`,
    ids,
  );
  const acquisitions = await rows<FactHandover>(
    `SELECT acquisition.id AS "id", lot_line.item_id AS "itemId",
       acquisition.acquired_on AS "on", acquisition.other_party_id AS "partyId"
     FROM lot_line JOIN acquisition ON acquisition.id = lot_line.acquisition_id
     WHERE ${dialect.isAnyOf('lot_line.item_id')} ORDER BY acquisition.id`,
    ids,
  );
  const disposals = await rows<FactHandover>(
    `SELECT disposal.id AS "id", disposal_line.item_id AS "itemId",
       disposal.disposed_on AS "on", disposal.to_party_id AS "partyId"
     FROM disposal_line JOIN disposal ON disposal.id = disposal_line.disposal_id
     WHERE ${dialect.isAnyOf('disposal_line.item_id')} ORDER BY disposal.id`,
    ids,
  );
  // A part that is original to another set is a replacement in this one.
  const codes = await rows<FactCode>(
    `SELECT component.id AS "componentId", fitting.item_id AS "itemId",
       fitting.designator AS "designator", component.date_code AS "dateCode",
       CASE WHEN component.origin = 'ORIGINAL' AND EXISTS (SELECT 1 FROM fitting before_it
           WHERE before_it.component_id = component.id AND before_it.item_id <> fitting.item_id
             AND before_it.fitted_at < fitting.fitted_at)
         THEN 'REPLACEMENT' ELSE component.origin END AS "origin",
       fitting.fitted_at AS "fittedAt"
     FROM fitting JOIN component ON component.id = fitting.component_id
     WHERE component.date_code IS NOT NULL AND ${dialect.isAnyOf('fitting.item_id')}
     ORDER BY fitting.designator, fitting.fitted_at, component.id`,
    ids,
  );
  const serials = await rows<FactSerial>(
    `SELECT model_id AS "modelId", serial_number AS "serialNumber",
       earliest_on AS "earliest", latest_on AS "latest"
     FROM dated_serial WHERE withdrawn_at IS NULL AND latest_on IS NOT NULL
       AND ${dialect.isAnyOf('model_id')} ORDER BY id`,
    [listParameter(items.flatMap(({ modelId }) => modelId ?? []))],
  );
  const [collection] = await rows<{ ownerId: string | null }>(
    `SELECT owner_id AS "ownerId" FROM collection ORDER BY id LIMIT 1`,
    [],
  );
  const eventIds = events.map(({ id }) => id);
  const confidences = await readConfidences(source, 'event_id', eventIds);
  const of = <One extends { itemId: string }>(all: readonly One[]) => {
    const byItem = groupedBy(all, ({ itemId }) => itemId);
    return (id: string): One[] => byItem.get(id) ?? [];
  };
  const [eventsOf, acquiredOf, disposedOf, codesOf] = [
    of(events),
    of(acquisitions),
    of(disposals),
    of(codes),
  ];
  return items.map((item) => ({
    item,
    events: eventsOf(item.id),
    confidences,
    acquisitions: acquiredOf(item.id),
    disposals: disposedOf(item.id),
    codes: codesOf(item.id),
    serials: serials.filter(({ modelId }) => modelId === item.modelId),
    ownerId: collection?.ownerId ?? null,
  }));
}
