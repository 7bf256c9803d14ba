import type { FormEvent } from 'react';
import { typedUnit } from '../../locale/writtenUnit.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import type { MeasuredPlace } from './measuredPlaces.js';
import { rowVerdict } from './rowVerdict.js';
import { columnsOf, placeNamed, valuesOf, type SweepDraft } from './sweepDraft.js';
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
  const place = placeNamed(places, draft.designator);
  const columns = columnsOf(draft);
  const values = valuesOf(draft, draft);
  const isTyped = values.some((typed) => typed.trim() !== '');
  const word = rowVerdict(draft, draft, place);
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const inputs = [...event.currentTarget.querySelectorAll<HTMLInputElement>('[data-value]')];
    const at = inputs.findIndex((input) => input === document.activeElement);
    // Enter goes through the columns first; in the last one it takes the row.
    const following = at >= 0 && isTyped ? inputs[at + 1] : undefined;
    const isDone = isTyped ? draft.designator.trim() !== '' : at >= 0;
    if (!following && isDone) take();
    const next = following ?? inputs[0];
    next?.focus();
    next?.select();
  };
  return (
    <form className={styles['line']} onSubmit={submit}>
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
      {columns.map(({ quantity, unit }, index) => (
        <Field
          key={`${index} ${quantity} ${unit}`}
          label={columns.length === 1 ? bench.value : `${quantity} (${typedUnit(unit)})`}
        >
          <input
            data-value={index}
            inputMode="decimal"
            value={values[index] ?? ''}
            enterKeyHint="next"
            onChange={({ target }) => {
              const typed = values.map((value, own) => (own === index ? target.value : value));
              change({ value: typed[0] ?? '', moreValues: typed.slice(1) });
            }}
          />
        </Field>
      ))}
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
