import { useFormats } from '../../locale/useFormats.js';
import { useTexts } from '../../texts/textsContext.js';
import { VerdictWords } from '../bench/VerdictWords.js';
import type { RunStep, StepPlan } from './stepDraft.js';
import { writtenReading } from './writtenReading.js';
import styles from './BringUpPage.module.css';

/** What was written down of a step, now or before it was put right. */
export function StepSaid({
  plan,
  holds,
  readings,
  verdicts = [],
  note,
}: {
  plan: StepPlan;
  holds: readonly boolean[];
  readings: readonly { quantity: string; value: string; unit: string; note?: string | null }[];
  verdicts?: RunStep['verdicts'];
  note: string | null;
}) {
  const { bringUp } = useTexts();
  const formats = useFormats();
  return (
    <ul className={styles['told']}>
      {plan.statements.map((statement, index) => (
        <li key={statement}>
          <strong>{holds[index] ? bringUp.holds : bringUp.holdsNot}:</strong> {statement}
        </li>
      ))}
      {readings.map((reading, index) => {
        const verdict = verdicts[index];
        return (
          <li key={index}>
            {writtenReading(reading, formats)}
            {reading.note && ` (${reading.note})`}
            {verdict && (
              <>
                {' '}
                – <VerdictWords word={verdict.word} />
              </>
            )}
          </li>
        );
      })}
      {note && <li>{note}</li>}
    </ul>
  );
}
