import type { OfferedTemplateFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './TemplateTasks.module.css';

/** What a list would add: each task with its hours and what can hurt, to be left out or not. */
export function TemplateTasks({
  tasks,
  leftOut,
  onChange,
}: {
  tasks: OfferedTemplateFragment['tasks'];
  /** Positions of tasks that are not wanted. */
  leftOut: readonly number[];
  onChange: (leftOut: number[]) => void;
}) {
  const { plan, words } = useTexts();
  const formats = useFormats();
  return (
    <fieldset className={styles['tasks']}>
      <legend>{plan.templateHelp}</legend>
      {tasks.some(({ history }) => history) && <p>{plan.historyHelp}</p>}
      {tasks.map((task) => {
        const { position, title, kind, history, hazardKinds } = task;
        const about = [
          words.taskKind[kind],
          `${formats.number(task.optimisticHours)}–${formats.number(task.likelyHours)}–${formats.hours(task.pessimisticHours)}`,
          history && plan.tookBefore(formats.hours(history.medianHours), history.tasks),
          hazardKinds.length > 0 &&
            `${plan.canHurt}: ${hazardKinds.map((hazard) => words.hazard[hazard]).join(', ')}`,
        ].filter(Boolean);
        return (
          <label key={position}>
            <input
              type="checkbox"
              checked={!leftOut.includes(position)}
              onChange={({ target }) => {
                onChange(
                  target.checked
                    ? leftOut.filter((other) => other !== position)
                    : [...leftOut, position],
                );
              }}
            />
            <span>
              <strong>{title}</strong>
              <span className={styles['about']}>{about.join(' · ')}</span>
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}
