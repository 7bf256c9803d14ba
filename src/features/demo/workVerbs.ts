import { z } from 'zod';
import { globalId, splitGlobalId } from '../../api/kit/globalId.js';
import { queryInWork } from '../../db/queryInWork.js';
import { recordSession } from '../work/recordSession.js';
import { startTimer } from '../work/startTimer.js';
import { dropTask } from '../tasks/dropTask.js';
import { finishTask } from '../tasks/finishTask.js';
import { markSteps } from '../tasks/markSteps.js';
import { startTask } from '../tasks/startTask.js';
import { statePercent } from '../tasks/statePercent.js';
import { keptVersion } from './keptVersion.js';
import { storyVerb, text, type Telling } from './storyEvent.js';

const pause = z.string().regex(/^\d{2}:\d{2}-\d{2}:\d{2}$/);

const taskId = ({ names, item }: Telling, key: string): string =>
  names.id('task', `${item} ${key}`);

export const workVerbs = {
  work: storyVerb(
    'recordSession',
    {
      /** When it ended: `21:40` on the same day, or after midnight. */
      until: z.string().regex(/^\d{2}:\d{2}$/),
      task: text.optional(),
      by: text.optional(),
      breaks: z.array(pause).default([]),
      note: text.optional(),
    },
    async (telling, event) => {
      const { work, clock, names, item } = telling;
      const startedAt = clock.instant(event.at);
      const breaks = event.breaks.map((written) => {
        const [from = '', until = ''] = written.split('-');
        const began = clock.nextTime(from, startedAt);
        return { startedAt: began, endedAt: clock.nextTime(until, began) };
      });
      return recordSession(work, {
        personId: names.optionalId('person', event.by),
        itemId: names.id('item', item),
        taskId: event.task === undefined ? null : taskId(telling, event.task),
        startedAt,
        endedAt: clock.nextTime(event.until, startedAt),
        breaks,
        note: event.note ?? null,
        isLongSessionMeant: false,
      });
    },
  ),

  /** Left running until somebody says when the work ended. */
  timer: storyVerb(
    'startTimer',
    { task: text.optional(), by: text.optional(), note: text.optional() },
    (telling, { task, by, note }) =>
      startTimer(telling.work, {
        personId: telling.names.optionalId('person', by),
        itemId: telling.names.id('item', telling.item),
        taskId: task === undefined ? null : taskId(telling, task),
        note: note ?? null,
      }),
  ),

  start: storyVerb('startTask', { task: text, note: text.optional() }, (telling, { task, note }) =>
    startTask(telling.work, { id: taskId(telling, task), note: note ?? null }),
  ),

  finish: storyVerb(
    'finishTask',
    { task: text, note: text.optional() },
    (telling, { task, note }) =>
      finishTask(telling.work, { id: taskId(telling, task), note: note ?? null }),
  ),

  drop: storyVerb('dropTask', { task: text, note: text.optional() }, (telling, { task, note }) =>
    dropTask(telling.work, { id: taskId(telling, task), note: note ?? null }),
  ),

  step: storyVerb(
    'markSteps',
    { task: text, done: z.array(text).min(1) },
    async (telling, event) => {
      const id = taskId(telling, event.task);
      const steps = await queryInWork<{ id: string; title: string }>(
        telling.work,
        'SELECT id AS "id", title AS "title" FROM task_step WHERE task_id = ?',
        [splitGlobalId(id)?.id ?? ''],
      );
      return markSteps(telling.work, {
        taskId: id,
        steps: event.done.map((title) => {
          const step = steps.find((one) => one.title === title);
          if (!step) throw new Error(`The task “${event.task}” has no step “${title}”.`);
          return { stepId: globalId('TaskStep', step.id), isDone: true };
        }),
      });
    },
  ),

  percent: storyVerb(
    'statePercent',
    {
      task: text,
      percent: z.int().min(0).max(100),
      evidence: text.optional(),
      /** The quantity whose latest reading on the set shows it. */
      reading: text.optional(),
    },
    async (telling, { task, percent, evidence, reading }) => {
      const id = taskId(telling, task);
      const version = await keptVersion(telling.work, 'task', id);
      const readingId = reading === undefined ? null : await latestReading(telling, reading);
      return statePercent(telling.work, {
        id,
        version,
        percent,
        evidence: evidence ?? null,
        readingId,
      });
    },
  ),
};

async function latestReading({ work, names, item }: Telling, quantity: string): Promise<string> {
  const [reading] = await queryInWork<{ id: string }>(
    work,
    `SELECT id AS "id" FROM reading WHERE item_id = ? AND quantity = ?
     ORDER BY taken_at DESC, id DESC LIMIT 1`,
    [splitGlobalId(names.id('item', item))?.id ?? '', quantity],
  );
  if (!reading) throw new Error(`No reading of “${quantity}” has been taken on ${item}.`);
  return globalId('Reading', reading.id);
}
