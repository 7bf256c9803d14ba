import { Link, useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { SetBringUpsDocument, type SetBringUpsQuery } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { BringUpRun } from './BringUpRun.js';
import { EarlierRuns } from './EarlierRuns.js';
import { StartBringUp } from './StartBringUp.js';
import styles from './BringUpPage.module.css';

export type BroughtUpSet = NonNullable<SetBringUpsQuery['item']>;

/** Bringing a set up step by step: the run in hand, or the choice of a procedure, and the earlier runs. */
export function BringUpPage() {
  const { number } = useParams({ from: '/sets/$number/bring-up' });
  const { run: asked } = useSearch({ from: '/sets/$number/bring-up' });
  const navigate = useNavigate();
  const { bringUp, frame } = useTexts();
  useTitle(bringUp.titleOf(number));
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetBringUpsDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const { item } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
  const runs = item.bringUps.nodes;
  const inHand = runs.find(({ status }) => status === 'UNDER_WAY' || status === 'STOPPED');
  const shown = asked ?? inHand?.id;
  const name = [item.inventoryNumber, item.name].filter(Boolean).join(' ');
  const show = (run: string) => {
    void navigate({
      to: '/sets/$number/bring-up',
      params: { number },
      search: { run },
      replace: true,
    });
  };
  return (
    <article className={styles['page']}>
      <p>
        <Link to="/sets/$number" params={{ number: item.inventoryNumber }}>
          {name}
        </Link>
      </p>
      <h1>{bringUp.title}</h1>
      <p className={styles['defer']}>{bringUp.defer}</p>
      {inHand && shown !== inHand.id && (
        <p>
          <Link to="/sets/$number/bring-up" params={{ number }} search={{ run: inHand.id }}>
            {bringUp.toRunInHand(inHand.procedure.title)}
          </Link>
        </p>
      )}
      {shown === undefined ? (
        <StartBringUp
          key={item.id}
          item={item}
          procedures={data.bringUpProcedures}
          onStarted={show}
        />
      ) : (
        <BringUpRun key={shown} id={shown} number={item.inventoryNumber} onWritten={show} />
      )}
      {shown !== undefined && !inHand && (
        <p>
          <Link to="/sets/$number/bring-up" params={{ number }} search={{}}>
            {bringUp.beginAnother}
          </Link>
        </p>
      )}
      <EarlierRuns runs={runs.filter(({ id }) => id !== shown)} number={item.inventoryNumber} />
    </article>
  );
}
