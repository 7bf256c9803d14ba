import type { ReactNode } from 'react';
import { classNames } from './classNames.js';
import styles from './Choice.module.css';

/** One of a few, each a target for a thumb; by keyboard as any group of radio buttons. */
export function Choice<Value extends string>({
  legend,
  name,
  options,
  value,
  onChange,
  isLegendHeardOnly = false,
}: {
  legend: ReactNode;
  name: string;
  options: readonly { value: Value; words: string }[];
  value: Value | null;
  onChange: (value: Value) => void;
  isLegendHeardOnly?: boolean;
}) {
  return (
    <fieldset className={styles['choice']}>
      <legend className={isLegendHeardOnly ? 'only-heard' : undefined}>{legend}</legend>
      {options.map((option) => (
        <label
          key={option.value}
          className={classNames(option.value === value && styles['chosen'])}
        >
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => {
              onChange(option.value);
            }}
          />
          {option.words}
        </label>
      ))}
    </fieldset>
  );
}
