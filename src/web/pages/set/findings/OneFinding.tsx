import type { ShownFindingFragment } from '../../../gql/graphql.js';
import { useFormats } from '../../../locale/useFormats.js';
import { classNames } from '../../../parts/classNames.js';
import { useTexts } from '../../../texts/textsContext.js';
import { CorrectFinding } from './CorrectFinding.js';
import { OpenFindingAgain } from './OpenFindingAgain.js';
import { SettleFinding } from './SettleFinding.js';
import styles from './SetFindings.module.css';

/** One thing that was seen, what came of it, and the steps that bear on it. */
export function OneFinding({
  finding,
  onDone,
}: {
  finding: ShownFindingFragment;
  onDone: (words: string) => void;
}) {
  const { prove, words } = useTexts();
  const formats = useFormats();
  const { zone, severity, status, note, seenAt, settledAt, settledNote } = finding;
  const settled = settledAt === null ? '' : `, ${formats.day(settledAt)}`;
  return (
    <li className={classNames(status === 'OPEN' && styles[severity])}>
      <p className={styles['words']}>
        <strong>
          {words.severity[severity]}, {words.zone[zone]}
        </strong>
        : {note}
      </p>
      <p className={styles['soft']}>{prove.seenOn(formats.day(seenAt))}</p>
      {status !== 'OPEN' && (
        <p className={styles['words']}>
          <strong>{words.findingStatus[status]}</strong>
          {settled}: {settledNote}
        </p>
      )}
      <div className={styles['steps']}>
        <SettleFinding finding={finding} onDone={onDone} />
        <OpenFindingAgain finding={finding} onDone={onDone} />
        <CorrectFinding finding={finding} onDone={onDone} />
      </div>
    </li>
  );
}
