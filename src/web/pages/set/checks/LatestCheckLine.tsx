import { useFormats } from '../../../locale/useFormats.js';
import { useTexts } from '../../../texts/textsContext.js';
import type { LatestCheck } from './latestChecks.js';
import styles from '../SetStanding.module.css';

/** How one check came out when it was last made, and until when that holds. */
export function LatestCheckLine({ latest }: { latest: LatestCheck }) {
  const { prove } = useTexts();
  const formats = useFormats();
  const { check, holdsUntil, isLapsed } = latest;
  const made = prove.madeOn(formats.day(check.checkedAt), check.checkedBy?.name ?? '');
  const outcome =
    holdsUntil === null
      ? prove.notPassed
      : isLapsed
        ? prove.lapsedOn(formats.day(holdsUntil))
        : prove.holdsUntil(formats.day(holdsUntil));
  return (
    <li>
      <strong>{check.procedure}</strong>: {outcome}
      <span className={styles['soft']}>{[made, check.note].filter(Boolean).join(' ')}</span>
    </li>
  );
}
