import type { ReactNode } from 'react';
import type { ShownProblem } from '../../api/useSend.js';
import type { ReadingTier } from '../../gql/graphql.js';
import { typedUnit } from '../../locale/writtenUnit.js';
import { Choice } from '../../parts/Choice.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { KnownQuantity } from './measuredPlaces.js';
import styles from './BenchEntry.module.css';

export interface Measured {
  quantity: string;
  unit: string;
  tier: ReadingTier;
  instrument: string;
}

const tiers = ['TESTER', 'IN_CIRCUIT'] as const;

/** What is measured, in which unit, where and with what; known quantities bring unit and place along. */
export function MeasuredFields({
  name,
  measured,
  known,
  onChange,
  problems,
  path,
  children,
}: {
  name: string;
  measured: Measured;
  known: readonly KnownQuantity[];
  onChange: (changes: Partial<Measured>) => void;
  problems: readonly ShownProblem[];
  path: readonly string[];
  children?: ReactNode;
}) {
  const { bench, words } = useTexts();
  return (
    <>
      <Choice
        legend={bench.tier}
        name={`tier-${name}`}
        value={measured.tier}
        options={tiers.map((value) => ({ value, words: words.tier[value] }))}
        onChange={(tier) => {
          onChange({ tier });
        }}
      />
      <div className={styles['row']}>
        <Field label={bench.quantity}>
          <input
            list={`quantities-${name}`}
            value={measured.quantity}
            onChange={(event) => {
              const quantity = event.target.value;
              const found = known.find((each) => each.quantity === quantity);
              onChange({
                quantity,
                ...(found && { unit: typedUnit(found.unit) }),
                ...(found?.tier && { tier: found.tier }),
              });
            }}
          />
        </Field>
        <Field label={bench.unit}>
          <input
            value={measured.unit}
            placeholder={bench.unitHint}
            autoCapitalize="off"
            spellCheck={false}
            onChange={(event) => {
              onChange({ unit: event.target.value });
            }}
          />
        </Field>
        {children}
        <Field label={bench.instrument}>
          <input
            value={measured.instrument}
            onChange={(event) => {
              onChange({ instrument: event.target.value });
            }}
          />
        </Field>
      </div>
      <datalist id={`quantities-${name}`}>
        {[...new Set(known.map(({ quantity }) => quantity))].map((quantity) => (
          <option key={quantity} value={quantity} />
        ))}
      </datalist>
      <ProblemsAt problems={problems} path={[...path, 'quantity']} />
      <ProblemsAt problems={problems} path={[...path, 'unit']} />
    </>
  );
}
