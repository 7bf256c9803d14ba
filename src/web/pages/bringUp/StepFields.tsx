import type { ShownProblem } from '../../api/useSend.js';
import { Choice } from '../../parts/Choice.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { ReadingsAsked } from './ReadingsAsked.js';
import type { StepAnswers, StepPlan } from './stepDraft.js';
import styles from './BringUpPage.module.css';

export type ChangeAnswers = (changes: (now: StepAnswers) => Partial<StepAnswers>) => void;

/** What came of a step: whether each statement holds, each reading, and remarks. */
export function StepFields({
  name,
  plan,
  answers,
  problems,
  onChange,
}: {
  /** Sets the radio buttons of two forms on the page apart. */
  name: string;
  plan: StepPlan;
  answers: StepAnswers;
  problems: readonly ShownProblem[];
  onChange: ChangeAnswers;
}) {
  const { bringUp } = useTexts();
  const options = [
    { value: 'yes', words: bringUp.holds },
    { value: 'no', words: bringUp.holdsNot },
  ] as const;
  return (
    <>
      {plan.statements.map((statement, index) => {
        const held = answers.holds[index] ?? null;
        return (
          <div key={statement} className={styles['statement']}>
            <Choice
              legend={<span {...fromApi}>{statement}</span>}
              name={`${name}-${index}`}
              value={held === null ? null : held ? 'yes' : 'no'}
              options={options}
              onChange={(answer) => {
                onChange(({ holds }) => ({
                  holds: holds.map((each, own) => (own === index ? answer === 'yes' : each)),
                }));
              }}
            />
            <ProblemsAt problems={problems} path={['holds', String(index)]} />
          </div>
        );
      })}
      <ProblemsAt problems={problems.filter(({ path }) => path.length === 1)} path={['holds']} />
      <ReadingsAsked plan={plan} answers={answers} problems={problems} onChange={onChange} />
      <Field label={bringUp.note}>
        <textarea
          rows={2}
          value={answers.note}
          onChange={(event) => {
            const note = event.target.value;
            onChange(() => ({ note }));
          }}
        />
      </Field>
      <ProblemsAt problems={problems} path={['note']} />
    </>
  );
}
