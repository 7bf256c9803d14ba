import { Link } from '@tanstack/react-router';
import type { BenchChoicesQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './BenchChoicePage.module.css';

type Suggestion = BenchChoicesQuery['whatNext']['suggestions'][number];

/** Each task that can be done now, as one large target, with why it stands where it stands. */
export function BenchChoices({ suggestions }: { suggestions: readonly Suggestion[] }) {
  const { bench, words } = useTexts();
  const formats = useFormats();
  return (
    <ul className={styles['choices']}>
      {suggestions.map(({ task, fits, leftMinutes, reasons }) => {
        const { inventoryNumber, name } = task.project.item;
        return (
          <li key={task.id} className={styles['choice']}>
            <h3>
              <Link
                to="/bench/$number"
                params={{ number: inventoryNumber }}
                search={{ task: task.id }}
              >
                {task.title}
              </Link>
            </h3>
            <p>
              {inventoryNumber} {name}
            </p>
            <p>
              {words.taskKind[task.kind]}, {bench.left(formats.minutes(leftMinutes))}
              {!fits && ` (${bench.tooLong})`}
            </p>
            <p className={styles['why']} {...fromApi}>
              {reasons.map(({ message }) => message).join(' ')}
            </p>
          </li>
        );
      })}
    </ul>
  );
}
