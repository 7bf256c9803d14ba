import { useState } from 'react';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import { SetPartsNeededDocument, type PlannedTaskFragment } from '../../gql/graphql.js';
import { RecordForm } from '../../parts/RecordForm.js';
import { useTexts } from '../../texts/textsContext.js';
import { FindPart } from './FindPart.js';
import { keptParts, partsOf, partsText, readParts } from './neededParts.js';
import { PartRows } from './PartRows.js';
import { useReadAndSend } from './useReadAndSend.js';
import styles from './PlanPage.module.css';

/** Says which parts a task cannot be done without, whether there are any or not. */
export function TaskParts({
  task,
  fetchAgain,
}: {
  task: PlannedTaskFragment;
  fetchAgain: () => void;
}) {
  const { bench, plan } = useTexts();
  const fields = useFieldDraft(`plan.parts.${task.id}`, { parts: keptParts(task) }, task.version);
  const { send, problems, isSending } = useReadAndSend(
    SetPartsNeededDocument,
    (data) => data.setPartsNeeded,
  );
  const [isDone, setIsDone] = useState(false);
  const { version } = fields;
  const text = fields.valueOf('parts');
  const parts = partsOf(text);
  const type = (next: string) => {
    setIsDone(false);
    fields.type('parts', next);
  };
  const keep = async () => {
    const read = readParts(text, plan.numberUnread);
    const asked = 'unread' in read ? read : { input: { id: task.id, version, parts: read.input } };
    if (await send(asked)) {
      fields.clear();
      setIsDone(true);
    }
    fetchAgain();
  };
  return (
    <RecordForm
      className={styles['form']}
      fields={fields}
      nameOf={() => plan.parts}
      writtenOf={(_name, value) =>
        partsOf(value)
          .map(({ name, quantity }) => `${quantity} × ${name}`)
          .join('\n')
      }
      problems={problems}
      shown={parts.map((_part, index) => ['parts', String(index)])}
      isSending={isSending}
      label={plan.keepParts}
      outcome={isDone && bench.kept}
      keep={keep}
    >
      <h4>{plan.parts}</h4>
      <PartRows
        parts={parts}
        problems={problems}
        onChange={(next) => {
          type(partsText(next));
        }}
      />
      <FindPart
        known={parts.map(({ id }) => id)}
        onFound={(part) => {
          type(partsText([...parts, { ...part, quantity: '1' }]));
        }}
      />
    </RecordForm>
  );
}
