import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { priceRelationsOfPartType } from '../prices/price.reads.js';
import { substituteRelationsOfPartType } from '../substitution/substitutes.reads.js';
import { isConfirmedBy } from '../substitution/partFacts.js';
import { stockRelationsOfPartType } from '../stock/stockTotal.reads.js';
import { limitsOf } from '../readings/limit.reads.js';

const columns = selectColumns('part_type', [
  'id',
  'version',
  'kind',
  'designation',
  'description',
  'retiredAt',
  'ratings',
  'tubeBase',
  'tubeClass',
  'tubeSource',
]);

/** Kept as JSON text beside the part type: nothing is read for it. */
const ratings: Relation = (_context, parents) =>
  Promise.resolve({
    values: parents.map((parent): unknown => JSON.parse(String(parent['ratings']))),
    children: [],
    childType: null,
  });

/** What the collector wrote down of a tube's connections; nothing is read for it. */
const tube: Relation = (_context, parents) =>
  Promise.resolve({
    values: parents.map(({ tubeBase, tubeClass, tubeSource }) =>
      tubeBase === null && tubeClass === null
        ? null
        : {
            base: tubeBase,
            tubeClass,
            source: tubeSource,
            isConfirmed: isConfirmedBy(tubeSource as string | null),
          },
    ),
    children: [],
    childType: null,
  });

export const partTypeReads = tableReads('PartType', 'part_type', columns, {
  ratings,
  tube,
  ...stockRelationsOfPartType,
  limits: limitsOf('part_type_id'),
  ...priceRelationsOfPartType,
  ...substituteRelationsOfPartType,
});
