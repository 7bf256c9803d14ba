import { useId } from 'react';
import { ChartKey } from './ChartKey.js';
import type { ChartBand, ChartLine } from './chartLine.js';
import { chartPlaces, roundSteps } from './chartPlaces.js';
import { ChartTable } from './ChartTable.js';
import styles from './LineChart.module.css';
import { useMeasuredWidth } from './useMeasuredWidth.js';

const widest = 704;

/**
 * Lines over time, drawn as SVG: it prints, follows the tones of day and night, and says in words
 * and in a table what it shows. A level is a line all across, such as a limit.
 */
export function LineChart({
  name,
  heard,
  lines,
  band,
  levels = [],
  marks = [],
  writeTime,
  writeValue,
}: {
  name: string;
  /** What the picture shows, for those who hear it. */
  heard: string;
  lines: readonly ChartLine[];
  band?: ChartBand | undefined;
  levels?: readonly { name: string; value: number; isLimit: boolean }[];
  /** Days, each up to a value where it has one, else from the floor to the top. */
  marks?: readonly { name: string; at: number; value?: number }[];
  writeTime: (at: number) => string;
  writeValue: (value: number) => string;
}) {
  const hatchId = useId();
  const { element, width: room } = useMeasuredWidth(widest);
  const points = [
    ...lines.flatMap((line) => line.points),
    ...(band?.points ?? []).flatMap(({ at, low, high }) => [
      { at, value: low },
      { at, value: high },
    ]),
  ];
  if (points.length === 0) return null;
  const { x, y, width, height, left, top, bottom, fromTime, toTime, low, high } = chartPlaces(
    points,
    levels.map(({ value }) => value),
    Math.min(widest, Math.max(240, room)),
  );
  const hatch = `url(#${hatchId})`;
  const along = (edge: readonly { at: number; value: number }[]) =>
    edge.map(({ at, value }) => `${x(at)},${y(value)}`).join(' ');
  const lower = (band?.points ?? []).map(({ at, low: value }) => ({ at, value }));
  const upper = (band?.points ?? []).map(({ at, high: value }) => ({ at, value }));
  return (
    <figure className={styles['chart']} ref={element}>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={heard}>
        <pattern id={hatchId} width="6" height="6" patternUnits="userSpaceOnUse">
          <path d="M-1,7 L7,-1 M-1,1 L1,-1 M5,7 L7,5" className={styles['hatch']} />
        </pattern>
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
        {band && (
          <g className={styles['band']}>
            <polygon points={`${along(lower)} ${along([...upper].reverse())}`} fill={hatch} />
            <polyline points={along(lower)} />
            <polyline points={along(upper)} />
          </g>
        )}
        {levels.map(({ name: level, value, isLimit }) => (
          <g key={level} className={styles[isLimit ? 'limit' : 'level']}>
            <line x1={left} x2={width} y1={y(value)} y2={y(value)} />
            <text x={width} y={y(value) - 4} textAnchor="end">
              {level}
            </text>
          </g>
        ))}
        {lines.map(({ name: line, look, points: own, hasDots }) => (
          <g key={line} className={styles[look]}>
            <polyline points={along(own)} />
            {(hasDots === true || own.length === 1) &&
              own.map(({ at, value }) => <circle key={at} cx={x(at)} cy={y(value)} r="3.5" />)}
          </g>
        ))}
        {marks.map(({ name: mark, at, value }) => (
          <g key={mark} className={styles['mark']}>
            <line x1={x(at)} x2={x(at)} y1={value === undefined ? top : y(value)} y2={bottom} />
            {value !== undefined && <circle cx={x(at)} cy={y(value)} r="4" />}
            {value === undefined ? (
              <text x={x(at)} y={top - 3} textAnchor={x(at) < left + 30 ? 'start' : 'middle'}>
                {mark}
              </text>
            ) : (
              <text
                x={x(at) + (x(at) > width / 3 ? -7 : 7)}
                y={y(value) - 5}
                textAnchor={x(at) > width / 3 ? 'end' : 'start'}
              >
                {mark}
              </text>
            )}
          </g>
        ))}
        <line className={styles['floor']} x1={left} x2={width} y1={bottom} y2={bottom} />
      </svg>
      {(lines.length > 1 || band) && <ChartKey lines={lines} band={band} hatch={hatch} />}
      <ChartTable {...{ name, lines, band, writeTime, writeValue }} />
    </figure>
  );
}
