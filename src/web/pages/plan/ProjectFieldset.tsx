import type { ShownProblem } from '../../api/useSend.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { targets, type ProjectFieldName } from './projectFields.js';
import styles from './PlanPage.module.css';

/** What a restoration aims at: its name, how far, ceilings, and what was decided. */
export function ProjectFieldset({
  valueOf,
  type,
  problems,
}: {
  valueOf: (name: ProjectFieldName) => string;
  type: (name: ProjectFieldName, value: string) => void;
  problems: readonly ShownProblem[];
}) {
  const { plan, words } = useTexts();
  const bound = (name: ProjectFieldName) => ({
    value: valueOf(name),
    onChange: (event: { target: { value: string } }) => {
      type(name, event.target.value);
    },
  });
  return (
    <>
      <div>
        <Field label={plan.fields.title}>
          <input {...bound('title')} />
        </Field>
        <ProblemsAt problems={problems} path={['title']} />
      </div>
      <div className={styles['fields']}>
        <Field label={plan.fields.targetStandard}>
          <select {...bound('targetStandard')}>
            {targets.map((target) => (
              <option key={target} value={target}>
                {words.standard[target]}
              </option>
            ))}
          </select>
        </Field>
        <div>
          <Field label={plan.fields.startedOn}>
            <input type="date" {...bound('startedOn')} />
          </Field>
          <ProblemsAt problems={problems} path={['startedOn']} />
        </div>
        <div>
          <Field label={plan.fields.ceiling}>
            <input inputMode="decimal" {...bound('ceiling')} />
          </Field>
          <ProblemsAt problems={problems} path={['ceiling']} />
        </div>
        <Field label={plan.fields.currency}>
          <input spellCheck={false} maxLength={3} {...bound('currency')} />
        </Field>
        <div>
          <Field label={plan.fields.ceilingHours}>
            <input inputMode="decimal" {...bound('ceilingHours')} />
          </Field>
          <ProblemsAt problems={problems} path={['ceilingHours']} />
        </div>
      </div>
      <div>
        <Field label={plan.fields.decision}>
          <textarea rows={2} {...bound('decision')} />
        </Field>
        <ProblemsAt problems={problems} path={['decision']} />
      </div>
    </>
  );
}

/** Where the problems of these fields are shown. */
export const projectPaths = [
  ['title'],
  ['ceiling'],
  ['ceilingHours'],
  ['startedOn'],
  ['decision'],
] as const;
