import { useParams, useSearch } from '@tanstack/react-router';
import { useRef } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { BenchSetDocument, type BenchSetQuery } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { SetChecks } from '../set/checks/SetChecks.js';
import { SetFindings } from '../set/findings/SetFindings.js';
import { SetHazards } from '../set/SetHazards.js';
import { Timers } from '../tonight/Timers.js';
import { BenchEntry } from './BenchEntry.js';
import { BenchHead } from './BenchHead.js';
import { BenchTask } from './BenchTask.js';
import { BenchTimer } from './BenchTimer.js';
import { openTasks } from './openTasks.js';
import styles from './BenchPage.module.css';

export type BenchItem = NonNullable<BenchSetQuery['item']>;
export type BenchTimerNow = BenchSetQuery['runningTimers'][number];

/** One set on the bench: hazards first, then the task in hand, then what is written down. */
export function BenchPage() {
  const { number } = useParams({ from: '/bench/$number' });
  const { task: asked } = useSearch({ from: '/bench/$number' });
  const { bench, frame } = useTexts();
  useTitle(bench.titleOf(number));
  const around = useRef<HTMLElement>(null);
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: BenchSetDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const { item } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={bench.notFound} isWholePage />;
  const running = data.runningTimers.find((timer) => timer.item.id === item.id) ?? null;
  const tasks = openTasks(item);
  const wanted = asked ?? running?.task?.id;
  const task = tasks.find(({ id }) => id === wanted) ?? null;
  return (
    <article className={styles['bench']} ref={around}>
      <BenchHead item={item} around={around} />
      <div className={styles['clock']}>
        <Timers />
        <BenchTimer item={item} task={task} isRunning={running !== null} />
      </div>
      <div className={styles['first']}>
        <SetHazards item={item} />
        <BenchTask tasks={tasks} task={task} number={number} />
        <SetFindings number={number} />
        <SetChecks number={number} hazards={item.hazards} />
      </div>
      <BenchEntry key={item.id} item={item} running={running} />
    </article>
  );
}
