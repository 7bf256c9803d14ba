import { ucumUnit } from '../../locale/ucumUnit.js';
import { withUnit } from '../../locale/writtenUnit.js';
import { Button } from '../../parts/Button.js';
import { figureCell, Table } from '../../parts/Table.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import type { MeasuredPlace } from './measuredPlaces.js';
import { rowVerdict } from './rowVerdict.js';
import { columnsOf, placeNamed, valuesOf, type SweepDraft, type SweptRow } from './sweepDraft.js';
import { VerdictWords } from './VerdictWords.js';
import styles from './SweepRows.module.css';

/** The rows taken and not written down yet, each with its verdict; then those that are. */
export function SweepRows({
  draft,
  places,
  again,
  drop,
}: {
  draft: SweepDraft;
  places: readonly MeasuredPlace[];
  again: (row: SweptRow) => void;
  drop: (designator: string) => void;
}) {
  const { bench } = useTexts();
  const head = (
    <tr>
      <th scope="col">{bench.position}</th>
      <th scope="col" className={figureCell}>
        {bench.value}
      </th>
      <th scope="col">{bench.verdict}</th>
    </tr>
  );
  return (
    <>
      {draft.rows.length === 0 && draft.kept.length === 0 && <p>{bench.noRows}</p>}
      {draft.rows.length > 0 && (
        <Table name={bench.rows} head={head}>
          {draft.rows.map((row) => {
            const word = rowVerdict(draft, row, placeNamed(places, row.designator));
            const values = valuesOf(row, draft);
            return (
              <tr key={row.designator}>
                <th scope="row">{row.designator}</th>
                <td className={figureCell}>
                  {columnsOf(draft)
                    .flatMap(({ unit }, index) =>
                      values[index] ? withUnit(values[index], ucumUnit(unit)) : [],
                    )
                    .join(' · ')}
                </td>
                <td>
                  <div className={styles['said']}>
                    {word ? <VerdictWords word={word} /> : bench.otherUnit}
                    <Button
                      weight="quiet"
                      aria-label={`${bench.mend}: ${row.designator}`}
                      onClick={() => {
                        again(row);
                      }}
                    >
                      {bench.mend}
                    </Button>
                    <Button
                      weight="quiet"
                      aria-label={`${bench.drop}: ${row.designator}`}
                      onClick={() => {
                        drop(row.designator);
                      }}
                    >
                      {bench.drop}
                    </Button>
                  </div>
                  {row.said.map((message) => (
                    <p key={message} className={styles['problem']} {...fromApi}>
                      {message}
                    </p>
                  ))}
                </td>
              </tr>
            );
          })}
        </Table>
      )}
      {draft.kept.length > 0 && (
        <>
          <h3>{bench.earlier}</h3>
          <Table name={bench.earlier} head={head}>
            {draft.kept.map(({ designator, value, word }, index) => (
              <tr key={designator + String(index)}>
                <th scope="row">{designator}</th>
                <td className={figureCell}>{value}</td>
                <td>
                  <VerdictWords word={word} />
                </td>
              </tr>
            ))}
          </Table>
        </>
      )}
    </>
  );
}
