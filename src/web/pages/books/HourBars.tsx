import { useFormats } from '../../locale/useFormats.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './HourBars.module.css';

/** Hours under each other, each with a bar as long as its share of the most. */
export function HourBars({ bars }: { bars: readonly { name: string; hours: number }[] }) {
  const { books } = useTexts();
  const formats = useFormats();
  const most = Math.max(...bars.map(({ hours }) => hours), 0);
  if (most === 0) return <p>{books.noHours}</p>;
  return (
    <dl className={styles['bars']}>
      {bars.map(({ name, hours }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            <span
              className={styles['bar']}
              style={{ inlineSize: `${(hours / most) * 100}%` }}
              aria-hidden="true"
            />
            <span className={styles['figure']}>{formats.hours(hours)}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
