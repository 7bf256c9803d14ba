import { listParameter, type Dialect } from '../../db/dialect.js';
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
       SELECT sitting.id AS "id", sitting.item_id AS "itemId", sitting.designator AS "designator",
         sitting.part_type_id AS "partTypeId", sitting.evidence AS "evidence",
         CASE WHEN ${isPartsDonor} THEN 1 ELSE 0 END AS "isPartsDonor",
         ROW_NUMBER() OVER (PARTITION BY sitting.part_type_id
           ORDER BY CASE WHEN ${isPartsDonor} THEN 0 ELSE 1 END,
             COALESCE(item_standing.readiness_rank, 0), item.inventory_number, sitting.id) AS "rank"
       FROM (${sitting(reader.dialect)}) AS sitting
         JOIN item ON item.id = sitting.item_id AND item.retired_at IS NULL
         LEFT JOIN item_standing ON item_standing.item_id = item.id
     ) AS ranked WHERE "rank" <= ${mostRead} ORDER BY "partTypeId", "rank"`,
    [listParameter([...wanted]), listParameter([...wanted])],
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

/** Parts that sit somewhere: by a fitting, or by the latest check of a place nothing was fitted in since. */
const sitting = (dialect: Dialect): string =>
  `SELECT fitting.id AS id, fitting.item_id AS item_id, fitting.designator AS designator,
     component.part_type_id AS part_type_id, 'FITTING' AS evidence
   FROM fitting JOIN component ON component.id = fitting.component_id
   WHERE fitting.removed_at IS NULL AND ${dialect.isAnyOf('component.part_type_id')}
   UNION ALL
   SELECT seen.id, seen.item_id, fit_out_position.designator, fit_out_position.part_type_id, 'CHECK'
   FROM fit_out_check AS seen JOIN fit_out_position ON fit_out_position.id = seen.position_id
   WHERE seen.state = 'PRESENT' AND ${dialect.isAnyOf('fit_out_position.part_type_id')}
     AND NOT EXISTS (SELECT 1 FROM fit_out_check AS later
       WHERE later.item_id = seen.item_id AND later.position_id = seen.position_id
         AND (later.checked_at > seen.checked_at
           OR (later.checked_at = seen.checked_at AND later.id > seen.id)))
     AND NOT EXISTS (SELECT 1 FROM fitting
       WHERE fitting.item_id = seen.item_id AND fitting.designator = fit_out_position.designator
         AND (fitting.removed_at IS NULL OR fitting.removed_at >= seen.checked_at))`;

const isPartsDonor = `EXISTS (SELECT 1 FROM project WHERE project.item_id = item.id
  AND project.target_standard = 'PARTS_DONOR' AND project.status <> 'ABANDONED')`;
