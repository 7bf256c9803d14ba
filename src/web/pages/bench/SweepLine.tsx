import { useRef } from 'react';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import type { MeasuredPlace } from './measuredPlaces.js';
import { placeNamed, type SweepDraft } from './sweepDraft.js';
import { typedVerdict } from './typedVerdict.js';
import { VerdictWords } from './VerdictWords.js';
import styles from './SweepLine.module.css';

/** The row that is being typed, with what the limits will say of it. */
export function SweepLine({
  draft,
  places,
  change,
  take,
}: {
  draft: SweepDraft;
  places: readonly MeasuredPlace[];
  change: (changes: Partial<SweepDraft>) => void;
  take: () => void;
}) {
  const { bench } = useTexts();
  const value = useRef<HTMLInputElement>(null);
  const place = placeNamed(places, draft.designator);
  const isTyped = draft.value.trim() !== '';
  const word = typedVerdict(draft, place?.limits ?? []);
  return (
    <form
      className={styles['line']}
      onSubmit={(event) => {
        event.preventDefault();
        const isAtValue = document.activeElement === value.current;
        if (isTyped ? draft.designator.trim() !== '' : isAtValue) take();
        value.current?.focus();
        value.current?.select();
      }}
    >
      <Field label={bench.position}>
        <input
          list="sweep-positions"
          value={draft.designator}
          autoCapitalize="off"
          spellCheck={false}
          onChange={(event) => {
            change({ designator: event.target.value });
          }}
        />
      </Field>
      <Field label={bench.value}>
        <input
          ref={value}
          inputMode="decimal"
          value={draft.value}
          enterKeyHint="next"
          onChange={(event) => {
            change({ value: event.target.value });
          }}
        />
      </Field>
      <Button type="submit">{bench.next}</Button>
      <datalist id="sweep-positions">
        {places.map(({ designator }) => (
          <option key={designator} value={designator} />
        ))}
      </datalist>
      <p className={styles['word']} aria-live="polite">
        <span>{place?.part ?? ''}</span>{' '}
        {isTyped && (word ? <VerdictWords word={word} /> : bench.otherUnit)}
      </p>
    </form>
  );
}
