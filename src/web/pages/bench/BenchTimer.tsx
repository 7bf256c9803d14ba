import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import {
  StartTimerDocument,
  type BenchTaskFragment,
  type ShownHazardFragment,
} from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem } from './BenchPage.js';
import styles from './BenchTimer.module.css';

/** Starts the time on this set; whoever starts it is shown what can hurt before anything else. */
export function BenchTimer({
  item,
  task,
  isRunning,
}: {
  item: BenchItem;
  task: BenchTaskFragment | null;
  isRunning: boolean;
}) {
  const { bench } = useTexts();
  const [warned, setWarned] = useState<readonly ShownHazardFragment[]>([]);
  const { send, problems, isSending } = useSend(StartTimerDocument, (data) => data.startTimer);
  const start = async () => {
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const on = task ? { taskId: task.id } : { itemId: item.id };
    const started = await send({ input: { ...on, zone } });
    if (started) setWarned(started.hazards);
  };
  return (
    <>
      {!isRunning && (
        <div className={styles['start']}>
          <Button weight="main" disabled={isSending} onClick={() => void start()}>
            {task ? bench.startOn(task.title) : bench.start}
          </Button>
          <ProblemsElsewhere problems={problems} shown={[]} />
        </div>
      )}
      {isRunning && warned.length > 0 && (
        <Warned
          hazards={warned}
          close={() => {
            setWarned([]);
          }}
        />
      )}
    </>
  );
}

function Warned({
  hazards,
  close,
}: {
  hazards: readonly ShownHazardFragment[];
  close: () => void;
}) {
  const { bench, words } = useTexts();
  return (
    <section className={styles['warned']} role="alert">
      <h2>{bench.beforeYouStart}</h2>
      <dl>
        {hazards.map(({ id, kind, cautions }) => (
          <div key={id}>
            <dt>{words.hazard[kind]}</dt>
            {cautions.map((caution) => (
              <dd key={caution} {...fromApi}>
                {caution}
              </dd>
            ))}
          </div>
        ))}
      </dl>
      <Button onClick={close}>{bench.understood}</Button>
    </section>
  );
}
