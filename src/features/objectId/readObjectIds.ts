import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import type { ObjectIdCategory } from '../../domain/provenance/objectIdCategory.js';
import { objectIdOf, type ObjectIdAnswer } from '../../domain/provenance/objectIdOf.js';
import { factsOfItem, type ObjectIdRow } from './factsOfItem.js';

/** The identification sheet of one item, as plain data. */
export interface ObjectIdData {
  itemId: string;
  version: number | null;
  answers: ObjectIdAnswer[];
  isComplete: boolean;
  missing: ObjectIdCategory[];
  inventoryNumber: string;
  description: string | null;
  placeOfOrigin: string | null;
  relatedPapers: string | null;
  documentedAt: string | null;
  /** How many open findings were read. */
  findingCount: number;
}

/** The identification sheets of any number of items, with three statements in all. */
export async function readObjectIds(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, ObjectIdData>> {
  const ids = [listParameter(itemIds)];
  const items = await rows<ObjectIdRow>(
    `SELECT item.id AS "itemId", item.kind AS "kind", item.role AS "role",
       item.inventory_number AS "inventoryNumber", item.name AS "name",
       item.serial_number AS "serialNumber", item.made_edtf AS "madeEdtf",
       model.maker AS "modelMaker", model.designation AS "modelDesignation",
       model.description AS "modelDescription", model.first_year_made AS "firstYearMade",
       model.last_year_made AS "lastYearMade",
       own.version AS "version", own.changed_at AS "documentedAt",
       own.object_type AS "objectType", own.materials AS "materials",
       own.measurements AS "measurements", own.inscriptions AS "inscriptions",
       own.distinguishing_features AS "distinguishingFeatures", own.title AS "title",
       own.subject AS "subject", own.maker AS "maker", own.place_of_origin AS "placeOfOrigin",
       own.related_papers AS "relatedPapers", own.description AS "description",
       own.not_applicable AS "notApplicable"
     FROM item LEFT JOIN model ON model.id = item.model_id
     LEFT JOIN item_identity AS own ON own.item_id = item.id
     WHERE ${dialect.isAnyOf('item.id')}`,
    ids,
  );
  const findings = await rows<{ itemId: string; note: string }>(
    `SELECT item_id AS "itemId", note AS "note" FROM finding
     WHERE status <> 'RESOLVED' AND ${dialect.isAnyOf('item_id')} ORDER BY seen_at, id`,
    ids,
  );
  const makings = await rows<{ itemId: string; dateEdtf: string }>(
    `SELECT item_id AS "itemId", date_edtf AS "dateEdtf" FROM provenance_event
     WHERE kind = 'MADE' AND date_edtf IS NOT NULL AND standing <> 'CONTRADICTED'
       AND ${dialect.isAnyOf('item_id')} ORDER BY id DESC`,
    ids,
  );
  const findingsOf = groupedBy(findings, ({ itemId }) => itemId);
  const madeOn = new Map(makings.map(({ itemId, dateEdtf }) => [itemId, dateEdtf]));
  return new Map(
    items.map((item) => {
      const notes = (findingsOf.get(item.itemId) ?? []).map(({ note }) => note);
      return [item.itemId, sheetOf(item, notes, madeOn.get(item.itemId) ?? null)];
    }),
  );
}

function sheetOf(item: ObjectIdRow, notes: readonly string[], made: string | null): ObjectIdData {
  const answers = objectIdOf(factsOfItem(item, notes, made));
  const missing = answers.flatMap(({ source, category }) => (source === 'MISSING' ? category : []));
  const { itemId, version, inventoryNumber, description, placeOfOrigin, relatedPapers } = item;
  return {
    itemId,
    version,
    answers,
    isComplete: missing.length === 0,
    missing,
    inventoryNumber,
    description,
    placeOfOrigin,
    relatedPapers,
    documentedAt: item.documentedAt,
    findingCount: notes.length,
  };
}
