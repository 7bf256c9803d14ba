import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { keepPlan } from './keepPlan.js';
import { readPlans, readQueue } from './plans.reads.js';
import type { MoveProjectUpInput, SetProjectPriorityInput } from './projectPlan.inputs.js';

export async function setProjectPriority(
  work: UnitOfWork,
  input: SetProjectPriorityInput,
): Promise<string> {
  const id = recordId('Project', input.projectId, ['projectId']);
  const queue = await queueOf(work, id);
  const check = new Checklist(work);
  const { place } = input;
  check.that(
    place >= 1 && place <= queue.length,
    `Give a place from 1 to ${queue.length}: so many projects wait for the same person.`,
    ['place'],
  );
  check.done();
  await keepOrder(work, queue, id, place);
  return id;
}

export async function moveProjectUp(work: UnitOfWork, input: MoveProjectUpInput): Promise<string> {
  const id = recordId('Project', input.projectId, ['projectId']);
  const queue = await queueOf(work, id);
  const place = queue.indexOf(id);
  if (place === 0) throw Refusal.conflict('This project comes first already.', ['projectId']);
  await keepOrder(work, queue, id, place);
  return id;
}

/** The queue that a project waits in, while nobody else can change its order. */
async function queueOf(work: UnitOfWork, id: string): Promise<string[]> {
  await oneAtATime(work, 'the queue of projects');
  const source = rowSourceInWork(work);
  const [project] = await readPlans(source, [id]);
  if (!project) throw Refusal.notFound('project', ['projectId']);
  const queue = (await readQueue(source, project.personId)).map((each) => each.id);
  if (queue.includes(id)) return queue;
  throw Refusal.conflict(
    `The project “${project.title}” is ${project.status.toLowerCase()} and waits for nobody. Set it planned or active first.`,
    ['projectId'],
  );
}

async function keepOrder(
  work: UnitOfWork,
  queue: readonly string[],
  id: string,
  place: number,
): Promise<void> {
  const order = queue.filter((other) => other !== id);
  order.splice(place - 1, 0, id);
  for (const [index, projectId] of order.entries()) {
    await keepPlan(work, projectId, null, { priority: index + 1 });
  }
}
