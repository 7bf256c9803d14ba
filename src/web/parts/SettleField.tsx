import { useId } from 'react';
import { useTexts } from '../texts/textsContext.js';
import styles from './Conflict.module.css';

export type Side = 'theirs' | 'mine';

/** One field that was changed elsewhere: what stands there now beside what was typed here. */
export function SettleField({
  label,
  theirs,
  mine,
  chosen,
  onChoose,
}: {
  label: string;
  theirs: string;
  /** Null when it was left alone here: then there is nothing to choose. */
  mine: string | null;
  chosen: Side | undefined;
  onChoose: (side: Side) => void;
}) {
  const { frame } = useTexts();
  const name = useId();
  if (mine === null) {
    return (
      <p>
        <strong>{label}</strong>, {frame.conflictTheirs}: {theirs || '–'}
      </p>
    );
  }
  const sides = [
    { side: 'theirs', heading: frame.conflictTheirs, text: theirs, way: frame.conflictTakeTheirs },
    { side: 'mine', heading: frame.conflictMine, text: mine, way: frame.conflictTakeMine },
  ] as const;
  return (
    <fieldset className={styles['field']}>
      <legend>{label}</legend>
      <div className={styles['both']}>
        {sides.map(({ side, heading, text, way }) => (
          <div key={side}>
            <h4>{heading}</h4>
            <p>{text || '–'}</p>
            <label className={styles['side']}>
              <input
                type="radio"
                name={name}
                checked={chosen === side}
                onChange={() => {
                  onChoose(side);
                }}
              />
              {way}
            </label>
          </div>
        ))}
      </div>
    </fieldset>
  );
}
