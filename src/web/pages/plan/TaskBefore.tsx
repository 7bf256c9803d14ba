import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import { SetPredecessorsDocument, type PlannedTaskFragment } from '../../gql/graphql.js';
import { RecordForm } from '../../parts/RecordForm.js';
import { useTexts } from '../../texts/textsContext.js';
import { BeforeChoice } from './BeforeChoice.js';
import styles from './PlanPage.module.css';

const idsOf = (text: string): string[] => (text === '' ? [] : text.split(' '));

/** Says what a task waits for; tasks that would wait for one another are refused by their names. */
export function TaskBefore({
  task,
  tasks,
  fetchAgain,
}: {
  task: PlannedTaskFragment;
  tasks: readonly PlannedTaskFragment[];
  fetchAgain: () => void;
}) {
  const { bench, plan } = useTexts();
  const before = [...task.predecessors.map(({ id }) => String(id))].sort().join(' ');
  const fields = useFieldDraft(`plan.before.${task.id}`, { before }, task.version);
  const { send, problems, isSending, forget } = useSend(
    SetPredecessorsDocument,
    (data) => data.setPredecessors,
  );
  const [isDone, setIsDone] = useState(false);
  const { version } = fields;
  const ids = idsOf(fields.valueOf('before'));
  const keep = async () => {
    if (await send({ input: { id: task.id, version, predecessorIds: ids } })) {
      fields.clear();
      setIsDone(true);
    }
    fetchAgain();
  };
  return (
    <RecordForm
      className={styles['form']}
      fields={fields}
      nameOf={() => plan.before}
      writtenOf={(_name, value) =>
        idsOf(value)
          .map((id) => tasks.find((other) => other.id === id)?.title ?? '–')
          .join('\n')
      }
      problems={problems}
      shown={[]}
      isSending={isSending}
      label={plan.keepBefore}
      outcome={isDone && bench.kept}
      keep={keep}
    >
      <h4>{plan.before}</h4>
      <BeforeChoice
        tasks={tasks.filter(({ id }) => id !== task.id)}
        ids={ids}
        onChange={(next) => {
          setIsDone(false);
          forget();
          fields.type('before', [...next].sort().join(' '));
        }}
      />
    </RecordForm>
  );
}
