import type { ApiContext } from '../../api/kit/apiContext.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { readStandIns, readWantPrices } from './insteadOf.reads.js';
import type { StandingWant } from './openWants.reads.js';
import { wantedListHtml } from './wantedListHtml.js';

const gradeWords: Record<string, string> = {
  DIRECT: 'as it is',
  PARALLEL_HEATERS_ONLY: 'parallel heaters only',
  WITH_CHANGES: 'with changes',
  LAST_RESORT: 'last resort',
};

/** The sheet of the wanted list: with what was named by hand, what the graph adds, usual prices. */
export async function readWantedSheet(
  context: ApiContext,
  open: readonly StandingWant[],
): Promise<string> {
  const { reader } = context.database;
  const named = groupedBy(
    await reader.rows<{ wantId: string; partTypeId: string; designation: string }>(
      `SELECT want_substitute.want_id AS "wantId", part_type.id AS "partTypeId",
         part_type.designation AS "designation"
       FROM want_substitute JOIN part_type ON part_type.id = want_substitute.part_type_id
       WHERE ${reader.dialect.isAnyOf('want_substitute.want_id')} ORDER BY want_substitute.id`,
      [listParameter(open.map(({ id }) => id))],
    ),
    ({ wantId }) => wantId,
  );
  const standIns = await readStandIns(context, open);
  const prices = await readWantPrices(context, open);
  const lines = open.map((want, index) => {
    const byHand = named.get(want.id) ?? [];
    const known = new Set(byHand.map(({ partTypeId }) => partTypeId));
    const others = (standIns[index] ?? []).filter(
      ({ partTypeId }) => !known.has(String(partTypeId)),
    );
    return {
      want,
      instead: [
        ...byHand.map(({ designation }) => designation),
        ...others.map(({ designation, grade, recheck }) => {
          const again = (recheck as string[]).join('; ');
          const words = gradeWords[String(grade)] ?? '';
          return `${String(designation)} (${words}${again === '' ? '' : `; check again: ${again}`})`;
        }),
      ],
      usual: (prices[index] ?? []).flatMap(({ median, recentCount }) =>
        median ? `${median.amount} ${median.currency} (${recentCount})` : [],
      ),
    };
  });
  return wantedListHtml(lines, new Date(context.nowMs).toISOString());
}
