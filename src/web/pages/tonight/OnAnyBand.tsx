import { useLiveQuery } from '../../api/useLiveQuery.js';
import { TonightDocument } from '../../gql/graphql.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTexts } from '../../texts/textsContext.js';
import { bandsOf } from './bandsOf.js';
import { LeftOut } from './LeftOut.js';
import { OnTheAir } from './OnTheAir.js';
import styles from './TonightPage.module.css';

/** The sets that may go on the air at once, on whatever band; what the others lack. */
export function OnAnyBand() {
  const { tonight } = useTexts();
  const [{ data, error }, fetchAgain] = useLiveQuery({ query: TonightDocument, variables: {} });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const { served, leftOut, readyAtOnce, basis } = data.shack;
  return (
    <>
      <section aria-labelledby="on-the-air">
        <h2 id="on-the-air" className={styles['head']}>
          {tonight.onTheAir(readyAtOnce)}
          <BasisButton of={tonight.atOnce} basis={basis} />
        </h2>
        <p className={styles['licence']}>{tonight.licence}</p>
        {served.length > 0 ? (
          <OnTheAir
            sets={served.map((each) => ({
              ...each,
              what: bandsOf(each.rig.model?.capabilities ?? []) || tonight.noBands,
            }))}
          />
        ) : (
          <Notice title={tonight.noneTitle} help={tonight.noneHelp} />
        )}
      </section>
      <LeftOut title={tonight.silent} leftOut={leftOut} />
    </>
  );
}
