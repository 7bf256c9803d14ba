import { Link, useParams } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { PlannedSetDocument } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { isOpen } from '../set/isOpen.js';
import { Fold } from './Fold.js';
import { OpenProject } from './OpenProject.js';
import { ProjectSheet } from './ProjectSheet.js';
import styles from './PlanPage.module.css';

/** What is to come of a set: its restorations, those under way first, and the tasks of each. */
export function PlanPage() {
  const { number } = useParams({ from: '/sets/$number/plan' });
  const { frame, plan } = useTexts();
  useTitle(plan.titleOf(number));
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: PlannedSetDocument,
    variables: { number },
  });
  const fetchNow = () => {
    fetchAgain({ requestPolicy: 'network-only' });
  };
  if (error && !data) return <Failed error={error} retry={fetchNow} isWholePage />;
  if (!data) return <Loading />;
  const { item, collection } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
  const { homeCurrency } = collection;
  const projects = [
    ...item.projects.filter(({ status }) => isOpen(status)),
    ...item.projects.filter(({ status }) => !isOpen(status)),
  ];
  const isFirst = projects.length === 0;
  return (
    <>
      <p>
        <Link to="/sets/$number" params={{ number: item.inventoryNumber }}>
          {[item.inventoryNumber, item.name].filter(Boolean).join(' ')}
        </Link>
      </p>
      <h1 className={styles['title']}>{plan.title}</h1>
      <div className={styles['sheets']}>
        {projects.map((project) => (
          <ProjectSheet
            key={project.id}
            project={project}
            number={item.inventoryNumber}
            homeCurrency={homeCurrency}
            fetchAgain={fetchNow}
          />
        ))}
        <section className={styles['opening']} data-print="no">
          {isFirst && <p>{plan.none}</p>}
          <Fold
            key={item.id}
            title={isFirst ? plan.open : plan.openAnother}
            drafts={[`plan.open.${item.id}`]}
            isOpenAtFirst={isFirst}
          >
            <OpenProject itemId={String(item.id)} homeCurrency={homeCurrency} isFirst={isFirst} />
          </Fold>
        </section>
      </div>
    </>
  );
}
