import { useState } from 'react';
import type { PlannedProjectFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Choice } from '../../parts/Choice.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { useTexts } from '../../texts/textsContext.js';
import { isOpen } from '../set/isOpen.js';
import { AddTask } from './AddTask.js';
import { Fold } from './Fold.js';
import { PutTemplateIn } from './PutTemplateIn.js';
import { isChosen, taskChoices, type TaskChoice } from './taskChoice.js';
import { TaskLine } from './TaskLine.js';
import { usePlannedTasks } from './usePlannedTasks.js';
import styles from './PlanPage.module.css';

/** Below so many tasks there is nothing to choose from. */
const fewTasks = 8;

/** What is to be done in a restoration, and the ways to add to it. */
export function TaskList({ project, number }: { project: PlannedProjectFragment; number: string }) {
  const { plan } = useTexts();
  const formats = useFormats();
  const id = String(project.id);
  const { rows: tasks, isHere, error, fetchAgain } = usePlannedTasks(id);
  const [choice, setChoice] = useState<TaskChoice>('ALL');
  const [said, setSaid] = useState('');
  if (error && !isHere) return <Failed error={error} retry={fetchAgain} />;
  if (!isHere) return <Loading />;
  const shown = tasks.filter((task) => isChosen(choice, task));
  const onKept = (words: string) => {
    setSaid(words);
    fetchAgain();
  };
  return (
    <section className={styles['tasks']}>
      <h3>{plan.tasks}</h3>
      {tasks.length === 0 && <p>{plan.noTasks}</p>}
      {isOpen(project.status) ? (
        <div className={styles['folds']} data-print="no">
          <Fold
            title={plan.addTask}
            drafts={[`plan.task.${id}`]}
            isOpenAtFirst={tasks.length === 0}
          >
            <AddTask projectId={id} tasks={tasks} onKept={onKept} />
          </Fold>
          <Fold title={plan.template} drafts={[`plan.template.${id}`]}>
            <PutTemplateIn projectId={id} onKept={onKept} />
          </Fold>
        </div>
      ) : (
        <p>{plan.closed}</p>
      )}
      <p role="status" className={styles['kept']}>
        {said}
      </p>
      {tasks.length > fewTasks && (
        <div data-print="no" className={styles['shown']}>
          <Choice
            legend={plan.show}
            name={`shown ${id}`}
            value={choice}
            options={taskChoices.map((value) => ({ value, words: plan.shown[value] }))}
            onChange={setChoice}
          />
          <p>
            {shown.length === 0
              ? plan.noneShown
              : plan.counted(formats.number(shown.length), formats.number(tasks.length))}
          </p>
        </div>
      )}
      <ol className={styles['list']}>
        {shown.map((task) => (
          <TaskLine
            key={task.id}
            task={task}
            tasks={tasks}
            number={number}
            isClosed={!isOpen(project.status)}
            fetchAgain={fetchAgain}
            onKept={onKept}
          />
        ))}
      </ol>
    </section>
  );
}
