import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import {
  DropTaskDocument,
  ReopenTaskDocument,
  type PlannedTaskFragment,
} from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { isSettled } from './taskChoice.js';
import styles from './PlanPage.module.css';

const empty = { note: '' };

/** A task that will not be done is dropped; one that is done or dropped is opened after all. */
export function TaskStanding({
  task,
  onKept,
}: {
  task: PlannedTaskFragment;
  onKept: (said: string) => void;
}) {
  const { plan } = useTexts();
  const { draft, change, clear } = useDraft(`plan.drop.${task.id}`, empty);
  const dropping = useSend(DropTaskDocument, (data) => data.dropTask);
  const reopening = useSend(ReopenTaskDocument, (data) => data.reopenTask);
  const isClosed = isSettled(task);
  const move = async () => {
    const { send } = isClosed ? reopening : dropping;
    const note = draft.note.trim() || null;
    if (!(await send({ input: { id: task.id, note } }))) return;
    clear();
    onKept(isClosed ? plan.isReopened(task.title) : plan.isDropped(task.title));
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void move();
      }}
    >
      {!isClosed && <p>{plan.dropHelp}</p>}
      <Field label={plan.remark}>
        <input
          value={draft.note}
          onChange={({ target }) => {
            change({ note: target.value });
          }}
        />
      </Field>
      <ProblemsElsewhere problems={[...dropping.problems, ...reopening.problems]} shown={[]} />
      <Button type="submit" disabled={dropping.isSending || reopening.isSending}>
        {isClosed ? plan.reopen : plan.drop}
      </Button>
    </form>
  );
}
