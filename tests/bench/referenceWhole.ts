import type { Reader } from '../../src/db/reader.js';
import { readinessAt } from '../../src/domain/readiness/readinessAt.js';
import type { readComponentStandings } from '../../src/features/parts/componentStandings.reads.js';
import type { StandingFacts } from '../../src/features/standing/standingFacts.js';
import { benchNowMs } from './benchClock.js';

const rigSql = `SELECT item.id AS "id", item.name AS "name", item_standing.facts AS "facts"
  FROM item JOIN item_standing ON item_standing.item_id = item.id
  WHERE item.kind = 'RIG' AND item.inventory_number = ?`;

const componentsSql = `SELECT fitting.id AS "id", fitting.designator AS "designator",
    fitting.fitted_at AS "fittedAt", component.id AS "componentId", component.marking AS "marking"
  FROM fitting JOIN component ON component.id = fitting.component_id
  WHERE fitting.item_id = ? AND fitting.removed_at IS NULL
  ORDER BY natural_key(fitting.designator), fitting.id LIMIT 100`;

const projectsSql = `SELECT id AS "id", title AS "title" FROM project WHERE item_id = ?
  ORDER BY recorded_at, id`;

const tasksSql = `SELECT task.project_id AS "projectId", task.id AS "id", task.title AS "title",
    task.kind AS "kind", task.status AS "status", task.optimistic_minutes AS "optimistic",
    task.likely_minutes AS "likely", task.pessimistic_minutes AS "pessimistic"
  FROM task JOIN project ON project.id = task.project_id WHERE project.item_id = ?
  ORDER BY task.ordinal, task.id`;

const sessionsSql = `SELECT id AS "id", started_at AS "startedAt", ended_at AS "endedAt"
  FROM work_session WHERE item_id = ? ORDER BY started_at DESC, id DESC LIMIT 100`;

const breaksSql = `SELECT work_break.session_id AS "sessionId", work_break.started_at AS "startedAt",
    work_break.ended_at AS "endedAt"
  FROM work_break JOIN work_session ON work_session.id = work_break.session_id
  WHERE work_session.item_id = ?`;

type Texts<Name extends string> = Record<Name, string>;

/** What `schema/operations/rig-whole.graphql` asks, in a statement for each list. */
export async function readWhole(
  reader: Reader,
  inventoryNumber: string,
  standingsOf: typeof readComponentStandings,
) {
  const [rig] = await reader.rows<{ id: string; name: string | null; facts: string }>(rigSql, [
    inventoryNumber,
  ]);
  if (!rig) return { rig: null };
  const facts = JSON.parse(rig.facts) as StandingFacts;
  const { level, blockers } = readinessAt(facts.readiness, benchNowMs);
  const fitted = await reader.rows<
    Texts<'id' | 'designator' | 'fittedAt' | 'componentId'> & { marking: string | null }
  >(componentsSql, [rig.id]);
  const standings = await standingsOf(
    reader,
    fitted.map(({ componentId }) => componentId),
  );
  const tasks = await reader.rows<
    Texts<'projectId' | 'id' | 'title' | 'kind' | 'status'> &
      Record<'optimistic' | 'likely' | 'pessimistic', number>
  >(tasksSql, [rig.id]);
  const projects = await reader.rows<Texts<'id' | 'title'>>(projectsSql, [rig.id]);
  const sessions = await reader.rows<Texts<'id' | 'startedAt' | 'endedAt'>>(sessionsSql, [rig.id]);
  const breaks = await reader.rows<Texts<'sessionId' | 'startedAt' | 'endedAt'>>(breaksSql, [
    rig.id,
  ]);
  const pauses = new Map<string, number>();
  for (const { sessionId, startedAt, endedAt } of breaks) {
    pauses.set(sessionId, (pauses.get(sessionId) ?? 0) + seconds(startedAt, endedAt));
  }
  const { hours } = facts;
  return {
    rig: {
      id: `Rig_${rig.id}`,
      inventoryNumber,
      name: rig.name,
      hours: {
        hours: hours.hours,
        basis: {
          method: hours.basis.method,
          counted: hours.basis.counted.map(({ what, count }) => ({ what, count })),
        },
      },
      readiness: { level, blockers: blockers.map(({ message }) => ({ message })) },
      components: {
        nodes: fitted.map(({ id, designator, fittedAt, componentId, marking }) => ({
          id: `Fitting_${id}`,
          designator,
          fittedAt,
          component: {
            id: `Component_${componentId}`,
            marking,
            state: { state: standings.get(componentId)?.state },
          },
        })),
      },
      projects: projects.map(({ id, title }) => ({
        id: `Project_${id}`,
        title,
        completion: { share: facts.projects[id]?.completion.share ?? null },
        tasks: {
          nodes: tasks
            .filter(({ projectId }) => projectId === id)
            .map((task) => ({
              id: `Task_${task.id}`,
              title: task.title,
              kind: task.kind,
              status: task.status,
              estimate: {
                optimisticHours: task.optimistic / 60,
                likelyHours: task.likely / 60,
                pessimisticHours: task.pessimistic / 60,
              },
            })),
        },
      })),
      sessions: {
        nodes: sessions.map(({ id, startedAt, endedAt }) => ({
          id: `WorkSession_${id}`,
          startedAt,
          endedAt,
          netSeconds: seconds(startedAt, endedAt) - (pauses.get(id) ?? 0),
        })),
      },
    },
  };
}

const seconds = (from: string, until: string): number =>
  (Date.parse(until) - Date.parse(from)) / 1000;
