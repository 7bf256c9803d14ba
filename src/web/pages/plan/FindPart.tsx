import { useDeferredValue, useState } from 'react';
import { useQuery } from 'urql';
import { PartTypesByWordsDocument } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './BeforeChoice.module.css';

const fewestLetters = 2;

/** A part type is found by what stands on it, and chosen. */
export function FindPart({
  known,
  onFound,
}: {
  /** Those that are named already. */
  known: readonly string[];
  onFound: (part: { id: string; name: string }) => void;
}) {
  const { plan } = useTexts();
  const [typed, setTyped] = useState('');
  const text = useDeferredValue(typed.trim());
  const [{ data, error, fetching }, askAgain] = useQuery({
    query: PartTypesByWordsDocument,
    variables: { text },
    pause: text.length < fewestLetters,
  });
  const found = text.length < fewestLetters ? [] : (data?.partTypes.nodes ?? []);
  return (
    <div className={styles['before']}>
      <Field label={plan.findPart}>
        <input
          type="search"
          value={typed}
          onChange={({ target }) => {
            setTyped(target.value);
          }}
          onKeyDown={(event) => {
            // Looking something up must not send the form around it.
            if (event.key === 'Enter') event.preventDefault();
          }}
        />
      </Field>
      {error && <Failed error={error} retry={askAgain} />}
      <ul>
        {found
          .filter(({ id }) => !known.includes(String(id)))
          .map(({ id, designation, description }) => (
            <li key={id}>
              <Button
                weight="quiet"
                onClick={() => {
                  onFound({ id: String(id), name: designation });
                  setTyped('');
                }}
              >
                {plan.needs([designation, description].filter(Boolean).join(', '))}
              </Button>
            </li>
          ))}
      </ul>
      {text.length >= fewestLetters && data && !fetching && found.length === 0 && (
        <p role="status">{plan.noPartFound}</p>
      )}
    </div>
  );
}
