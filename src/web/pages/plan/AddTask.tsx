import { useDraft } from '../../drafts/useDraft.js';
import { AddTaskDocument, type PlannedTaskFragment } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { BeforeChoice } from './BeforeChoice.js';
import { newTask, readTask } from './taskFields.js';
import { TaskFieldset, taskPaths } from './TaskFieldset.js';
import { useReadAndSend, type Read } from './useReadAndSend.js';
import type { AddTaskInput } from '../../gql/graphql.js';
import styles from './PlanPage.module.css';

const path = ['task'];
const empty = { ...newTask, before: [] as string[] };

/** A further task, at the end of the list. */
export function AddTask({
  projectId,
  tasks,
  onKept,
}: {
  projectId: string;
  tasks: readonly PlannedTaskFragment[];
  onKept: (said: string) => void;
}) {
  const texts = useTexts();
  const { plan, frame } = texts;
  const { draft, change, clear, isKept } = useDraft(`plan.task.${projectId}`, empty);
  const { send, problems, isSending } = useReadAndSend(AddTaskDocument, (data) => data.addTask);
  const { before, ...fields } = draft;
  const asked = (): Read<AddTaskInput> => {
    const read = readTask(fields, fields, path, texts);
    if ('unread' in read) return read;
    const { estimate, title, kind, rule, ...rest } = read.input;
    if (!estimate || !title || !kind || !rule) return { unread: [] };
    const predecessorIds = before.filter((id) => tasks.some((task) => task.id === id));
    return {
      input: { projectId, task: { ...rest, estimate, title, kind, rule, predecessorIds } },
    };
  };
  const add = async () => {
    if (!(await send(asked()))) return;
    onKept(plan.isAdded(fields.title));
    // The next task is most often of the same sort.
    clear({ kind: fields.kind });
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <TaskFieldset
        valueOf={(name) => draft[name]}
        type={(name, value) => {
          change({ [name]: value });
        }}
        problems={problems}
        path={path}
      />
      {tasks.length > 0 && (
        <div>
          <h4>{plan.before}</h4>
          <BeforeChoice
            tasks={tasks}
            ids={before}
            onChange={(ids) => {
              change({ before: ids });
            }}
          />
          <ProblemsAt problems={problems} path={[...path, 'predecessorIds']} />
        </div>
      )}
      <ProblemsElsewhere
        problems={problems}
        shown={[...taskPaths(path), [...path, 'predecessorIds']]}
      />
      {!isKept && <p>{frame.draftNotKept}</p>}
      <Button type="submit" disabled={isSending}>
        {plan.addIt}
      </Button>
    </form>
  );
}
