import { Link, useParams } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { ProvenancePageDocument, type ProvenancePageQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTitle } from '../../parts/useTitle.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { ChainAxis } from './ChainAxis.js';
import { ChainEvents } from './ChainEvents.js';
import styles from './ProvenancePage.module.css';

export type ShownProvenance = NonNullable<ProvenancePageQuery['item']>['provenance'];

/** Where one set came from, on a time axis: uncertain dates as bands, gaps as gaps. */
export function ProvenancePage() {
  const { number } = useParams({ from: '/sets/$number/provenance' });
  const { provenance, frame } = useTexts();
  const formats = useFormats();
  useTitle(provenance.titleOf(number));
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: ProvenancePageDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const { item } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
  const { chain, contradictions, basis, dates } = item.provenance;
  const { certainShare, possibleShare } = chain;
  return (
    <article className={styles['page']}>
      <header>
        <p>
          <Link to="/sets/$number" params={{ number }}>
            {item.inventoryNumber} {item.name}
          </Link>
        </p>
        <h1>
          {provenance.title}
          <BasisButton of={provenance.title} basis={basis} />
        </h1>
      </header>
      {(contradictions.length > 0 || dates.conflict.length > 0) && (
        <section className={styles['contradictions']}>
          <h2>{provenance.contradictions}</h2>
          <ul>
            {contradictions.map(({ message }) => (
              <li key={message} {...fromApi}>
                {message}
              </li>
            ))}
            {dates.conflict.map(({ statement }) => (
              <li key={statement} {...fromApi}>
                {statement}
              </li>
            ))}
          </ul>
        </section>
      )}
      <Sheet title={provenance.axis}>
        <ChainAxis shown={item.provenance} />
        {certainShare !== null && possibleShare !== null && (
          <p>{provenance.coverage(formats.share(certainShare), formats.share(possibleShare))}</p>
        )}
        {chain.gaps.length > 0 && (
          <ul>
            {chain.gaps.map(({ from, to, daysAtLeast, daysAtMost }) => (
              <li key={from}>
                {provenance.gap(
                  formats.localDay(from),
                  formats.localDay(to),
                  formats.number(daysAtLeast / 365.25, 1),
                  formats.number(daysAtMost / 365.25, 1),
                )}
              </li>
            ))}
          </ul>
        )}
        {dates.making && (
          <p>
            {provenance.madeBetween(
              dates.making.earliest ? formats.localDay(dates.making.earliest) : '…',
              dates.making.latest ? formats.localDay(dates.making.latest) : '…',
            )}
          </p>
        )}
      </Sheet>
      <Sheet title={provenance.events}>
        <ChainEvents shown={item.provenance} />
      </Sheet>
    </article>
  );
}
