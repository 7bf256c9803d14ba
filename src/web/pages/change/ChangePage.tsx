import { Link, useParams } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { ChangeSetDocument, type ChangeSetQuery } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { ChangeData } from './ChangeData.js';
import { ChangeOutlook } from './ChangeOutlook.js';
import { MoveSet } from './MoveSet.js';
import styles from './ChangePage.module.css';

export type ChangedSet = NonNullable<ChangeSetQuery['item']>;

/** What is written down of a set, to be changed: its data, where it stands, what its owner says of it. */
export function ChangePage() {
  const { number } = useParams({ from: '/sets/$number/change' });
  const { frame, change } = useTexts();
  useTitle(change.titleOf(number));
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: ChangeSetDocument,
    variables: { number },
  });
  const fetchNow = () => {
    fetchAgain({ requestPolicy: 'network-only' });
  };
  if (error && !data) return <Failed error={error} retry={fetchNow} isWholePage />;
  if (!data) return <Loading />;
  const { item, places, collection } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
  const name = [item.inventoryNumber, item.name].filter(Boolean).join(' ');
  return (
    <>
      <p>
        <Link to="/sets/$number" params={{ number: item.inventoryNumber }}>
          {name}
        </Link>
      </p>
      <h1 className={styles['title']}>{change.title}</h1>
      <div className={styles['parts']}>
        <ChangeData key={item.id} item={item} fetchAgain={fetchNow} />
        <div className={styles['row']}>
          <MoveSet key={item.id} item={item} places={places.nodes} />
          <ChangeOutlook
            key={`outlook ${item.id}`}
            item={item}
            homeCurrency={collection.homeCurrency}
            fetchAgain={fetchNow}
          />
        </div>
      </div>
    </>
  );
}
