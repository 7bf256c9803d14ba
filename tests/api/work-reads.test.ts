import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { splitGlobalId } from '../../src/api/kit/globalId.js';
import { sqliteDialect } from '../../src/db/dialect.js';
import type { RowSource } from '../../src/db/rowSource.js';
import { queryInWork } from '../../src/db/queryInWork.js';
import { countedSlices } from '../../src/domain/hours/countedSlices.js';
import { readTasksForItems } from '../../src/features/tasks/tasksForItems.reads.js';
import { readSessionsAround } from '../../src/features/work/sessionsAround.reads.js';
import { readSessionsForItems } from '../../src/features/work/sessionsForItems.reads.js';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)(
  'what the arithmetic reads of work on %s',
  (engine) => {
    let api: TestApi;
    let story: ShedStory;
    beforeAll(async () => {
      api = await testApi(engine);
      story = await shedStory(api);
    });
    afterAll(() => api?.close());

    const on = (day: string) => (from: string, to: string) => ({
      startedAt: `2026-${day}T${from}:00.000Z`,
      endedAt: `2026-${day}T${to}:00.000Z`,
    });
    const query: RowSource['rows'] = (sql, parameters) => api.database.reader.rows(sql, parameters);
    const recordOf = (id: string) => splitGlobalId(id)!.id;

    it('reads for an item also the sessions elsewhere that claim the same minutes', async () => {
      const times = on('05-20');
      const record = async (itemId: string, from: string, to: string) =>
        recordOf((await story.session({ itemId, ...times(from, to) })).session.id);
      const apart = await record(story.otherRigId, '08:00', '09:00');
      const before = await record(story.otherRigId, '09:00', '10:30');
      const own = await record(story.rigId, '10:00', '12:00');
      const touching = await record(story.otherRigId, '12:00', '13:00');
      const { dialect } = api.database.reader;
      const read = await readSessionsForItems(query, dialect, [recordOf(story.rigId)]);
      const ids = read.map(({ id }) => id);
      expect(ids).toEqual(expect.arrayContaining([before, own]));
      expect(ids).not.toContain(apart);
      expect(ids).not.toContain(touching);
      expect(new Set(ids).size).toBe(ids.length);
      const ofDay = countedSlices(read, api.nowMs).slices.filter(
        ({ sessionId }) => sessionId === own,
      );
      const seconds =
        ofDay.reduce((sum, slice) => sum + slice.endedAtMs - slice.startedAtMs, 0) / 1000;
      expect(seconds).toBe(90 * 60);
      const inWork = await api.database.write(
        { action: 'look', actorId: null, now: new Date(api.nowMs).toISOString() },
        (work) =>
          readSessionsForItems(
            (sql, parameters = []) => queryInWork(work, sql, parameters),
            dialect,
            [recordOf(story.rigId)],
          ),
      );
      expect(new Set(inWork.map(({ id }) => id))).toEqual(new Set(ids));
    });

    it('reads the tasks of items with what the arithmetic asks of them', async () => {
      const itemId = story.rigId;
      const projectId = await story.project('Arithmetic', itemId);
      const [first, second] = await story.tasks(projectId, [
        {
          title: 'Steps',
          rule: 'WEIGHTED_STEPS',
          steps: [
            { title: 'One', weight: 3 },
            { title: 'Two', weight: 1 },
          ],
        },
        { title: 'Percent', rule: 'PERCENT_WITH_EVIDENCE', predecessorPositions: [0] },
      ]);
      const { dialect } = api.database.reader;
      const tasks = await readTasksForItems(query, dialect, [recordOf(itemId)]);
      const ofProject = tasks.filter((task) => task.projectId === recordOf(projectId));
      expect(ofProject).toEqual([
        {
          id: recordOf(first!),
          itemId: recordOf(itemId),
          projectId: recordOf(projectId),
          projectStatus: 'PLANNED',
          title: 'Steps',
          kind: 'OTHER',
          state: 'NOT_STARTED',
          estimate: {
            optimisticHours: 1,
            likelyHours: 2,
            pessimisticHours: 3,
            distribution: 'PERT_BETA',
          },
          earningRule: {
            kind: 'WEIGHTED_STEPS',
            steps: [
              { name: 'One', weight: 3, isDone: false },
              { name: 'Two', weight: 1, isDone: false },
            ],
          },
          predecessorIds: [],
          drawKey: '0/1',
        },
        expect.objectContaining({
          id: recordOf(second!),
          earningRule: { kind: 'PERCENT_WITH_EVIDENCE', percent: 0, evidence: null },
          predecessorIds: [recordOf(first!)],
          drawKey: '0/2',
        }),
      ]);
      expect(await readTasksForItems(query, dialect, [])).toEqual([]);
    });

    it('keeps the index in use for sessions around a long history', async () => {
      if (engine !== 'sqlite') return;
      const plan: { detail: string }[] = [];
      const explain: RowSource['rows'] = async (sql, parameters) => {
        plan.push(...(await query<{ detail: string }>(`EXPLAIN QUERY PLAN ${sql}`, parameters)));
        return [];
      };
      const row = {
        id: 'x',
        personId: recordOf(story.personId),
        itemId: 'x',
        taskId: null,
        taskKind: 'OTHER',
        startedAt: '2026-05-20T10:00:00.000Z',
        endedAt: '2026-05-20T12:00:00.000Z',
        zone: 'UTC',
      };
      await readSessionsAround(explain, sqliteDialect, [row]);
      const details = plan.map(({ detail }) => detail).join('\n');
      expect(details).toMatch(/SEARCH work_session USING INDEX .*person_id=\? AND started_at>\?/);
      expect(details).not.toMatch(/SCAN work_session/);
    });
  },
);
