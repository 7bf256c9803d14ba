import { useState } from 'react';
import { useSend, type ShownProblem } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { CorrectBringUpStepDocument, type ShownBringUpFragment } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { answersOf, stepInput, unreadyAnswers, type RunStep } from './stepDraft.js';
import { StepFields } from './StepFields.js';
import styles from './BringUpPage.module.css';

/** A step as it really was; what it said before is kept beside it. */
export function CorrectStep({
  run,
  step,
  fetchAgain,
  close,
}: {
  run: ShownBringUpFragment;
  step: RunStep;
  fetchAgain: () => void;
  close: () => void;
}) {
  const texts = useTexts();
  const { bringUp, frame } = texts;
  const { plan } = step;
  const { draft, change, clear, isKept } = useDraft(`bringUp.correction.${run.id}.${plan.key}`, {
    ...answersOf(step),
    version: run.version,
    reason: '',
    wasNeverDone: false,
  });
  const { send, problems, isSending, forget } = useSend(
    CorrectBringUpStepDocument,
    (data) => data.correctBringUpStep,
  );
  const [unready, setUnready] = useState<ShownProblem[]>([]);
  const isStale = problems.some(({ code }) => code === 'OUT_OF_DATE');
  const correct = async () => {
    const { reason, version, wasNeverDone } = draft;
    const lacking = wasNeverDone ? [] : unreadyAnswers(plan, draft, texts);
    if (reason.trim() === '') {
      lacking.push({
        code: 'INVALID',
        message: bringUp.reasonNeeded,
        path: ['reason'],
        isOfPage: true,
      });
    }
    setUnready(lacking);
    forget();
    if (lacking.length > 0) return;
    const said = wasNeverDone ? { wasNeverDone } : stepInput(plan, draft);
    const input = { bringUpId: run.id, version, stepKey: plan.key, reason, ...said };
    if (await send({ input })) {
      clear();
      close();
    }
    fetchAgain();
  };
  const shown = [...unready, ...problems];
  return (
    <form
      className={styles['form']}
      aria-label={bringUp.correctThis(plan.title)}
      onSubmit={(event) => {
        event.preventDefault();
        void correct();
      }}
    >
      <p>{bringUp.correctHelp}</p>
      <Field label={bringUp.whatWasWrong}>
        <input
          autoFocus
          value={draft.reason}
          onChange={(event) => {
            change({ reason: event.target.value });
          }}
        />
      </Field>
      <ProblemsAt problems={shown} path={['reason']} />
      <label className={styles['tick']}>
        <input
          type="checkbox"
          checked={draft.wasNeverDone}
          onChange={(event) => {
            change({ wasNeverDone: event.target.checked });
          }}
        />
        {bringUp.wasNeverDone}
      </label>
      {!draft.wasNeverDone && (
        <StepFields
          name={`correct-${plan.key}`}
          plan={plan}
          answers={draft}
          problems={shown}
          onChange={change}
        />
      )}
      {isStale ? (
        <div role="alert" className={styles['before']}>
          <p>{bringUp.changedMeanwhile}</p>
          <Button
            onClick={() => {
              change({ version: run.version });
              forget();
            }}
          >
            {frame.conflictGoOn}
          </Button>
        </div>
      ) : (
        <ProblemsElsewhere
          problems={shown}
          shown={[['reason'], ['holds'], ['readings'], ['unread'], ['note']]}
        />
      )}
      {!isKept && <p>{frame.draftNotKept}</p>}
      <div className={styles['buttons']}>
        <Button weight="main" type="submit" disabled={isSending || isStale}>
          {bringUp.putItRight}
        </Button>
        <Button
          weight="quiet"
          onClick={() => {
            clear();
            close();
          }}
        >
          {bringUp.leaveIt}
        </Button>
      </div>
    </form>
  );
}
