import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import {
  FinishTaskDocument,
  MarkStepsDocument,
  type BenchTaskFragment,
} from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './BenchTask.module.css';

/** The task in hand: its cautions beside its steps, and the way to say that it is done. */
export function BenchTask({
  tasks,
  task,
  number,
}: {
  tasks: readonly BenchTaskFragment[];
  task: BenchTaskFragment | null;
  number: string;
}) {
  const { bench } = useTexts();
  const navigate = useNavigate();
  const [done, setDone] = useState<string | null>(null);
  return (
    <Sheet title={bench.task}>
      <Field label={bench.chooseTask}>
        <select
          value={task?.id ?? ''}
          onChange={(event) => {
            const id = event.target.value;
            void navigate({
              to: '/bench/$number',
              params: { number },
              search: id ? { task: id } : { task: 'none' },
              replace: true,
            });
          }}
        >
          <option value="">{bench.noTask}</option>
          {tasks.map(({ id, title, isReady }) => (
            <option key={id} value={id}>
              {title}
              {!isReady && ` (${bench.waits})`}
            </option>
          ))}
        </select>
      </Field>
      {task && (
        <TaskInHand
          key={task.id}
          task={task}
          onDone={() => {
            setDone(task.title);
          }}
        />
      )}
      <p role="status">{done !== null && bench.isDone(done)}</p>
    </Sheet>
  );
}

function TaskInHand({ task, onDone }: { task: BenchTaskFragment; onDone: () => void }) {
  const { bench } = useTexts();
  const marking = useSend(MarkStepsDocument, (data) => data.markSteps);
  const finishing = useSend(FinishTaskDocument, (data) => data.finishTask);
  const finish = async () => {
    if (await finishing.send({ input: { id: task.id } })) onDone();
  };
  return (
    <>
      {task.cautions.length > 0 && (
        <ul className={styles['cautions']}>
          {task.cautions.map((caution) => (
            <li key={caution} {...fromApi}>
              {caution}
            </li>
          ))}
        </ul>
      )}
      {task.note && <p>{task.note}</p>}
      {task.steps.length > 0 && (
        <fieldset className={styles['steps']}>
          <legend>{bench.steps}</legend>
          {task.steps.map(({ id, title, doneAt }) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={doneAt !== null}
                onChange={(event) => {
                  const steps = [{ stepId: id, isDone: event.target.checked }];
                  void marking.send({ input: { taskId: task.id, steps } });
                }}
              />
              {title}
            </label>
          ))}
        </fieldset>
      )}
      <ProblemsElsewhere problems={[...marking.problems, ...finishing.problems]} shown={[]} />
      <div>
        <Button disabled={finishing.isSending} onClick={() => void finish()}>
          {bench.done}
        </Button>
      </div>
    </>
  );
}
