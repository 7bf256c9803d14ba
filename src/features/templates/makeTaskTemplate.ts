import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readTemplateTasks } from './readTemplateTasks.js';
import type { MakeTaskTemplateInput } from './taskTemplate.inputs.js';
import { TaskTemplateEntity } from './taskTemplate.entity.js';
import { tasksOfProject } from './tasksOfProject.js';
import { tasksOfTemplate } from './tasksOfTemplate.js';
import type { TemplateTask } from './templateTask.js';

export async function makeTaskTemplate(
  work: UnitOfWork,
  input: MakeTaskTemplateInput,
): Promise<string> {
  const { projectId, templateId, tasks } = input;
  const check = new Checklist(work);
  const title = check.words(input.title, ['title']);
  const description = check.text(input.description, ['description']);
  const sources = [projectId, templateId, tasks].filter(
    (source) => source !== null && source !== undefined,
  );
  check.that(
    sources.length === 1,
    'Say what it is made from: one of a project, a template, or tasks.',
    ['projectId'],
  );
  const given = tasks ? readTemplateTasks(check, tasks) : [];
  check.done();
  const made = await tasksFrom(work, input, given);
  const template = await insertRow(work, TaskTemplateEntity, {
    title,
    description,
    itemKind: input.itemKind ?? null,
    sourceProjectId: made.projectId,
    tasks: made.tasks,
    retiredAt: null,
  });
  return template.id;
}

async function tasksFrom(
  work: UnitOfWork,
  { projectId, templateId }: MakeTaskTemplateInput,
  given: TemplateTask[],
): Promise<{ projectId: string | null; tasks: TemplateTask[] }> {
  if (projectId) return tasksOfProject(work, projectId);
  if (templateId) return { projectId: null, tasks: await tasksOfTemplate(work, templateId) };
  return { projectId: null, tasks: given };
}
