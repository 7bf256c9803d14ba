import { useState } from 'react';
import { newKey } from '../../api/newKey.js';
import { useSend, type ShownProblem } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { RecordBringUpStepDocument, type ShownBringUpFragment } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { noAnswers, stepInput, unreadyAnswers, type RunStep } from './stepDraft.js';
import { StepFields } from './StepFields.js';
import { StepTold } from './StepTold.js';
import { ToClearing } from './ToClearing.js';
import { useFocusOnce } from './useFocusOnce.js';
import styles from './BringUpPage.module.css';

/** The step in hand: its cautions, what to do in big type, and what came of it. */
export function StepNow({
  run,
  step,
  isFresh,
  onRecorded,
}: {
  run: ShownBringUpFragment;
  step: RunStep;
  /** It has come in place of a step that was just recorded here. */
  isFresh: boolean;
  onRecorded: (run: ShownBringUpFragment, stepKey: string) => void;
}) {
  const texts = useTexts();
  const { bringUp, frame } = texts;
  const { plan } = step;
  const heading = useFocusOnce<HTMLHeadingElement>(isFresh);
  const place = `bringUp.step.${run.id}.${plan.key}.${step.doneAt ?? ''}`;
  const { draft, change, clear, isKept } = useDraft(place, { key: '', ...noAnswers(plan) });
  const { send, problems, isSending, forget } = useSend(
    RecordBringUpStepDocument,
    (data) => data.recordBringUpStep,
  );
  const [unready, setUnready] = useState<ShownProblem[]>([]);
  const record = async () => {
    const lacking = unreadyAnswers(plan, draft, texts);
    setUnready(lacking);
    forget();
    if (lacking.length > 0) return;
    // Kept before it is sent: when the answer is lost, the same goes again under the same key.
    const key = draft.key || newKey();
    change({ key });
    const kept = await send({
      input: { key, bringUpId: run.id, stepKey: plan.key, ...stepInput(plan, draft) },
    });
    if (!kept?.bringUp) return;
    clear();
    onRecorded(kept.bringUp, plan.key);
  };
  const shown = [...unready, ...problems];
  return (
    <Sheet id="now" title={bringUp.now}>
      <h3 className={styles['stepTitle']} ref={heading} tabIndex={-1} {...fromApi}>
        {plan.title}
      </h3>
      <StepTold plan={plan} />
      <form
        className={styles['form']}
        onSubmit={(event) => {
          event.preventDefault();
          void record();
        }}
      >
        <StepFields
          name={plan.key}
          plan={plan}
          answers={draft}
          problems={shown}
          onChange={(changes) => {
            change((now) => ({ ...changes(now), key: '' }));
            setUnready([]);
          }}
        />
        <ProblemsAt problems={shown} path={['stepKey']} />
        {problems.some(({ path }) => path[0] === 'stepKey') && (
          <ToClearing number={run.item.inventoryNumber} />
        )}
        <ProblemsElsewhere
          problems={shown}
          shown={[['stepKey'], ['holds'], ['readings'], ['unread'], ['note']]}
        />
        {!isKept && <p>{frame.draftNotKept}</p>}
        <Button weight="main" type="submit" disabled={isSending}>
          {bringUp.record}
        </Button>
      </form>
    </Sheet>
  );
}
