import { useLiveQuery } from '../../api/useLiveQuery.js';
import { TonightDocument, type TonightQuery } from '../../gql/graphql.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { LeftOut } from './LeftOut.js';
import { NextSteps } from './NextSteps.js';
import { OnTheAir } from './OnTheAir.js';
import { Timers } from './Timers.js';
import styles from './TonightPage.module.css';

export type TonightShack = TonightQuery['shack'];

/** What may go on the air, what nearly could, the timer, and what to do with the hour there is. */
export function TonightPage() {
  const { tonight } = useTexts();
  useTitle(tonight.title);
  const [{ data, error }, fetchAgain] = useLiveQuery({ query: TonightDocument, variables: {} });
  return (
    <>
      <h1 className={styles['title']}>{tonight.title}</h1>
      <Timers />
      {error && !data && <Failed error={error} retry={fetchAgain} />}
      {!data && !error && <Loading />}
      {data && (
        <>
          <section aria-labelledby="on-the-air">
            <h2 id="on-the-air" className={styles['head']}>
              {tonight.onTheAir(data.shack.readyAtOnce)}
              <BasisButton of={tonight.atOnce} basis={data.shack.basis} />
            </h2>
            <p className={styles['licence']}>{tonight.licence}</p>
            {data.shack.served.length > 0 ? (
              <OnTheAir shack={data.shack} />
            ) : (
              <Notice title={tonight.noneTitle} help={tonight.noneHelp} />
            )}
          </section>
          <div className={styles['below']}>
            <NextSteps />
            <LeftOut shack={data.shack} />
          </div>
        </>
      )}
    </>
  );
}
