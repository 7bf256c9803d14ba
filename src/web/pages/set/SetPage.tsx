import { useParams } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { OneSetDocument, type OneSetQuery } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { SetChecks } from './checks/SetChecks.js';
import { SetFindings } from './findings/SetFindings.js';
import { SetDossier } from './SetDossier.js';
import { SetHazards } from './SetHazards.js';
import { SetHead } from './SetHead.js';
import { SetMoney } from './SetMoney.js';
import { SetPlan } from './SetPlan.js';
import { SetProjects } from './SetProjects.js';
import { SetStanding } from './SetStanding.js';
import { SetWorth } from './SetWorth.js';
import { SetTrends } from './SetTrends.js';
import { SetUse } from './SetUse.js';
import { SetStory } from './SetStory.js';
import styles from './SetPage.module.css';

export type ShownSet = NonNullable<OneSetQuery['item']>;

/** One set or accessory: standing first, hazards before all else, then plan, work, money and story. */
export function SetPage() {
  const { number } = useParams({ from: '/sets/$number' });
  const { frame } = useTexts();
  useTitle(number);
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: OneSetDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const { item } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
  return (
    <article className={styles['page']}>
      <SetHead item={item} />
      <SetHazards item={item} />
      <div className={styles['row']}>
        <SetStanding item={item} />
        <SetChecks number={number} hazards={item.hazards} />
        <SetProjects item={item} />
        <SetTrends number={number} />
      </div>
      <div className={styles['row']}>
        <SetPlan key={item.id} item={item} />
        <SetFindings number={number} />
        <SetMoney item={item} />
        <SetWorth number={number} projects={item.projects} />
        <SetDossier number={number} />
        <SetUse number={number} />
      </div>
      <SetStory number={number} />
    </article>
  );
}
