import { DateTime } from 'luxon';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { whatNext } from '../nextTasks/whatNext.js';
import { htmlOf } from './htmlOf.js';
import { markdownOf } from './markdownOf.js';
import {
  readBeforeAndAfter,
  readFinishedTasks,
  readFittedParts,
  type ReportedReading,
} from './progressFacts.reads.js';
import { photographBlocks } from './photographBlocks.js';
import { nextBlocks } from './nextBlocks.js';
import type { ReportBlock } from './reportBlock.js';
import type { ReportFormat } from './reportFormat.js';
import type { ReportPeriod } from './reportPeriod.js';
import { readReportedSessions, type ReportedSession } from './reportedSessions.reads.js';

const minutesOfAnEvening = 180;
const mostNext = 5;

/** What was done between two days, for those who follow the work: no prices, places or persons. */
export async function progressReport(
  context: ApiContext,
  period: ReportPeriod,
  itemId: string | null,
  format: ReportFormat,
): Promise<string> {
  const { reader } = context.database;
  const [sessions, finished, pairs, parts, next, photographs] = await Promise.all([
    readReportedSessions(reader, { ...period, itemId }, context.nowMs),
    readFinishedTasks(context, period, itemId),
    readBeforeAndAfter(context, period, itemId),
    readFittedParts(context, period, itemId),
    whatNext(context, { minutes: minutesOfAnEvening, most: mostNext, itemId }),
    photographBlocks(context, period, itemId),
  ]);
  const day = (instant: string) =>
    DateTime.fromISO(instant, { zone: period.zone }).toFormat('yyyy-MM-dd');
  const title = `${period.collectionName}: progress from ${period.fromDay} to ${period.toDay}`;
  const blocks: ReportBlock[] = [
    { kind: 'HEADING', level: 1, text: title },
    { kind: 'WORDS', text: `Days of the zone ${period.zone}, both included.` },
    { kind: 'HEADING', level: 2, text: 'Hours' },
    ...hoursBlocks(sessions),
    { kind: 'HEADING', level: 2, text: 'Finished' },
    finished.length === 0
      ? { kind: 'WORDS', text: 'No task was finished.' }
      : {
          kind: 'LIST',
          items: finished.map(
            ({ itemName, project, task, finishedAt }) =>
              `${day(finishedAt)}: ${task} (${itemName}, ${project})`,
          ),
        },
    { kind: 'HEADING', level: 2, text: 'Readings before and after' },
    pairs.length === 0
      ? { kind: 'WORDS', text: 'Nothing was measured.' }
      : {
          kind: 'TABLE',
          columns: [
            { name: 'Set' },
            { name: 'Of' },
            { name: 'Quantity' },
            { name: 'Before' },
            { name: 'After' },
          ],
          rows: pairs.map(({ before, after, verdicts }) => [
            after.inventoryNumber,
            after.subject,
            `${after.quantity}, ${after.tier === 'TESTER' ? 'on a tester' : 'in circuit'}`,
            shownReading(before, verdicts[0], day),
            before.id === after.id ? 'measured once' : shownReading(after, verdicts[1], day),
          ]),
        },
    { kind: 'HEADING', level: 2, text: 'Parts' },
    parts.length === 0
      ? { kind: 'WORDS', text: 'No part was fitted or removed.' }
      : {
          kind: 'LIST',
          items: parts.map(
            ({ at, part, event, designator, inventoryNumber }) =>
              `${day(at)}: ${part} ${event === 'FITTED' ? 'fitted as' : 'removed from'} ${designator} of ${inventoryNumber}`,
          ),
        },
    { kind: 'HEADING', level: 2, text: 'Photographs' },
    ...photographs,
    { kind: 'HEADING', level: 2, text: 'What is next' },
    ...(await nextBlocks(context, next)),
    {
      kind: 'WORDS',
      text: 'A notebook, not a licence: whatever is said here of sets and hazards, local codes, the licence held and qualified practice come first.',
    },
  ];
  return format === 'HTML' ? htmlOf(title, blocks) : markdownOf(blocks);
}

function hoursBlocks(sessions: readonly ReportedSession[]): ReportBlock[] {
  if (sessions.length === 0) return [{ kind: 'WORDS', text: 'No session was recorded.' }];
  const sums = new Map<string, { item: string; task: string; seconds: number }>();
  let total = 0;
  for (const { inventoryNumber, task, countedSeconds } of sessions) {
    const shownTask = task ?? 'the set as a whole';
    const key = JSON.stringify([inventoryNumber, shownTask]);
    const sum = sums.get(key) ?? { item: inventoryNumber, task: shownTask, seconds: 0 };
    sums.set(key, { ...sum, seconds: sum.seconds + countedSeconds });
    total += countedSeconds;
  }
  const rows = [...sums.values()].sort((left, right) => right.seconds - left.seconds);
  return [
    {
      kind: 'WORDS',
      text: `${hours(total)} h in ${sessions.length} sessions begun in these days, net of breaks, each moment of a person once.`,
    },
    {
      kind: 'TABLE',
      columns: [{ name: 'Set' }, { name: 'Task' }, { name: 'Hours', isNumber: true }],
      rows: rows.map(({ item, task, seconds }) => [item, task, hours(seconds)]),
    },
  ];
}

const hours = (seconds: number): string => (seconds / 3600).toFixed(2);

const verdictShown: Record<string, string> = {
  WITHIN_LIMITS: 'within limits',
  BELOW_LIMIT: 'below the limit',
  ABOVE_LIMIT: 'above the limit',
};

function shownReading(
  { value, unit, takenAt }: ReportedReading,
  verdict: string,
  day: (instant: string) => string,
): string {
  const word = verdictShown[verdict];
  const said = word === undefined ? '' : `, ${word}`;
  return `${value} ${unit}${said} (${day(takenAt)})`;
}
