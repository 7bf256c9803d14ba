import { useEffect, useMemo } from 'react';
import { buttonClass } from '../../parts/Button.js';
import { figureCell, Table } from '../../parts/Table.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { problemsAsCsv, type PlacedProblem } from './problemsAsCsv.js';

const shown = 200;

/** What is wrong, line by line; all of it can be downloaded. */
export function ImportProblems({
  count,
  problems,
  placeHeading,
  placeName = 'column',
}: {
  count: number;
  problems: readonly PlacedProblem[];
  /** What is counted within a line; a column if left out. */
  placeHeading?: string;
  /** The same in the file that is downloaded, for other programs. */
  placeName?: string;
}) {
  const { bringList } = useTexts();
  const address = useMemo(
    () => URL.createObjectURL(new Blob([problemsAsCsv(problems, placeName)], { type: 'text/csv' })),
    [problems, placeName],
  );
  useEffect(
    () => () => {
      URL.revokeObjectURL(address);
    },
    [address],
  );
  return (
    <section>
      <h2>{bringList.problems(count)}</h2>
      <p>
        <a className={buttonClass()} href={address} download="problems.csv">
          {bringList.fetchProblems}
        </a>
      </p>
      <Table
        name={bringList.problems(count)}
        head={
          <tr>
            <th scope="col" className={figureCell}>
              {bringList.line}
            </th>
            <th scope="col">{placeHeading ?? bringList.column}</th>
            <th scope="col">{bringList.mend}</th>
          </tr>
        }
      >
        {problems.slice(0, shown).map(({ line, column, message }, index) => (
          <tr key={index}>
            <td className={figureCell}>{line ?? '–'}</td>
            <td>{column ?? '–'}</td>
            <td {...fromApi}>{message}</td>
          </tr>
        ))}
      </Table>
    </section>
  );
}
