import { useState } from 'react';
import type { TheirChange } from '../drafts/useFieldDraft.js';
import { useTexts } from '../texts/textsContext.js';
import { Button } from './Button.js';
import { SettleField, type Side } from './SettleField.js';
import styles from './Conflict.module.css';

/** Somebody else changed the same record meanwhile: both versions side by side, settled one by one. */
export function SettleFields<Name extends string>({
  changes,
  nameOf,
  writtenOf = (_name, value) => value,
  settle,
}: {
  changes: readonly TheirChange<Name>[];
  nameOf: (name: Name) => string;
  /** How a value is shown, where the record holds a code. */
  writtenOf?: (name: Name, value: string) => string;
  /** The text that is to stand in each field that clashed. */
  settle: (settled: Partial<Record<Name, string>>) => void;
}) {
  const { frame } = useTexts();
  const [chosen, setChosen] = useState<Partial<Record<Name, Side>>>({});
  const clashes = changes.filter(({ mine }) => mine !== null);
  const isSettled = clashes.every(({ name }) => chosen[name] !== undefined);
  return (
    <section className={styles['conflict']} role="alert">
      <h3>{frame.conflictTitle}</h3>
      {changes.map((change) => (
        <SettleField
          key={change.name}
          label={nameOf(change.name)}
          theirs={writtenOf(change.name, change.theirs)}
          mine={change.mine === null ? null : writtenOf(change.name, change.mine)}
          chosen={chosen[change.name]}
          onChoose={(side) => {
            setChosen((before) => ({ ...before, [change.name]: side }));
          }}
        />
      ))}
      <Button
        disabled={!isSettled}
        onClick={() => {
          const settled = clashes.map(({ name, theirs, mine }) => [
            name,
            chosen[name] === 'mine' ? mine : theirs,
          ]);
          settle(Object.fromEntries(settled) as Partial<Record<Name, string>>);
          setChosen({});
        }}
      >
        {clashes.length > 0 ? frame.conflictSettle : frame.conflictGoOn}
      </Button>
    </section>
  );
}
