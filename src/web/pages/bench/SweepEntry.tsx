import { useMemo, useState } from 'react';
import { newKey } from '../../api/newKey.js';
import { useDraft } from '../../drafts/useDraft.js';
import { Button } from '../../parts/Button.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem } from './BenchPage.js';
import { knownQuantities, measuredPlaces } from './measuredPlaces.js';
import { MeasuredFields } from './MeasuredFields.js';
import { newSweep, onToNext, rowTaken, valuesOf } from './sweepDraft.js';
import { SweepLine } from './SweepLine.js';
import { SweepRows } from './SweepRows.js';
import { SweepTemplates } from './SweepTemplates.js';
import { useSweep, type SweptCount } from './useSweep.js';
import styles from './BenchEntry.module.css';

/** Many readings in one go, by keyboard alone: position, value, Enter, and on to the next. */
export function SweepEntry({ item }: { item: BenchItem }) {
  const { bench, frame } = useTexts();
  const places = useMemo(() => measuredPlaces(item), [item]);
  const known = useMemo(() => knownQuantities(places.flatMap(({ limits }) => limits)), [places]);
  const [fresh] = useState(() => newSweep(places, known));
  const kept = useDraft(`bench.sweep.${item.id}`, fresh);
  const { draft, change, isKept } = kept;
  const { sweep, problems, isSending, ofRow } = useSweep(item.id, kept);
  const [outcome, setOutcome] = useState<SweptCount | null>(null);
  const rows = draft.rows.map((row, index) => ({ ...row, said: [...row.said, ...ofRow(index)] }));
  return (
    <div className={styles['form']}>
      {item.model && (
        <SweepTemplates model={item.model} draft={draft} places={places} change={change} />
      )}
      <MeasuredFields
        name="sweep"
        measured={draft}
        known={known}
        problems={problems}
        path={['quantities', '0']}
        onChange={(changes) => {
          change({ ...changes, key: newKey() });
        }}
      />
      <label className={styles['check']}>
        <input
          type="checkbox"
          checked={draft.fitsExpected}
          onChange={(event) => {
            change({ fitsExpected: event.target.checked, key: newKey() });
          }}
        />
        {bench.fitsExpected}
      </label>
      <p className={styles['soft']}>{bench.sweepHelp}</p>
      <SweepLine
        draft={draft}
        places={places}
        change={(changes) => {
          setOutcome(null);
          change(changes);
        }}
        take={() => {
          const isTyped = valuesOf(draft, draft).some((value) => value.trim() !== '');
          change(isTyped ? rowTaken(draft, places) : onToNext(draft, places));
        }}
      />
      <p role="status" className={styles['kept']}>
        {outcome && bench.sweepKept(outcome.kept, outcome.refused)}{' '}
        {outcome && outcome.left.length > 0 && bench.positionsLeft(outcome.left.join(', '))}
      </p>
      <SweepRows
        draft={{ ...draft, rows }}
        places={places}
        again={({ designator, value, moreValues = [] }) => {
          change({ designator, value, moreValues });
        }}
        drop={(designator) => {
          const left = draft.rows.filter((row) => row.designator !== designator);
          change({ rows: left, key: newKey() });
        }}
      />
      <ProblemsElsewhere
        problems={problems}
        shown={[
          ['quantities', '0', 'quantity'],
          ['quantities', '0', 'unit'],
          ...draft.rows.map((_row, index) => ['rows', String(index)]),
        ]}
      />
      {!isKept && <p>{frame.draftNotKept}</p>}
      <Button
        weight="main"
        disabled={isSending || draft.rows.length === 0}
        onClick={() => void sweep().then(setOutcome)}
      >
        {bench.sendSweep(draft.rows.length)}
      </Button>
    </div>
  );
}
