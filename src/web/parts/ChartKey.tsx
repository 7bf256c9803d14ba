import type { ChartBand, ChartLine } from './chartLine.js';
import styles from './LineChart.module.css';

/** Which line is which, each drawn as on the picture. */
export function ChartKey({
  lines,
  band,
  hatch,
}: {
  lines: readonly ChartLine[];
  band?: ChartBand | undefined;
  /** What the band is filled with. */
  hatch: string;
}) {
  return (
    <figcaption className={styles['key']}>
      {lines.map(({ name, look }) => (
        <span key={name}>
          <svg viewBox="0 0 28 8" aria-hidden="true" className={styles[look]}>
            <polyline points="0,4 28,4" />
          </svg>
          {name}
        </span>
      ))}
      {band && (
        <span>
          <svg viewBox="0 0 28 12" aria-hidden="true" className={styles['band']}>
            <rect width="28" height="12" fill={hatch} />
            <polyline points="0,0.5 28,0.5" />
            <polyline points="0,11.5 28,11.5" />
          </svg>
          {band.name}
        </span>
      )}
    </figcaption>
  );
}
