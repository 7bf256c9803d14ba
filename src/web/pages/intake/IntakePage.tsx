import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { draftPlaces } from '../../drafts/keptDrafts.js';
import { Button, buttonClass } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { intakePlace } from './intakeDraft.js';
import { NewItem } from './NewItem.js';
import styles from './IntakePage.module.css';

/** A set comes in: a new one is written down, one that is known is looked over. */
export function IntakePage() {
  const { buy, intake } = useTexts();
  useTitle(intake.title);
  const navigate = useNavigate();
  const [number, setNumber] = useState('');
  const begun = draftPlaces(intakePlace(''));
  return (
    <>
      <h1>{intake.title}</h1>
      <p className={styles['intro']}>{intake.intro}</p>
      <p>
        <Link className={buttonClass()} to="/buy">
          {buy.toBuy}
        </Link>
      </p>
      <div className={styles['ways']}>
        <Sheet title={intake.fresh}>
          <NewItem />
        </Sheet>
        <Sheet title={intake.existing}>
          <form
            className={styles['number']}
            onSubmit={(event) => {
              event.preventDefault();
              const asked = number.trim();
              if (asked) void navigate({ to: '/intake/$number', params: { number: asked } });
            }}
          >
            <Field label={intake.number}>
              <input
                value={number}
                spellCheck={false}
                onChange={(event) => {
                  setNumber(event.target.value);
                }}
              />
            </Field>
            <Button type="submit">{intake.lookOver}</Button>
          </form>
          <p>{intake.existingHelp}</p>
          {begun.length > 0 && (
            <>
              <h3>{intake.goOn}</h3>
              <ul className={styles['begun']}>
                {begun.map((each) => (
                  <li key={each}>
                    <Link to="/intake/$number" params={{ number: each }}>
                      {each}
                    </Link>
                  </li>
                ))}
              </ul>
            </>
          )}
        </Sheet>
      </div>
    </>
  );
}
