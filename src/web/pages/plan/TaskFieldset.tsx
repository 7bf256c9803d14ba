import type { ShownProblem } from '../../api/useSend.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { Ticks } from '../../parts/Ticks.js';
import type { EarningRuleKind, HazardKind } from '../../gql/graphql.js';
import { useTexts } from '../../texts/textsContext.js';
import { Fold } from './Fold.js';
import { StepRows } from './StepRows.js';
import { hazardsOf, hourFields, type TaskFieldName } from './taskFields.js';
import styles from './PlanPage.module.css';

const optionsOf = <Value extends string>(words: Readonly<Record<Value, string>>) =>
  (Object.entries(words) as [Value, string][]).map(([value, said]) => ({ value, words: said }));

const noneDone: ReadonlySet<string> = new Set();

/** What a task is: its name and sort, three figures of hours, when it counts, what can hurt. */
export function TaskFieldset({
  valueOf,
  type,
  problems,
  path,
  doneSteps = noneDone,
}: {
  valueOf: (name: TaskFieldName) => string;
  type: (name: TaskFieldName, value: string) => void;
  problems: readonly ShownProblem[];
  /** Where the API finds the task in what is sent. */
  path: readonly string[];
  doneSteps?: ReadonlySet<string>;
}) {
  const { plan, words } = useTexts();
  const bound = (name: TaskFieldName) => ({
    value: valueOf(name),
    onChange: (event: { target: { value: string } }) => {
      type(name, event.target.value);
    },
  });
  const select = <Value extends string>(
    name: 'kind' | 'rule',
    said: Readonly<Record<Value, string>>,
  ) => (
    <Field label={plan.taskFields[name]}>
      <select {...bound(name)}>
        {optionsOf(said).map((option) => (
          <option key={option.value} value={option.value}>
            {option.words}
          </option>
        ))}
      </select>
    </Field>
  );
  const hazards = hazardsOf(valueOf('hazardKinds'));
  return (
    <>
      <div>
        <Field label={plan.taskFields.title}>
          <input {...bound('title')} />
        </Field>
        <ProblemsAt problems={problems} path={[...path, 'title']} />
      </div>
      <div className={styles['fields']}>
        {hourFields.map((name) => (
          <div key={name}>
            <Field label={plan.taskFields[name]}>
              <input inputMode="decimal" {...bound(name)} />
            </Field>
            <ProblemsAt problems={problems} path={[...path, 'estimate', name]} />
          </div>
        ))}
        {select('kind', words.taskKind)}
      </div>
      {select<EarningRuleKind>('rule', plan.rule)}
      {valueOf('rule') === 'WEIGHTED_STEPS' && (
        <StepRows
          text={valueOf('steps')}
          doneIds={doneSteps}
          problems={problems}
          path={[...path, 'steps']}
          onChange={(text) => {
            type('steps', text);
          }}
        />
      )}
      <div>
        <Field label={plan.taskFields.note}>
          <textarea rows={2} {...bound('note')} />
        </Field>
        <ProblemsAt problems={problems} path={[...path, 'note']} />
      </div>
      <Fold
        isSmall
        title={[plan.taskFields.hazardKinds, ...hazards.map((kind) => words.hazard[kind])].join(
          ' · ',
        )}
      >
        <Ticks<HazardKind>
          legend={plan.taskFields.hazardKinds}
          isLegendHeardOnly
          options={optionsOf(words.hazard)}
          values={hazards}
          onChange={(kinds) => {
            type('hazardKinds', [...kinds].sort().join(' '));
          }}
        />
      </Fold>
    </>
  );
}

/** Where the problems of these fields are shown. */
export const taskPaths = (path: readonly string[]): string[][] => [
  [...path, 'title'],
  ...hourFields.map((name) => [...path, 'estimate', name]),
  [...path, 'steps'],
  [...path, 'note'],
];
