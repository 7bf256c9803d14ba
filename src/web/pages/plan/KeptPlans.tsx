import { useState } from 'react';
import { useDraft } from '../../drafts/useDraft.js';
import {
  KeepBaselineDocument,
  type KeepBaselineInput,
  type PlannedProjectFragment,
} from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { isOpen } from '../set/isOpen.js';
import { readHours } from './readHours.js';
import { useReadAndSend, type Read } from './useReadAndSend.js';
import styles from './PlanPage.module.css';

const empty = { note: '', hoursPerWeek: '', startsOn: '' };
const names = ['note', 'hoursPerWeek', 'startsOn'] as const;

/** Plans as they were on a day, to compare with; and the present one kept. */
export function KeptPlans({
  project,
  fetchAgain,
}: {
  project: PlannedProjectFragment;
  fetchAgain: () => void;
}) {
  const { bench, plan } = useTexts();
  const formats = useFormats();
  const { draft, change, clear } = useDraft(`plan.baseline.${project.id}`, empty);
  const { send, problems, isSending } = useReadAndSend(
    KeepBaselineDocument,
    (data) => data.keepBaseline,
  );
  const [isDone, setIsDone] = useState(false);
  const asked = (): Read<KeepBaselineInput> => {
    const { note, hoursPerWeek, startsOn } = draft;
    const read = hoursPerWeek.trim() ? readHours(hoursPerWeek, ['hoursPerWeek'], plan) : null;
    if (read && 'unread' in read) return { unread: [read.unread] };
    const said = { note: note.trim() || null, ...(startsOn && { startsOn }) };
    return { input: { projectId: project.id, ...said, ...(read && { hoursPerWeek: read.hours }) } };
  };
  const keep = async () => {
    if (!(await send(asked()))) return;
    clear();
    setIsDone(true);
    fetchAgain();
  };
  return (
    <>
      {project.baselines.length === 0 && <p>{plan.noKeptPlan}</p>}
      <ul>
        {project.baselines.map(({ id, keptAt, startsOn, hoursPerWeek, note }) => (
          <li key={id}>
            {plan.keptPlan(
              formats.day(keptAt),
              formats.localDay(startsOn),
              formats.hours(hoursPerWeek),
            )}
            {note && ` – ${note}`}
          </li>
        ))}
      </ul>
      {isOpen(project.status) && (
        <form
          className={styles['form']}
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          {names.map((name) => (
            <div key={name}>
              <Field label={plan.baselineFields[name]}>
                <input
                  type={name === 'startsOn' ? 'date' : 'text'}
                  inputMode={name === 'hoursPerWeek' ? 'decimal' : undefined}
                  value={draft[name]}
                  onChange={({ target }) => {
                    setIsDone(false);
                    change({ [name]: target.value });
                  }}
                />
              </Field>
              <ProblemsAt problems={problems} path={[name]} />
            </div>
          ))}
          <ProblemsElsewhere problems={problems} shown={names.map((name) => [name])} />
          <Button type="submit" disabled={isSending}>
            {plan.keepPlan}
          </Button>
          <p role="status" className={styles['kept']}>
            {isDone && bench.kept}
          </p>
        </form>
      )}
    </>
  );
}
