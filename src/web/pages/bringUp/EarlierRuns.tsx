import { Link } from '@tanstack/react-router';
import { useFormats } from '../../locale/useFormats.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BroughtUpSet } from './BringUpPage.js';
import styles from './BringUpPage.module.css';

/** The other bring-ups of this set, the latest first, each with how it came out. */
export function EarlierRuns({
  runs,
  number,
}: {
  runs: BroughtUpSet['bringUps']['nodes'];
  number: string;
}) {
  const { bringUp } = useTexts();
  const formats = useFormats();
  return (
    <Sheet id="earlier" title={bringUp.otherRuns}>
      {runs.length === 0 && <p className={styles['soft']}>{bringUp.noOtherRuns}</p>}
      <ul className={styles['runs']}>
        {runs.map(({ id, status, procedure, startedAt, endedAt, reason }) => (
          <li key={id}>
            <Link to="/sets/$number/bring-up" params={{ number }} search={{ run: id }}>
              <span {...fromApi}>{procedure.title}</span>, {formats.minute(startedAt)}
            </Link>
            <p>
              <strong>{bringUp.status[status]}</strong>
              {endedAt && ` · ${formats.minute(endedAt)}`}
            </p>
            {reason && <p>{reason}</p>}
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
