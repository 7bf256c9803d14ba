import { useMemo, useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { RecordReadingsDocument } from '../../gql/graphql.js';
import { ucumUnit } from '../../locale/ucumUnit.js';
import { withUnit } from '../../locale/writtenUnit.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem } from './BenchPage.js';
import { knownQuantities, measuredPlaces } from './measuredPlaces.js';
import { MeasuredFields, type Measured } from './MeasuredFields.js';
import { typedNumber } from '../../locale/typedNumber.js';
import { typedVerdict } from './typedVerdict.js';
import { VerdictWords } from './VerdictWords.js';
import styles from './BenchEntry.module.css';

const empty: Measured & { componentId: string; value: string } = {
  componentId: '',
  quantity: '',
  value: '',
  unit: '',
  tier: 'IN_CIRCUIT',
  instrument: '',
};
const at = ['readings', '0'];

/** One reading, of the set or of a part that sits in it. */
export function ReadingEntry({ item }: { item: BenchItem }) {
  const { bench, words } = useTexts();
  const { draft, change, clear } = useDraft(`bench.reading.${item.id}`, empty);
  const { send, problems, isSending } = useSend(
    RecordReadingsDocument,
    (data) => data.recordReadings,
  );
  const [said, setSaid] = useState('');
  const places = useMemo(
    () => measuredPlaces(item).filter(({ componentId }) => componentId !== null),
    [item],
  );
  const place = places.find(({ componentId }) => componentId === draft.componentId);
  const limits = place?.limits ?? (draft.componentId === '' ? (item.model?.limits ?? []) : []);
  const word = typedVerdict(draft, limits);
  const record = async () => {
    const { componentId, quantity, unit, tier, value } = draft;
    const instrument = draft.instrument.trim() || null;
    const measured = componentId ? { componentId } : { itemId: item.id };
    const reading = {
      quantity,
      unit: ucumUnit(unit),
      tier,
      instrument,
      value: typedNumber(value) ?? value,
    };
    const kept = await send({ input: { readings: [{ ...measured, ...reading }] } });
    if (!kept) return;
    const verdict = kept.readings?.[0]?.verdict.word ?? 'NO_LIMIT';
    setSaid(bench.keptAs(`${quantity} ${withUnit(value, ucumUnit(unit))}`, words.verdict[verdict]));
    clear({ ...draft, value: '' });
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void record();
      }}
    >
      <Field label={bench.measuredOn}>
        <select
          value={draft.componentId}
          onChange={(event) => {
            change({ componentId: event.target.value });
          }}
        >
          <option value="">{bench.wholeSet}</option>
          {places.map(({ componentId, designator, part }) => (
            <option key={designator} value={componentId ?? ''}>
              {[designator, part].filter(Boolean).join(' ')}
            </option>
          ))}
        </select>
      </Field>
      <MeasuredFields
        name="reading"
        measured={draft}
        known={knownQuantities(limits)}
        onChange={change}
        problems={problems}
        path={at}
      >
        <Field label={bench.value}>
          <input
            inputMode="decimal"
            value={draft.value}
            onChange={(event) => {
              change({ value: event.target.value });
              setSaid('');
            }}
          />
        </Field>
      </MeasuredFields>
      <output aria-live="polite">{word && <VerdictWords word={word} />}</output>
      <ProblemsAt problems={problems} path={[...at, 'value']} />
      <ProblemsElsewhere
        problems={problems}
        shown={[
          [...at, 'value'],
          [...at, 'quantity'],
          [...at, 'unit'],
        ]}
      />
      <Button weight="main" type="submit" disabled={isSending}>
        {bench.writeDown}
      </Button>
      <p role="status" className={styles['kept']}>
        {said}
      </p>
    </form>
  );
}
