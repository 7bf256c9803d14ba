import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { Reader } from '../../db/reader.js';
import type { Relation } from '../../api/kit/typeReads.js';
import type { SessionVersion } from './sessionVersion.type.js';

interface SessionChange {
  sessionId: string;
  at: string;
  action: string;
  before: string;
}

interface BreakChange {
  recordId: string;
  at: string;
  before: string | null;
  after: string | null;
}

interface KeptBreak {
  id: string;
  sessionId: string;
  startedAt: string;
  endedAt: string | null;
}

/**
 * What sessions said before each change, the latest first, from the history; three statements for
 * all of them. A change of breaks gives its session a new version, so the two go together.
 */
export const earlierVersions: Relation = async ({ database: { reader } }, parents) => {
  const ids = parents.map(({ id }) => id);
  const changes = await sessionChanges(reader, ids);
  const breaks = await breakHistory(reader, ids);
  const bySession = groupedBy(changes, ({ sessionId }) => sessionId);
  const values = ids.map((id) => {
    const known = breaks.filter(({ sessionId }) => sessionId === id);
    return (bySession.get(id) ?? []).map((change) => versionOf(change, known));
  });
  return { values, children: [], childType: null };
};

function versionOf({ before, at, action }: SessionChange, breaks: BreakLife[]): SessionVersion {
  const kept = JSON.parse(before) as SessionVersion;
  return {
    version: kept.version,
    startedAt: kept.startedAt,
    endedAt: kept.endedAt,
    zone: kept.zone,
    note: kept.note,
    breaks: breaks
      .flatMap((one) => one.before(at) ?? [])
      .sort((left, right) => (left.startedAt < right.startedAt ? -1 : 1)),
    replacedAt: at,
    replacedBy: action,
  };
}

const sessionChanges = (reader: Reader, ids: readonly string[]): Promise<SessionChange[]> =>
  reader.rows<SessionChange>(
    `SELECT change.record_id AS "sessionId", change.changed_at AS "at", change.action AS "action",
       change."before" AS "before"
     FROM change WHERE change.record_table = 'work_session' AND change."before" IS NOT NULL
       AND ${reader.dialect.isAnyOf('change.record_id')} ORDER BY change.id DESC`,
    [listParameter(ids)],
  );

/** One break through time: what it said before an instant, or nothing if it was not there. */
interface BreakLife {
  sessionId: string;
  before(at: string): KeptBreak | null;
}

async function breakHistory(reader: Reader, ids: readonly string[]): Promise<BreakLife[]> {
  const now = await reader.rows<KeptBreak>(
    `SELECT id AS "id", session_id AS "sessionId", started_at AS "startedAt", ended_at AS "endedAt"
     FROM work_break WHERE ${reader.dialect.isAnyOf('session_id')}`,
    [listParameter(ids)],
  );
  // A break that was taken away is only in the history, under the session that it names.
  const changes = await reader.rows<BreakChange>(
    `SELECT change.record_id AS "recordId", change.changed_at AS "at",
       change."before" AS "before", change."after" AS "after"
     FROM change JOIN ${reader.dialect.eachText} AS wanted
       ON COALESCE(change."before", change."after") LIKE '%"sessionId":"' || wanted.value || '"%'
     WHERE change.record_table = 'work_break' ORDER BY change.id`,
    [listParameter(ids)],
  );
  const byBreak = groupedBy(changes, ({ recordId }) => recordId);
  const unchanged = now.filter(({ id }) => !byBreak.has(id));
  return [
    ...unchanged.map((one) => ({ sessionId: one.sessionId, before: () => one })),
    ...[...byBreak.values()].map(lifeOf),
  ];
}

function lifeOf(changes: readonly BreakChange[]): BreakLife {
  const [first] = changes;
  const any = JSON.parse(first?.before ?? first?.after ?? '{}') as KeptBreak;
  return {
    sessionId: any.sessionId,
    before: (at) => {
      const next = changes.find((change) => change.at >= at);
      const said = next ? next.before : (changes.at(-1)?.after ?? null);
      return said === null ? null : (JSON.parse(said) as KeptBreak);
    },
  };
}
