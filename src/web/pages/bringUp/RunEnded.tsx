import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { ResumeBringUpDocument, type ShownBringUpFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { OneFinding } from '../set/findings/OneFinding.js';
import { ToClearing } from './ToClearing.js';
import { useFocusOnce } from './useFocusOnce.js';
import styles from './BringUpPage.module.css';

/** A bring-up that is not under way: stopped at a gate with its finding, given up, or passed. */
export function RunEnded({
  run,
  isFresh,
  onWritten,
}: {
  run: ShownBringUpFragment;
  isFresh: boolean;
  onWritten: (id: string) => void;
}) {
  const { bringUp } = useTexts();
  const [said, setSaid] = useState('');
  const formats = useFormats();
  const heading = useFocusOnce<HTMLHeadingElement>(isFresh);
  const { send, problems, isSending } = useSend(
    ResumeBringUpDocument,
    (data) => data.resumeBringUp,
  );
  const { status, finalCheck, procedure } = run;
  if (status === 'PASSED') {
    return (
      <section className={styles['passed']}>
        <h2 ref={heading} tabIndex={-1}>
          {bringUp.status.PASSED}
        </h2>
        {finalCheck && (
          <p>
            {bringUp.checkRecorded(
              procedure.finalCheck.procedure,
              formats.minute(finalCheck.checkedAt),
              procedure.finalCheck.validDays,
            )}
          </p>
        )}
        <p>{bringUp.passedHelp}</p>
      </section>
    );
  }
  const findings = run.steps.flatMap(({ finding }) => finding ?? []);
  const isFindingThere = findings.some(({ note }) => note === run.reason);
  const resume = async () => {
    const kept = await send({ input: { id: run.id, version: run.version } });
    if (kept) onWritten(run.id);
  };
  return (
    <section className={status === 'STOPPED' ? styles['stop'] : styles['power']}>
      <h2 ref={heading} tabIndex={-1}>
        {bringUp.status[status]}
      </h2>
      {run.reason && !isFindingThere && (
        <p {...(run.status === 'STOPPED' ? fromApi : {})}>{run.reason}</p>
      )}
      {findings.length > 0 && (
        <ul className={styles['findings']}>
          {findings.map((finding) => (
            <OneFinding key={finding.id} finding={finding} onDone={setSaid} />
          ))}
        </ul>
      )}
      <p role="status">{said}</p>
      <p>{status === 'STOPPED' ? bringUp.stoppedHelp : bringUp.givenUpHelp}</p>
      {status === 'STOPPED' && <ToClearing number={run.item.inventoryNumber} />}
      <ProblemsElsewhere problems={problems} shown={[]} />
      <div>
        <Button weight="main" disabled={isSending} onClick={() => void resume()}>
          {bringUp.resume}
        </Button>
      </div>
    </section>
  );
}
