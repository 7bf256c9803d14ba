import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { SetStoryDocument } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { useLanguage } from '../../texts/textsContext.js';
import { storyGoesOn, storyLines } from './storyLines.js';
import styles from './SetStory.module.css';

const atFirst = 20;
const atTheMost = 100;

/** One time line: came from, inspections, readings, sessions, parts, papers. */
export function SetStory({ number }: { number: string }) {
  const { texts } = useLanguage();
  const { set, frame } = texts;
  const formats = useFormats();
  const [first, setFirst] = useState(atFirst);
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetStoryDocument,
    variables: { number, first },
  });
  const item = data?.item;
  const lines = item ? storyLines(item, texts, formats) : [];
  return (
    <Sheet
      id="story"
      title={set.story}
      aside={
        <Link to="/sets/$number/provenance" params={{ number }}>
          {set.toProvenance}
        </Link>
      }
    >
      {error && !data && <Failed error={error} retry={fetchAgain} />}
      {!data && !error && <Loading />}
      {item && lines.length === 0 && <p>{set.noStory}</p>}
      <ol className={styles['story']}>
        {lines.map(({ key, day, said, more }) => (
          <li key={key}>
            <span className={styles['day']}>{day}</span>
            <span className={styles['said']}>
              {said}
              {more && <span className={styles['more']}>{more}</span>}
            </span>
          </li>
        ))}
      </ol>
      {item && storyGoesOn(item) && first < atTheMost && (
        <div>
          <Button
            onClick={() => {
              setFirst(atTheMost);
            }}
          >
            {frame.more}
          </Button>
        </div>
      )}
    </Sheet>
  );
}
