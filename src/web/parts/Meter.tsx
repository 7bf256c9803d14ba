import styles from './Meter.module.css';

/** How far something is, as a bar with its words; without a share only the words. */
export function Meter({ share, words }: { share: number | null; words: string }) {
  return (
    <span className={styles['meter']}>
      {share !== null && (
        <span className={styles['track']} aria-hidden="true">
          <span
            className={styles['fill']}
            style={{ inlineSize: `${Math.round(Math.min(1, Math.max(0, share)) * 100)}%` }}
          />
        </span>
      )}
      <span>{words}</span>
    </span>
  );
}
