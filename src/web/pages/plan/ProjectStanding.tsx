import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import {
  SetProjectStatusDocument,
  type PlannedProjectFragment,
  type ProjectStatus,
} from '../../gql/graphql.js';
import { Choice } from '../../parts/Choice.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { RecordForm } from '../../parts/RecordForm.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './PlanPage.module.css';

const statuses: readonly ProjectStatus[] = [
  'PLANNED',
  'ACTIVE',
  'DEFERRED',
  'COMPLETED',
  'ABANDONED',
];
const isStatus = (value: string): value is ProjectStatus =>
  (statuses as readonly string[]).includes(value);

/** Where a restoration stands, with the words for it; giving up is said twice. */
export function ProjectStanding({
  project,
  fetchAgain,
}: {
  project: PlannedProjectFragment;
  fetchAgain: () => void;
}) {
  const { plan, words } = useTexts();
  const now = { status: project.status as string, reason: '' };
  const fields = useFieldDraft(`plan.standing.${project.id}`, now, project.version);
  const { send, problems, isSending } = useSend(
    SetProjectStatusDocument,
    (data) => data.setProjectStatus,
  );
  const [isSure, setIsSure] = useState(false);
  const [isDone, setIsDone] = useState(false);
  const { version } = fields;
  const status = fields.valueOf('status');
  const reason = fields.valueOf('reason').trim();
  const givesUp = status === 'ABANDONED' && project.status !== 'ABANDONED';
  const type = (name: 'status' | 'reason', value: string) => {
    setIsDone(false);
    setIsSure(false);
    fields.type(name, value);
  };
  const set = async () => {
    if (!isStatus(status)) return;
    const said = reason === '' ? {} : { decision: reason };
    if (await send({ input: { id: project.id, version, status, ...said } })) {
      fields.clear();
      setIsSure(false);
      setIsDone(true);
    }
    fetchAgain();
  };
  return (
    <RecordForm
      className={styles['form']}
      fields={fields}
      nameOf={() => plan.standing}
      writtenOf={(_name, value) => (isStatus(value) ? words.projectStatus[value] : value)}
      problems={problems}
      shown={[['status'], ['decision']]}
      isSending={isSending}
      isComplete={(!givesUp || isSure) && (status !== project.status || reason !== '')}
      label={plan.setStanding}
      outcome={isDone && plan.isSet}
      keep={set}
    >
      <Choice
        legend={plan.standing}
        isLegendHeardOnly
        name={`standing ${project.id}`}
        value={isStatus(status) ? status : null}
        options={statuses.map((value) => ({ value, words: words.projectStatus[value] }))}
        onChange={(value) => {
          type('status', value);
        }}
      />
      <ProblemsAt problems={problems} path={['status']} />
      <Field label={plan.reason}>
        <textarea
          rows={2}
          value={fields.valueOf('reason')}
          onChange={({ target }) => {
            type('reason', target.value);
          }}
        />
      </Field>
      <ProblemsAt problems={problems} path={['decision']} />
      {givesUp && (
        <div className={styles['warned']}>
          <p>{plan.giveUpHelp}</p>
          <label className={styles['tick']}>
            <input
              type="checkbox"
              checked={isSure}
              onChange={({ target }) => {
                setIsSure(target.checked);
              }}
            />
            {plan.giveUpSure(project.title)}
          </label>
        </div>
      )}
    </RecordForm>
  );
}
