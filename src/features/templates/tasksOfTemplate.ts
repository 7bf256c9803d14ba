import { recordId } from '../../api/kit/globalId.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { shippedTemplates } from './shippedTemplates.js';
import { TaskTemplateEntity } from './taskTemplate.entity.js';
import type { TemplateTask } from './templateTask.js';

/** The tasks of a template, shipped or own. @throws Refusal NOT_FOUND */
export async function tasksOfTemplate(
  work: UnitOfWork,
  templateId: string,
): Promise<TemplateTask[]> {
  const path = ['templateId'];
  const id = recordId('TaskTemplate', templateId, path);
  const shipped = shippedTemplates.find((template) => template.id === id);
  if (shipped) return shipped.tasks;
  const own = await work.manager.findOneBy(TaskTemplateEntity, { id });
  if (!own) throw Refusal.notFound('task template', path);
  return own.tasks;
}
