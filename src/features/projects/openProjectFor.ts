import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { isClosed } from './isClosed.js';
import { ProjectEntity } from './project.entity.js';

/**
 * The project that something is to be added to.
 * @throws Refusal when it is not there, or closed.
 */
export async function openProjectFor(
  work: UnitOfWork,
  id: string,
  path: string[],
): Promise<ProjectEntity> {
  const project = await work.manager.findOneBy(ProjectEntity, { id });
  if (!project) throw Refusal.notFound('project', path);
  if (!isClosed(project.status)) return project;
  throw Refusal.conflict(
    `The project “${project.title}” is ${project.status.toLowerCase()}. Set it active again first.`,
    path,
  );
}
