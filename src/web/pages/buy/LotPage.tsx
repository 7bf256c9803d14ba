import { Link, useParams } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { OneLotDocument, type ShownLotLineFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { buttonClass } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { Sheet } from '../../parts/Sheet.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import form from '../../parts/Form.module.css';

/** A lot that came in: what of its price and costs falls to each thing in it, and how. */
export function LotPage() {
  const { id } = useParams({ from: '/lots/$id' });
  const { buy, frame, set } = useTexts();
  useTitle(buy.lot);
  const formats = useFormats();
  const [{ data, error }, fetchAgain] = useLiveQuery({ query: OneLotDocument, variables: { id } });
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const lot = data.node?.__typename === 'Acquisition' ? data.node : null;
  if (!lot) return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
  const sum = (amounts: readonly { amount: string; currency: string }[]) =>
    amounts.map((amount) => formats.money(amount)).join(' + ') || '–';
  const known = [formats.localDay(lot.acquiredOn), lot.venue, lot.otherParty?.name];
  const [first] = lot.lines.nodes;
  return (
    <>
      <h1>{buy.lot}</h1>
      <p className={form['soft']}>{known.filter(Boolean).join(' · ')}</p>
      <div className={form['wide']}>
        <Sheet
          id="shares"
          title={buy.fellTo}
          aside={first && <BasisButton of={buy.fellTo} basis={first.basis} />}
        >
          <Table
            name={buy.fellTo}
            head={
              <tr>
                <th scope="col">{buy.thing}</th>
                {[set.price, set.extras, set.total].map((column) => (
                  <th key={column} scope="col" className={figureCell}>
                    {column}
                  </th>
                ))}
              </tr>
            }
          >
            {lot.lines.nodes.map((line) => (
              <tr key={line.id}>
                <th scope="row">
                  <Thing line={line} />
                </th>
                <td className={figureCell}>{formats.money(line.price)}</td>
                <td className={figureCell}>{sum(line.extras)}</td>
                <td className={figureCell}>{sum(line.totals)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{buy.wholeLot}</th>
              <td className={figureCell}>{formats.money(lot.price)}</td>
              <td className={figureCell}>
                {lot.extraCosts
                  .map(({ description, amount }) => `${description} ${formats.money(amount)}`)
                  .join(', ') || '–'}
              </td>
              <td className={figureCell}>{sum(lot.totals)}</td>
            </tr>
          </Table>
          {lot.lines.totalCount > lot.lines.nodes.length && (
            <p>{buy.moreLines(lot.lines.totalCount - lot.lines.nodes.length)}</p>
          )}
        </Sheet>
        {(lot.claims.nodes.length > 0 || lot.note) && (
          <Sheet title={buy.claims}>
            <ul>
              {lot.claims.nodes.map(({ id: claimId, statement }) => (
                <li key={claimId}>{statement}</li>
              ))}
            </ul>
            {lot.note && <p>{lot.note}</p>}
          </Sheet>
        )}
        <div className={form['buttons']} data-print="no">
          <Link className={buttonClass()} to="/buy">
            {buy.another}
          </Link>
        </div>
      </div>
    </>
  );
}

function Thing({ line }: { line: ShownLotLineFragment }) {
  const { intake } = useTexts();
  if (!line.item) return line.sundries;
  const number = line.item.inventoryNumber;
  return (
    <>
      <Link to="/sets/$number" params={{ number }}>
        {[number, line.item.name].filter(Boolean).join(' ')}
      </Link>{' '}
      <Link to="/intake/$number" params={{ number }} aria-label={`${intake.lookOver}: ${number}`}>
        {intake.lookOver}
      </Link>
    </>
  );
}
