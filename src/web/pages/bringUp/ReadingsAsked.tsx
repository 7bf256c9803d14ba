import type { ShownProblem } from '../../api/useSend.js';
import { useFormats } from '../../locale/useFormats.js';
import { writtenUnit } from '../../locale/writtenUnit.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { limitWords } from './limitWords.js';
import {
  noReading,
  placeOfReading,
  type StepAnswers,
  type StepPlan,
  type TypedReading,
} from './stepDraft.js';
import type { ChangeAnswers } from './StepFields.js';
import styles from './BringUpPage.module.css';

/** Each quantity that a step asks for, with its limits in words; once, or several times. */
export function ReadingsAsked({
  plan,
  answers,
  problems,
  onChange,
}: {
  plan: StepPlan;
  answers: StepAnswers;
  problems: readonly ShownProblem[];
  onChange: ChangeAnswers;
}) {
  const texts = useTexts();
  const { bringUp, bench, set } = texts;
  const formats = useFormats();
  const type = (index: number, typed: Partial<TypedReading>) => {
    onChange(({ readings }) => ({
      readings: readings.map((each, own) => (own === index ? { ...each, ...typed } : each)),
    }));
  };
  return (
    <>
      {plan.readings.map((asked) => {
        const { quantity, unit, source } = asked;
        return (
          <fieldset key={quantity} className={styles['reading']}>
            <legend>
              {quantity} <span>({limitWords(asked, texts, formats)})</span>
            </legend>
            <p className={styles['soft']}>
              {set.source}: <span {...fromApi}>{source}</span>
            </p>
            {answers.readings.map((reading, index) =>
              reading.quantity === quantity ? (
                <div key={index} className={styles['readingRow']}>
                  <Field label={bringUp.valueIn(writtenUnit(unit))}>
                    <input
                      className={styles['value']}
                      inputMode="decimal"
                      autoComplete="off"
                      value={reading.value}
                      onChange={(event) => {
                        type(index, { value: event.target.value });
                      }}
                    />
                  </Field>
                  <Field label={bringUp.where}>
                    <input
                      value={reading.note}
                      onChange={(event) => {
                        type(index, { note: event.target.value });
                      }}
                    />
                  </Field>
                  <Field label={bench.instrument}>
                    <input
                      value={reading.instrument}
                      onChange={(event) => {
                        type(index, { instrument: event.target.value });
                      }}
                    />
                  </Field>
                  <ProblemsAt
                    problems={problems}
                    path={['readings', String(placeOfReading(answers, index))]}
                  />
                </div>
              ) : null,
            )}
            <ProblemsAt problems={problems} path={['unread', quantity]} />
            <Button
              weight="quiet"
              onClick={() => {
                onChange(({ readings }) => ({ readings: [...readings, noReading(quantity)] }));
              }}
            >
              {bringUp.another(quantity)}
            </Button>
          </fieldset>
        );
      })}
      <ProblemsAt problems={problems.filter(({ path }) => path.length === 1)} path={['readings']} />
    </>
  );
}
