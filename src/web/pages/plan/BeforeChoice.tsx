import { useRef, useState } from 'react';
import type { PlannedTaskFragment } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './BeforeChoice.module.css';

/** The tasks that come before one, each to be taken out again, and a way to name another. */
export function BeforeChoice({
  tasks,
  ids,
  onChange,
}: {
  /** Those that may come before it. */
  tasks: readonly PlannedTaskFragment[];
  ids: readonly string[];
  onChange: (ids: string[]) => void;
}) {
  const { plan } = useTexts();
  const [chosen, setChosen] = useState('');
  const select = useRef<HTMLSelectElement>(null);
  const titles = new Map(tasks.map(({ id, title }) => [String(id), title]));
  const others = tasks.filter(({ id, status }) => !ids.includes(id) && status !== 'DROPPED');
  return (
    <div className={styles['before']}>
      {ids.length === 0 && <p>{plan.nothingBefore}</p>}
      <ul>
        {ids.map((id) => (
          <li key={id}>
            <span>{titles.get(id) ?? '–'}</span>
            <Button
              weight="quiet"
              aria-label={plan.takeOut(titles.get(id) ?? '–')}
              onClick={() => {
                onChange(ids.filter((other) => other !== id));
                // The button goes with its line; the keyboard must not be lost with it.
                select.current?.focus();
              }}
            >
              <span aria-hidden="true">×</span>
            </Button>
          </li>
        ))}
      </ul>
      <div className={styles['add']}>
        <Field label={plan.addBefore}>
          <select
            ref={select}
            value={chosen}
            onChange={({ target }) => {
              setChosen(target.value);
            }}
          >
            <option value="">{plan.chooseTask}</option>
            {others.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        </Field>
        <Button
          disabled={chosen === ''}
          onClick={() => {
            onChange([...ids, chosen]);
            setChosen('');
            select.current?.focus();
          }}
        >
          {plan.waitForIt}
        </Button>
      </div>
    </div>
  );
}
