import { useSend } from '../../api/useSend.js';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { useDraft } from '../../drafts/useDraft.js';
import { ApplyTaskTemplateDocument, OfferedTemplatesDocument } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Field } from '../../parts/Field.js';
import { Loading } from '../../parts/Loading.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { TemplateTasks } from './TemplateTasks.js';
import styles from './PlanPage.module.css';

const empty = { templateId: '', leftOut: [] as number[] };

/** A ready list of tasks: looked at first, then put in, without those that are left out. */
export function PutTemplateIn({
  projectId,
  onKept,
}: {
  projectId: string;
  onKept: (said: string) => void;
}) {
  const { plan } = useTexts();
  const { draft, change, clear } = useDraft(`plan.template.${projectId}`, empty);
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: OfferedTemplatesDocument,
    variables: {},
  });
  const { send, problems, isSending } = useSend(
    ApplyTaskTemplateDocument,
    (answer) => answer.applyTaskTemplate,
  );
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const template = data.taskTemplates.find(({ id }) => id === draft.templateId);
  const positions = (template?.tasks ?? [])
    .map(({ position }) => position)
    .filter((position) => !draft.leftOut.includes(position));
  const putIn = async () => {
    const kept = await send({ input: { projectId, templateId: draft.templateId, positions } });
    if (!kept) return;
    clear();
    onKept(plan.isPutIn(kept.tasks?.length ?? 0));
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void putIn();
      }}
    >
      <Field label={plan.chooseTemplate}>
        <select
          value={template ? draft.templateId : ''}
          onChange={({ target }) => {
            change({ templateId: target.value, leftOut: [] });
          }}
        >
          <option value="">{plan.noTemplate}</option>
          {data.taskTemplates.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </Field>
      {template && (
        <>
          {template.description && <p>{template.description}</p>}
          <TemplateTasks
            tasks={template.tasks}
            leftOut={draft.leftOut}
            onChange={(leftOut) => {
              change({ leftOut });
            }}
          />
        </>
      )}
      <ProblemsElsewhere problems={problems} shown={[]} />
      <Button type="submit" disabled={isSending || positions.length === 0}>
        {plan.putIn(positions.length)}
      </Button>
    </form>
  );
}
