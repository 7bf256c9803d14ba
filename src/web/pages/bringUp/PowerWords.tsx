import type { ShownBringUpFragment } from '../../gql/graphql.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { ToClearing } from './ToClearing.js';
import styles from './BringUpPage.module.css';

/** What is recorded on applying power. None of the answers is a permission. */
export function PowerWords({
  power: { answer, reasons },
  number,
}: {
  power: ShownBringUpFragment['power'];
  number: string;
}) {
  const { bringUp } = useTexts();
  const isStop = answer === 'DO_NOT_CONNECT';
  return (
    <section className={isStop ? styles['stop'] : styles['power']} aria-label={bringUp.power}>
      <h3>{bringUp.powerAnswer[answer]}</h3>
      {reasons.length > 0 && (
        <ul>
          {reasons.map((reason) => (
            <li key={reason} {...fromApi}>
              {reason}
            </li>
          ))}
        </ul>
      )}
      {isStop && <ToClearing number={number} />}
    </section>
  );
}
