import { one } from '../../api/kit/relations.js';
import { spareColumns } from '../../api/kit/spareColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { readingRelationsOfComponent } from '../readings/reading.reads.js';
import { readingsByIds } from '../readings/readingsByIds.js';
import { matchedSetRelationsOfComponent } from '../matchedSets/matchedSet.reads.js';
import { trendRelationsOfComponent } from '../trends/trend.reads.js';
import { treatmentRelationsOfComponent } from '../treatments/treatment.reads.js';
import { useHours } from '../use/componentUse.reads.js';
import { readComponentStandings } from './componentStandings.reads.js';
import { fittingRelationsOfComponent } from './fitting.reads.js';

const names = ['id', 'version', 'partTypeId', 'marking', 'dateCode', 'origin', 'note'];
const columns = spareColumns('component', names, {
  version: [],
  partTypeId: ['partType'],
  marking: [],
  dateCode: [],
  origin: [],
  note: [],
});

const state: Relation = async ({ database }, components) => {
  const ids = components.map((component) => component.id);
  const standings = await readComponentStandings(database.reader, ids);
  const values: Row[] = ids.map((id) => ({ id, ...standings.get(id) }));
  return { values, children: values, childType: 'ComponentStanding' };
};

export const componentReads = tableReads('Component', 'component', columns, {
  partType: one('PartType', 'partTypeId'),
  state,
  useHours,
  ...fittingRelationsOfComponent,
  ...readingRelationsOfComponent,
  ...trendRelationsOfComponent,
  ...matchedSetRelationsOfComponent,
  ...treatmentRelationsOfComponent,
});

/** Computed for a component and never asked for by an id of its own. */
export const componentStandingReads: TypeReads = {
  typeName: 'ComponentStanding',
  byIds: () => Promise.resolve([]),
  relations: { readings: readingsByIds },
};
