import { useState } from 'react';
import { useTexts } from '../texts/textsContext.js';
import type { ChartBand, ChartLine } from './chartLine.js';
import { figureCell, Table } from './Table.js';

/** The figures of a picture, for those who do not see it or want to read them off. */
export function ChartTable({
  name,
  lines,
  band,
  writeTime,
  writeValue,
}: {
  name: string;
  lines: readonly ChartLine[];
  band?: ChartBand | undefined;
  writeTime: (at: number) => string;
  writeValue: (value: number) => string;
}) {
  const { frame } = useTexts();
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details
      data-print="no"
      onToggle={(event) => {
        setIsOpen(event.currentTarget.open);
      }}
    >
      <summary>{frame.figuresAsTable}</summary>
      {isOpen && (
        <Table
          name={name}
          head={
            <tr>
              <th scope="col">{frame.when}</th>
              {[...lines, ...(band ? [band] : [])].map((each) => (
                <th key={each.name} scope="col" className={figureCell}>
                  {each.name}
                </th>
              ))}
            </tr>
          }
        >
          {timesOf(lines, band).map((at) => {
            const between = band?.points.find((point) => point.at === at);
            return (
              <tr key={at}>
                <th scope="row">{writeTime(at)}</th>
                {lines.map(({ name: line, points }) => {
                  const point = points.find((each) => each.at === at);
                  return (
                    <td key={line} className={figureCell}>
                      {point && writeValue(point.value)}
                    </td>
                  );
                })}
                {band && (
                  <td className={figureCell}>
                    {between && `${writeValue(between.low)}–${writeValue(between.high)}`}
                  </td>
                )}
              </tr>
            );
          })}
        </Table>
      )}
    </details>
  );
}

const timesOf = (lines: readonly ChartLine[], band: ChartBand | undefined): number[] =>
  [
    ...new Set(
      [...lines, ...(band ? [band] : [])].flatMap(({ points }) => points.map((p) => p.at)),
    ),
  ].sort((x, y) => x - y);
