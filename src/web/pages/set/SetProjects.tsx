import { Link } from '@tanstack/react-router';
import { useFormats } from '../../locale/useFormats.js';
import { buttonClass } from '../../parts/Button.js';
import { Meter } from '../../parts/Meter.js';
import { Sheet } from '../../parts/Sheet.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';
import { ProjectOutlook } from './ProjectOutlook.js';
import type { ShownSet } from './SetPage.js';

/** What is left to do on it, restoration by restoration. */
export function SetProjects({ item }: { item: ShownSet }) {
  const { plan, set, shelf, words } = useTexts();
  const formats = useFormats();
  const toPlan = (
    <Link
      to="/sets/$number/plan"
      params={{ number: item.inventoryNumber }}
      {...(item.projects.length === 0 && { className: buttonClass() })}
    >
      {plan.toPlan}
    </Link>
  );
  return (
    <Sheet id="left" title={set.left} aside={item.projects.length > 0 && toPlan}>
      {item.projects.length === 0 && (
        <>
          <p>{set.noProjects}</p>
          <p data-print="no">{toPlan}</p>
        </>
      )}
      {item.projects.map((project) => {
        const about = [
          words.projectStatus[project.status],
          set.target(words.standard[project.targetStandard]),
          project.ceiling && set.ceiling(formats.money(project.ceiling)),
          project.ceilingHours !== null && set.ceiling(formats.hours(project.ceilingHours)),
        ].filter(Boolean);
        const { share } = project.completion;
        return (
          <section key={project.id}>
            <h3>{project.title}</h3>
            <p>{about.join(' · ')}</p>
            {project.decision && <p>{project.decision}</p>}
            <Meter
              share={share}
              words={share === null ? shelf.noTasks : shelf.done(formats.share(share))}
            />
            {project.tasks.nodes.length > 0 && (
              <Table
                name={project.title}
                head={
                  <tr>
                    <th scope="col">{set.columns.task}</th>
                    <th scope="col">{set.columns.state}</th>
                    <th scope="col" className={figureCell}>
                      {set.columns.estimate}
                    </th>
                  </tr>
                }
              >
                {project.tasks.nodes.map((task) => (
                  <tr key={task.id}>
                    <th scope="row">{task.title}</th>
                    <td>
                      {words.taskStatus[task.status]}
                      {task.status === 'NOT_STARTED' && task.isReady && `, ${set.doable}`}
                    </td>
                    <td className={figureCell}>
                      {formats.number(task.estimate.optimisticHours)}–
                      {formats.number(task.estimate.likelyHours)}–
                      {formats.hours(task.estimate.pessimisticHours)}
                    </td>
                  </tr>
                ))}
              </Table>
            )}
            {project.tasks.nodes.length > 0 && (
              <ProjectOutlook
                id={String(project.id)}
                title={project.title}
                isOpen={project.status === 'ACTIVE' || project.status === 'PLANNED'}
              />
            )}
          </section>
        );
      })}
    </Sheet>
  );
}
