import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';

/** Computed for a missing part and never asked for by an id of its own. */
export const donorReads: TypeReads = {
  typeName: 'Donor',
  byIds: () => Promise.resolve([]),
  relations: { item: one('Item', 'itemId') },
};

interface DonorRow extends Row {
  itemId: string;
  partTypeId: string;
  designator: string;
  isPartsDonor: boolean | number;
}

const mostShown = 10;
/** One more than is shown, because the set that lacks the part may have another of it. */
const mostRead = 40;

/** Sets that have the part fitted: those to be taken apart first, then those farthest from the air. */
export const donors: Relation = async ({ database: { reader } }, missing) => {
  const wanted = new Set(missing.flatMap((row) => (row['partTypeId'] as string | null) ?? []));
  const found = await reader.rows<DonorRow>(
    `SELECT * FROM (
       SELECT fitting.id AS "id", fitting.item_id AS "itemId", fitting.designator AS "designator",
         component.part_type_id AS "partTypeId",
         CASE WHEN ${isPartsDonor} THEN 1 ELSE 0 END AS "isPartsDonor",
         ROW_NUMBER() OVER (PARTITION BY component.part_type_id
           ORDER BY CASE WHEN ${isPartsDonor} THEN 0 ELSE 1 END,
             COALESCE(item_standing.readiness_rank, 0), item.inventory_number, fitting.id) AS "rank"
       FROM fitting JOIN component ON component.id = fitting.component_id
         JOIN item ON item.id = fitting.item_id AND item.retired_at IS NULL
         LEFT JOIN item_standing ON item_standing.item_id = item.id
       WHERE fitting.removed_at IS NULL AND ${reader.dialect.isAnyOf('component.part_type_id')}
     ) AS ranked WHERE "rank" <= ${mostRead} ORDER BY "partTypeId", "rank"`,
    [listParameter([...wanted])],
  );
  const byPart = groupedBy(found, ({ partTypeId }) => partTypeId);
  const values = missing.map((row) =>
    (byPart.get(String(row['partTypeId'])) ?? [])
      .filter(({ itemId }) => itemId !== row['itemId'])
      .slice(0, mostShown)
      .map((donor) => ({ ...donor, isPartsDonor: Boolean(donor.isPartsDonor) })),
  );
  return { values, children: values.flat(), childType: 'Donor' };
};

const isPartsDonor = `EXISTS (SELECT 1 FROM project WHERE project.item_id = item.id
  AND project.target_standard = 'PARTS_DONOR' AND project.status <> 'ABANDONED')`;
