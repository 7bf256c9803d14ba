import { useState } from 'react';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import {
  ChangeTaskDocument,
  type EarningRuleKind,
  type PlannedTaskFragment,
  type TaskKind,
} from '../../gql/graphql.js';
import { RecordForm } from '../../parts/RecordForm.js';
import { useTexts } from '../../texts/textsContext.js';
import { hazardsOf, readTask, taskFields, type TaskFieldName } from './taskFields.js';
import { TaskFieldset, taskPaths } from './TaskFieldset.js';
import { stepsOf } from './taskSteps.js';
import { useReadAndSend } from './useReadAndSend.js';
import styles from './PlanPage.module.css';

/** Changes what a task is and what it may take; what another wrote meanwhile is settled first. */
export function ChangeTask({
  task,
  fetchAgain,
}: {
  task: PlannedTaskFragment;
  fetchAgain: () => void;
}) {
  const texts = useTexts();
  const { bench, plan, words } = texts;
  const now = taskFields(task);
  const fields = useFieldDraft(`plan.change.${task.id}`, now, task.version);
  const { send, problems, isSending } = useReadAndSend(
    ChangeTaskDocument,
    (data) => data.changeTask,
  );
  const [isDone, setIsDone] = useState(false);
  const { changes, version } = fields;
  const keep = async () => {
    const read = readTask(changes, { ...now, ...changes }, [], texts);
    const known = { id: task.id, version };
    if (await send('unread' in read ? read : { input: { ...read.input, ...known } })) {
      fields.clear();
      setIsDone(true);
    }
    fetchAgain();
  };
  const written = (name: TaskFieldName, value: string): string => {
    if (name === 'kind') return words.taskKind[value as TaskKind];
    if (name === 'rule') return plan.rule[value as EarningRuleKind];
    if (name === 'hazardKinds') {
      return hazardsOf(value)
        .map((kind) => words.hazard[kind])
        .join(', ');
    }
    if (name !== 'steps') return value;
    return stepsOf(value)
      .map(({ title, weight }) => `${title} (${weight})`)
      .join('\n');
  };
  return (
    <RecordForm
      className={styles['form']}
      fields={fields}
      nameOf={(name) => plan.taskFields[name]}
      writtenOf={written}
      problems={problems}
      shown={taskPaths([])}
      isSending={isSending}
      outcome={isDone && bench.kept}
      keep={keep}
    >
      <TaskFieldset
        valueOf={fields.valueOf}
        type={(name, value) => {
          setIsDone(false);
          fields.type(name, value);
        }}
        problems={problems}
        path={[]}
        doneSteps={new Set(task.steps.filter(({ doneAt }) => doneAt).map(({ id }) => id))}
      />
    </RecordForm>
  );
}
