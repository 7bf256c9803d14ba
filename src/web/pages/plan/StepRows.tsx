import type { ShownProblem } from '../../api/useSend.js';
import { Button } from '../../parts/Button.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { stepsOf, stepsText, type TypedStep } from './taskSteps.js';
import styles from './StepRows.module.css';

/** The weighted steps of a task, in order; one that is done cannot be taken out. */
export function StepRows({
  text,
  doneIds,
  problems,
  path,
  onChange,
}: {
  text: string;
  doneIds: ReadonlySet<string>;
  problems: readonly ShownProblem[];
  path: readonly string[];
  onChange: (text: string) => void;
}) {
  const { plan } = useTexts();
  const steps = stepsOf(text);
  const put = (place: number, changes: Partial<TypedStep>) => {
    onChange(stepsText(steps.map((step, at) => (at === place ? { ...step, ...changes } : step))));
  };
  return (
    <fieldset className={styles['steps']}>
      <legend>{plan.stepsAndWeights}</legend>
      {steps.map(({ id, title, weight }, place) => (
        <div key={place} className={styles['row']}>
          <input
            aria-label={plan.step(place + 1)}
            value={title}
            onChange={({ target }) => {
              put(place, { title: target.value });
            }}
          />
          <input
            aria-label={plan.weight(place + 1)}
            inputMode="numeric"
            value={weight}
            onChange={({ target }) => {
              put(place, { weight: target.value });
            }}
          />
          {id !== null && doneIds.has(id) ? (
            <span className={styles['done']}>{plan.stepDone}</span>
          ) : (
            <Button
              weight="quiet"
              aria-label={plan.takeOutStep(place + 1)}
              onClick={() => {
                onChange(stepsText(steps.filter((_step, at) => at !== place)));
              }}
            >
              <span aria-hidden="true">×</span>
            </Button>
          )}
          <div className={styles['wrong']}>
            <ProblemsAt problems={problems} path={[...path, String(place)]} />
          </div>
        </div>
      ))}
      <ProblemsAt
        problems={problems.filter((each) => each.path.length === path.length)}
        path={path}
      />
      <Button
        onClick={() => {
          onChange(stepsText([...steps, { id: null, title: '', weight: '1' }]));
        }}
      >
        {plan.addStep}
      </Button>
    </fieldset>
  );
}
