import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import type { StepPlan } from './stepDraft.js';
import styles from './BringUpPage.module.css';

/** What a step asks to be done: what can hurt first, then the work in big type, then its source. */
export function StepTold({ plan }: { plan: StepPlan }) {
  const { bringUp, set } = useTexts();
  return (
    <>
      <p className={styles['marks']}>
        <strong>{plan.appliesPower ? bringUp.appliesPower : bringUp.noPower}</strong>
        {plan.isGate && ` · ${bringUp.isGate}`}
      </p>
      {plan.cautions.length > 0 && (
        <div className={styles['stop']} role="note" aria-label={bringUp.cautions}>
          <ul>
            {plan.cautions.map((caution) => (
              <li key={caution} {...fromApi}>
                {caution}
              </li>
            ))}
          </ul>
        </div>
      )}
      <ol className={styles['instructions']}>
        {plan.instructions.map((instruction) => (
          <li key={instruction} {...fromApi}>
            {instruction}
          </li>
        ))}
      </ol>
      <p className={styles['soft']}>
        {set.source}: <span {...fromApi}>{plan.source}</span>
      </p>
    </>
  );
}
