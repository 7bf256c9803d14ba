import { useLiveQuery } from '../../api/useLiveQuery.js';
import { useDraft } from '../../drafts/useDraft.js';
import { SetPlanDocument } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { emptyPart, partPlace } from '../set/parts/partDraft.js';
import { PartEntry } from '../set/parts/PartEntry.js';
import { planRows } from '../set/planRows.js';
import type { BenchItem } from './BenchPage.js';

/** A part goes in or comes out while the set lies here. */
export function BenchPart({ item }: { item: BenchItem }) {
  const kept = useDraft(partPlace(item.id), emptyPart);
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetPlanDocument,
    variables: { number: item.inventoryNumber },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  return <PartEntry item={item} rows={planRows(data.item)} kept={kept} />;
}
