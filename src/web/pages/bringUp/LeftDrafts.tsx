import { useEffect, useState } from 'react';
import { draftPlaces, keepDraft, keptDraft } from '../../drafts/keptDrafts.js';
import type { ShownBringUpFragment } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { useTexts } from '../../texts/textsContext.js';
import type { RunStep, StepAnswers } from './stepDraft.js';
import styles from './BringUpPage.module.css';

/** By then what was recorded here has been forgotten as a draft. */
const settledAfterMilliseconds = 1500;

/** What was typed here of a step that somebody else recorded meanwhile: shown, so that it is not lost. */
export function LeftDrafts({
  run,
  step: { plan, doneAt },
}: {
  run: ShownBringUpFragment;
  step: RunStep;
}) {
  const { bringUp } = useTexts();
  const beginning = `bringUp.step.${run.id}.${plan.key}.`;
  const [left, setLeft] = useState<string[]>([]);
  useEffect(() => {
    const looking = setTimeout(() => {
      setLeft(draftPlaces(beginning).filter((place) => place !== (doneAt ?? '')));
    }, settledAfterMilliseconds);
    return () => {
      clearTimeout(looking);
    };
  }, [beginning, doneAt]);
  return left.map((place) => {
    const { holds = [], readings = [], note = '' } = keptDraft<StepAnswers>(beginning + place);
    const typed = [
      ...holds.flatMap((each, index) =>
        each === null
          ? []
          : [`${each ? bringUp.holds : bringUp.holdsNot}: ${plan.statements[index] ?? ''}`],
      ),
      ...readings.flatMap(({ quantity, value }) => (value === '' ? [] : [`${quantity} ${value}`])),
      ...(note === '' ? [] : [note]),
    ];
    return (
      <div key={place} className={styles['before']}>
        <p>
          <strong>{bringUp.leftDraft}</strong> {typed.join('; ')}
        </p>
        <Button
          weight="quiet"
          onClick={() => {
            keepDraft(beginning + place, null);
            setLeft(left.filter((each) => each !== place));
          }}
        >
          {bringUp.forgetDraft}
        </Button>
      </div>
    );
  });
}
