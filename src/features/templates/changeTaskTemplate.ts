import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readTemplateTasks } from './readTemplateTasks.js';
import { shippedTemplates } from './shippedTemplates.js';
import type { ChangeTaskTemplateInput } from './taskTemplate.inputs.js';
import { TaskTemplateEntity } from './taskTemplate.entity.js';

export async function changeTaskTemplate(
  work: UnitOfWork,
  input: ChangeTaskTemplateInput,
): Promise<string> {
  const id = recordId('TaskTemplate', input.id);
  if (shippedTemplates.some((template) => template.id === id)) {
    throw Refusal.conflict(
      'This template comes with the program. Make one of your own from it (makeTaskTemplate) and change that.',
      ['id'],
    );
  }
  const { title, description, itemKind, tasks, isRetired } = input;
  const check = new Checklist(work);
  const changes = {
    ...(typeof title === 'string' && { title: check.words(title, ['title']) }),
    ...(description !== undefined && { description: check.text(description, ['description']) }),
    ...(itemKind !== undefined && { itemKind }),
    ...(tasks && { tasks: readTemplateTasks(check, tasks) }),
    ...(typeof isRetired === 'boolean' && { retiredAt: isRetired ? work.now : null }),
  };
  check.done();
  await changeRow(work, TaskTemplateEntity, id, input.version, changes);
  return id;
}
