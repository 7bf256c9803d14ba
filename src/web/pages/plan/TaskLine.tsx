import { Link } from '@tanstack/react-router';
import type { PlannedTaskFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { classNames } from '../../parts/classNames.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { ChangeTask } from './ChangeTask.js';
import { Fold } from './Fold.js';
import { TaskBefore } from './TaskBefore.js';
import { TaskParts } from './TaskParts.js';
import { isSettled } from './taskChoice.js';
import { TaskStanding } from './TaskStanding.js';
import styles from './TaskLine.module.css';

interface TaskLineProps {
  task: PlannedTaskFragment;
  tasks: readonly PlannedTaskFragment[];
  number: string;
  isClosed: boolean;
  fetchAgain: () => void;
  onKept: (said: string) => void;
}

/** One task: whether it can be begun, what it may take, what can hurt; and, unfolded, its forms. */
export function TaskLine({ task, tasks, number, isClosed, fetchAgain, onKept }: TaskLineProps) {
  const { plan, set, words } = useTexts();
  const formats = useFormats();
  const { optimisticHours, likelyHours, pessimisticHours } = task.estimate;
  const settled = isSettled(task);
  const doneSteps = task.steps.filter(({ doneAt }) => doneAt !== null).length;
  const about = [
    words.taskKind[task.kind],
    `${formats.number(optimisticHours)}–${formats.number(likelyHours)}–${formats.hours(pessimisticHours)}`,
    task.steps.length > 0 && plan.stepsDone(doneSteps, task.steps.length),
    ...(settled
      ? []
      : task.partsNeeded.map(({ quantity, partType, onShelf }) =>
          plan.partNeeded(quantity, partType.designation, onShelf),
        )),
  ].filter(Boolean);
  return (
    <li className={classNames(styles['task'], settled && styles['settled'])}>
      <div className={styles['head']}>
        <h4>{task.title}</h4>
        <Standing task={task} />
      </div>
      <p className={styles['about']}>{about.join(' · ')}</p>
      {task.note && <p className={styles['note']}>{task.note}</p>}
      {!settled && <Cautions task={task} />}
      <div className={styles['ways']} data-print="no">
        {!isClosed && (
          <Fold
            isSmall
            title={plan.changeIt}
            heard={plan.changeTask(task.title)}
            drafts={['change', 'before', 'parts', 'drop'].map((form) => `plan.${form}.${task.id}`)}
          >
            <div className={styles['forms']}>
              <ChangeTask task={task} fetchAgain={fetchAgain} />
              <div>
                <TaskBefore task={task} tasks={tasks} fetchAgain={fetchAgain} />
                <TaskParts task={task} fetchAgain={fetchAgain} />
                <TaskStanding task={task} onKept={onKept} />
              </div>
            </div>
          </Fold>
        )}
        {task.isReady && (
          <Link to="/bench/$number" params={{ number }} search={{ task: String(task.id) }}>
            {set.toBench}
            <span className="only-heard">: {task.title}</span>
          </Link>
        )}
      </div>
    </li>
  );
}

/** Whether it can be begun; what it waits for, if not. */
function Standing({ task }: { task: PlannedTaskFragment }) {
  const { plan, set, words } = useTexts();
  const waitsFor = task.predecessors.filter((before) => !isSettled(before));
  if (task.status === 'NOT_STARTED' && task.isReady) {
    return <p className={classNames(styles['standing'], styles['ready'])}>{set.doable}</p>;
  }
  const isWaiting = !isSettled(task) && waitsFor.length > 0;
  return (
    <p className={styles['standing']}>
      {[
        task.status !== 'NOT_STARTED' && words.taskStatus[task.status],
        isWaiting && plan.waitsFor(waitsFor.map(({ title }) => title)),
      ]
        .filter(Boolean)
        .join(', ')}
    </p>
  );
}

/** What can hurt: in full where work can begin, else its names, with the words folded away. */
function Cautions({ task }: { task: PlannedTaskFragment }) {
  const { plan, words } = useTexts();
  if (task.cautions.length === 0) return null;
  const kinds = task.hazardKinds.map((kind) => words.hazard[kind]).join(', ');
  return (
    <details className={styles['cautions']} open={task.isReady}>
      <summary>
        {plan.canHurt}: {kinds}
      </summary>
      <ul>
        {task.cautions.map((caution) => (
          <li key={caution} {...fromApi}>
            {caution}
          </li>
        ))}
      </ul>
    </details>
  );
}
