import { classNames } from './classNames.js';
import styles from './Choice.module.css';

/** Any of a few, each a target for a thumb. */
export function Ticks<Value extends string>({
  legend,
  options,
  values,
  onChange,
  isLegendHeardOnly = false,
}: {
  legend: string;
  options: readonly { value: Value; words: string }[];
  values: readonly Value[];
  onChange: (values: Value[]) => void;
  isLegendHeardOnly?: boolean;
}) {
  return (
    <fieldset className={styles['choice']}>
      <legend className={isLegendHeardOnly ? 'only-heard' : undefined}>{legend}</legend>
      {options.map(({ value, words }) => {
        const isTicked = values.includes(value);
        return (
          <label key={value} className={classNames(isTicked && styles['chosen'])}>
            <input
              type="checkbox"
              checked={isTicked}
              onChange={() => {
                onChange(isTicked ? values.filter((each) => each !== value) : [...values, value]);
              }}
            />
            {words}
          </label>
        );
      })}
    </fieldset>
  );
}
