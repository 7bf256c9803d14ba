import { useState } from 'react';
import type { ShownBringUpFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { classNames } from '../../parts/classNames.js';
import { CorrectStep } from './CorrectStep.js';
import { EarlierVersions } from './EarlierVersions.js';
import { LeftDrafts } from './LeftDrafts.js';
import { StepSaid } from './StepSaid.js';
import type { RunStep } from './stepDraft.js';
import styles from './BringUpPage.module.css';

/** One step as it stands: how it came out, what was recorded, what it said before, and the way to put it right. */
export function RunStepLine({
  run,
  step,
  place,
  isNow,
  choose,
  fetchAgain,
}: {
  run: ShownBringUpFragment;
  step: RunStep;
  place: number;
  isNow: boolean;
  /** Takes it in hand; null where it is, or may not be yet. */
  choose: (() => void) | null;
  fetchAgain: () => void;
}) {
  const { bringUp } = useTexts();
  const formats = useFormats();
  const [isCorrecting, setIsCorrecting] = useState(false);
  const { plan, outcome, doneAt } = step;
  return (
    <li className={classNames(styles['step'], styles[outcome])}>
      <h3>
        {place}. <span {...fromApi}>{plan.title}</span>
      </h3>
      <p>
        <strong>{bringUp.outcome[outcome]}</strong>
        {doneAt && ` · ${formats.minute(doneAt)}`}
        {isNow && ` · ${bringUp.now}`}
      </p>
      {doneAt && (
        <StepSaid
          plan={plan}
          holds={step.holds}
          readings={step.readings}
          verdicts={step.verdicts}
          note={step.note}
        />
      )}
      <EarlierVersions step={step} />
      <LeftDrafts run={run} step={step} />
      {choose && <Button onClick={choose}>{bringUp.toStep(plan.title)}</Button>}
      {doneAt &&
        (isCorrecting ? (
          <CorrectStep
            run={run}
            step={step}
            fetchAgain={fetchAgain}
            close={() => {
              setIsCorrecting(false);
            }}
          />
        ) : (
          <Button
            weight="quiet"
            aria-label={bringUp.correctThis(plan.title)}
            onClick={() => {
              setIsCorrecting(true);
            }}
          >
            {bringUp.correct}
          </Button>
        ))}
    </li>
  );
}
