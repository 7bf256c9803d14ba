import { useState } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { OneBringUpDocument, type ShownBringUpFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { GiveUp } from './GiveUp.js';
import { outcomeWords } from './outcomeWords.js';
import { PowerWords } from './PowerWords.js';
import { RunEnded } from './RunEnded.js';
import { RunStepLine } from './RunStepLine.js';
import { StepNow } from './StepNow.js';
import { stepsOpen } from './stepsOpen.js';
import styles from './BringUpPage.module.css';

/** One bring-up: the step in hand or what stopped it, then all steps as they stand. */
export function BringUpRun({
  id,
  number,
  onWritten,
}: {
  id: string;
  number: string;
  /** Something was written to this bring-up, which now is the one in hand. */
  onWritten: (id: string) => void;
}) {
  const texts = useTexts();
  const { bringUp, frame } = texts;
  const formats = useFormats();
  const [chosenKey, setChosenKey] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: OneBringUpDocument,
    variables: { id },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const run = data.node?.__typename === 'BringUp' ? data.node : null;
  if (run?.item.inventoryNumber !== number) {
    return <Notice title={frame.notFoundTitle} help={bringUp.notFound} />;
  }
  const { steps, status } = run;
  const open = status === 'UNDER_WAY' ? stepsOpen(steps) : [];
  const now =
    open.find(({ plan }) => plan.key === chosenKey) ??
    open.find(({ outcome }) => outcome === 'NOT_DONE') ??
    open[0];
  const passed = steps.filter(({ outcome }) => outcome === 'PASSED').length;
  const onRecorded = (written: ShownBringUpFragment, stepKey: string) => {
    const step = written.steps.find(({ plan }) => plan.key === stepKey);
    if (step) setSaid(outcomeWords(step, texts, formats));
    setChosenKey(null);
    onWritten(written.id);
    fetchAgain({ requestPolicy: 'network-only' });
  };
  return (
    <>
      <header className={styles['head']}>
        <h2>{run.procedure.title}</h2>
        <p>
          <strong>{bringUp.status[status]}</strong> · {bringUp.passedOf(passed, steps.length)} ·{' '}
          {bringUp.since(formats.minute(run.startedAt))}
        </p>
        {run.note && <p>{run.note}</p>}
        <p className={styles['defer']} {...fromApi}>
          {run.procedure.advice}
        </p>
      </header>
      <p role="status" className={styles['said']}>
        {said}
      </p>
      {status !== 'UNDER_WAY' && (
        <RunEnded key={status} run={run} isFresh={said !== ''} onWritten={onWritten} />
      )}
      {status !== 'PASSED' && <PowerWords power={run.power} number={number} />}
      {now && (
        <StepNow
          key={`${now.plan.key} ${now.doneAt ?? ''}`}
          run={run}
          step={now}
          isFresh={said !== ''}
          onRecorded={onRecorded}
        />
      )}
      <Sheet id="steps" title={bringUp.steps}>
        <ol className={styles['steps']}>
          {steps.map((step, index) => (
            <RunStepLine
              key={step.plan.key}
              run={run}
              step={step}
              place={index + 1}
              isNow={step === now}
              choose={
                open.includes(step) && step !== now
                  ? () => {
                      setChosenKey(step.plan.key);
                    }
                  : null
              }
              fetchAgain={() => {
                fetchAgain({ requestPolicy: 'network-only' });
              }}
            />
          ))}
        </ol>
      </Sheet>
      {(status === 'UNDER_WAY' || status === 'STOPPED') && <GiveUp run={run} />}
    </>
  );
}
