import styles from './LineChart.module.css';
import { chartPlaces, roundSteps } from './chartPlaces.js';

export interface ChartLine {
  name: string;
  /** How it is drawn: never by tone alone. */
  look: 'main' | 'dashed' | 'dotted' | 'thin';
  points: readonly { at: number; value: number }[];
  hasDots?: boolean;
}

/**
 * Lines over time, drawn as SVG: it prints, follows the tones of day and night, and says in words
 * what it shows. A level is a line all across, such as a limit.
 */
export function LineChart({
  heard,
  lines,
  levels = [],
  writeTime,
  writeValue,
}: {
  /** What the picture shows, for those who hear it. */
  heard: string;
  lines: readonly ChartLine[];
  levels?: readonly { name: string; value: number }[];
  writeTime: (at: number) => string;
  writeValue: (value: number) => string;
}) {
  const points = lines.flatMap((line) => line.points);
  if (points.length === 0) return null;
  const { x, y, width, height, left, bottom, fromTime, toTime, low, high } = chartPlaces(
    points,
    levels.map(({ value }) => value),
  );
  return (
    <figure className={styles['chart']}>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={heard}>
        {roundSteps(low, high).map((value) => (
          <g key={value} className={styles['grid']}>
            <line x1={left} x2={width} y1={y(value)} y2={y(value)} />
            <text x={left - 6} y={y(value)} textAnchor="end" dominantBaseline="middle">
              {writeValue(value)}
            </text>
          </g>
        ))}
        <text className={styles['time']} x={left} y={height - 4}>
          {writeTime(fromTime)}
        </text>
        <text className={styles['time']} x={width} y={height - 4} textAnchor="end">
          {writeTime(toTime)}
        </text>
        {levels.map(({ name, value }) => (
          <g key={name} className={styles['level']}>
            <line x1={left} x2={width} y1={y(value)} y2={y(value)} />
            <text x={width} y={y(value) - 4} textAnchor="end">
              {name}
            </text>
          </g>
        ))}
        {lines.map(({ name, look, points: own, hasDots }) => (
          <g key={name} className={styles[look]}>
            <polyline points={own.map(({ at, value }) => `${x(at)},${y(value)}`).join(' ')} />
            {hasDots &&
              own.map(({ at, value }) => <circle key={at} cx={x(at)} cy={y(value)} r="3.5" />)}
          </g>
        ))}
        <line className={styles['floor']} x1={left} x2={width} y1={bottom} y2={bottom} />
      </svg>
      {lines.length > 1 && (
        <figcaption className={styles['key']}>
          {lines.map(({ name, look }) => (
            <span key={name}>
              <svg viewBox="0 0 28 8" aria-hidden="true" className={styles[look]}>
                <polyline points="0,4 28,4" />
              </svg>
              {name}
            </span>
          ))}
        </figcaption>
      )}
    </figure>
  );
}
