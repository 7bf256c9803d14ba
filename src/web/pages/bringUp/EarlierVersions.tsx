import { useFormats } from '../../locale/useFormats.js';
import { useTexts } from '../../texts/textsContext.js';
import { StepSaid } from './StepSaid.js';
import type { RunStep } from './stepDraft.js';
import styles from './BringUpPage.module.css';

/** What a step said before it was put right, and why it was. */
export function EarlierVersions({ step: { plan, earlierVersions } }: { step: RunStep }) {
  const { bringUp } = useTexts();
  const formats = useFormats();
  return earlierVersions.map((version) => (
    <div key={version.replacedAt} className={styles['before']}>
      <p>
        <strong>
          {version.wasNeverDone
            ? bringUp.takenBack(formats.minute(version.replacedAt))
            : bringUp.putRight(formats.minute(version.replacedAt))}
        </strong>{' '}
        {version.reason}
      </p>
      <p>{bringUp.saidBefore(bringUp.outcome[version.outcome])}</p>
      <StepSaid plan={plan} holds={version.holds} readings={version.readings} note={version.note} />
    </div>
  ));
}
