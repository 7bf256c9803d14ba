import type { PlannedProjectFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Meter } from '../../parts/Meter.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import { isOpen } from '../set/isOpen.js';
import { ChangeProject } from './ChangeProject.js';
import { Fold } from './Fold.js';
import { KeptPlans } from './KeptPlans.js';
import { OrderOfWork } from './OrderOfWork.js';
import { ProjectStanding } from './ProjectStanding.js';
import { TaskList } from './TaskList.js';
import styles from './PlanPage.module.css';

/** One restoration: what it aims at and how far it is, its tasks, and the forms that change it. */
export function ProjectSheet({
  project,
  number,
  homeCurrency,
  fetchAgain,
}: {
  project: PlannedProjectFragment;
  number: string;
  homeCurrency: string;
  fetchAgain: () => void;
}) {
  const { plan, set, shelf, words } = useTexts();
  const formats = useFormats();
  const { id, title, status, completion, remaining } = project;
  const about = [
    words.projectStatus[status],
    set.target(words.standard[project.targetStandard]),
    project.ceiling && set.ceiling(formats.money(project.ceiling)),
    project.ceilingHours !== null && set.ceiling(formats.hours(project.ceilingHours)),
  ].filter(Boolean);
  const { share } = completion;
  return (
    <Sheet title={title}>
      <div className={styles['both']}>
        <div className={styles['aims']}>
          <p>{about.join(' · ')}</p>
          {project.decision && <p className={styles['decision']}>{project.decision}</p>}
          <div className={styles['figures']}>
            <div className={styles['figure']}>
              <Meter
                share={share}
                words={share === null ? shelf.noTasks : shelf.done(formats.share(share))}
              />
              <BasisButton of={`${title}: ${set.figures.completion}`} basis={completion.basis} />
            </div>
            {remaining.openTasks > 0 && (
              <p className={styles['figure']}>
                <span>
                  {set.figures.remaining}: {formats.hours(remaining.p50Hours)},{' '}
                  {set.fairlySure(formats.hours(remaining.p80Hours))}
                </span>
                <BasisButton of={`${title}: ${set.figures.remaining}`} basis={remaining.basis} />
              </p>
            )}
          </div>
          <div className={styles['folds']} data-print="no">
            <Fold title={plan.change} drafts={[`plan.project.${id}`]}>
              <ChangeProject
                project={project}
                homeCurrency={homeCurrency}
                fetchAgain={fetchAgain}
              />
            </Fold>
            <Fold title={plan.standing} drafts={[`plan.standing.${id}`]}>
              <ProjectStanding project={project} fetchAgain={fetchAgain} />
            </Fold>
            <Fold title={plan.keptPlans} drafts={[`plan.baseline.${id}`]}>
              <KeptPlans project={project} fetchAgain={fetchAgain} />
            </Fold>
            {isOpen(status) && status !== 'DEFERRED' && (
              <Fold title={plan.order}>
                <OrderOfWork project={project} />
              </Fold>
            )}
          </div>
        </div>
        <TaskList project={project} number={number} />
      </div>
    </Sheet>
  );
}
