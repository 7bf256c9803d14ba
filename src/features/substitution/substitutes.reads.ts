import type { ApiContext } from '../../api/kit/apiContext.js';
import { splitGlobalId } from '../../api/kit/globalId.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { rankSubstitutes } from '../../domain/parts/rankSubstitutes.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { readNotedPrices } from '../prices/notedPrices.reads.js';
import { readComparableParts, type ComparableParts } from './comparableParts.reads.js';
import { comparePartTypes } from './comparePartTypes.js';
import { readRecordedEdges, type RecordedEdge } from './recordedEdges.reads.js';
import { readStockOnHand } from './stockOnHand.reads.js';
import { substituteBasis } from './substituteBasis.js';
import { substituteRow, type SubstituteDraft } from './substituteRow.js';
import type { HeaterSupply } from './substitutionGrade.js';

export const substitutionReads = tableReads(
  'Substitution',
  'substitution',
  selectColumns('substitution', [
    'id',
    'version',
    'originalId',
    'substituteId',
    'grade',
    'isMutual',
    'consequence',
    'recheck',
    'source',
    'retiredAt',
  ]),
  { original: one('PartType', 'originalId'), substitute: one('PartType', 'substituteId') },
);

/** Computed for a part type and never asked for by an id of its own. */
export const substituteReads: TypeReads = {
  typeName: 'Substitute',
  byIds: () => Promise.resolve([]),
  relations: {
    partType: one('PartType', 'partTypeId'),
    recorded: one('Substitution', 'recordedId'),
  },
};

const mostShown = 50;
const suppliedBy = (args: Record<string, unknown>): HeaterSupply =>
  args['heaters'] === 'SERIES' ? 'SERIES' : 'PARALLEL';

function draftsOf(
  parts: ComparableParts,
  id: string,
  candidateIds: Iterable<string>,
  edges: readonly RecordedEdge[],
  supply: HeaterSupply,
): SubstituteDraft[] {
  const original = parts.byId.get(id);
  const edgeTo = new Map(edges.map((edge) => [edge.candidateId, edge]));
  return [...candidateIds].flatMap((candidateId) => {
    const candidate = parts.byId.get(candidateId);
    if (!original || !candidate || candidateId === id) return [];
    const compared = comparePartTypes(original, candidate, supply);
    return [substituteRow(candidate, edgeTo.get(candidateId), compared)];
  });
}

async function withStockAndPrices(context: ApiContext, drafts: readonly SubstituteDraft[][]) {
  const { reader } = context.database;
  const ids = [...new Set(drafts.flat().map(({ partTypeId }) => partTypeId))];
  const stock = await readStockOnHand(reader, ids);
  const prices = await readNotedPrices(reader, 'part_type_id', ids);
  const basis = substituteBasis(context.nowMs);
  return drafts.map((rows) =>
    rankSubstitutes(
      rows.map((row) => {
        const last = prices.get(row.partTypeId)?.at(-1);
        const price = last ? Math.round(last.amountMinorUnits / last.quantity) : null;
        return {
          ...row,
          inStock: stock.get(row.partTypeId) ?? 0,
          lastPriceMinorUnits: price,
          lastPriceCurrency: last?.currency ?? null,
          lastPrice: last && price !== null ? moneyAmount(price, last.currency) : null,
          basis,
        };
      }),
    ),
  );
}

const substitutes: Relation = async (context, parents, args) => {
  const { reader } = context.database;
  const parts = await readComparableParts(reader);
  const edges = await readRecordedEdges(
    reader,
    parents.map(({ id }) => id),
  );
  const drafts = parents.map(({ id }) => {
    const own = edges.get(id) ?? [];
    const original = parts.byId.get(id);
    const beside = original ? parts.beside(original).map((part) => part.id) : [];
    const candidates = new Set([...own.map(({ candidateId }) => candidateId), ...beside]);
    const all = draftsOf(parts, id, candidates, own, suppliedBy(args));
    return all.filter((row) => row.grade !== null || row['supposedGrade'] !== null);
  });
  const ranked = await withStockAndPrices(context, drafts);
  const values: Row[][] = ranked.map((rows) => rows.slice(0, mostShown));
  return { values, children: values.flat(), childType: 'Substitute' };
};

/** One candidate, with the reasons when it does not serve. */
const substituteBy: Relation = async (context, parents, args) => {
  const { reader } = context.database;
  const candidateId = splitGlobalId(String(args['candidateId']))?.id ?? '';
  const parts = await readComparableParts(reader);
  const edges = await readRecordedEdges(
    reader,
    parents.map(({ id }) => id),
  );
  const drafts = parents.map(({ id }) =>
    draftsOf(parts, id, [candidateId], edges.get(id) ?? [], suppliedBy(args)),
  );
  const values = (await withStockAndPrices(context, drafts)).map(
    ([only]): Row | null => only ?? null,
  );
  const children = values.filter((row) => row !== null);
  return { values, children, childType: 'Substitute' };
};

export const substituteRelationsOfPartType = { substitutes, substituteBy };
