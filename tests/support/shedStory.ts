import { globalId } from '../../src/api/kit/globalId.js';
import { insertRow } from '../../src/db/insertRow.js';
import type { UnitOfWork } from '../../src/db/unitOfWork.js';
import { CollectionEntity } from '../../src/features/collection/collection.entity.js';
import { ItemEntity } from '../../src/features/items/item.entity.js';
import { PartyEntity } from '../../src/features/parties/party.entity.js';
import type { TestApi } from './testApi.js';

/** A collector, a helper and two rigs; and short ways to tell of projects, tasks and sessions. */
export interface ShedStory {
  personId: string;
  helperId: string;
  rigId: string;
  otherRigId: string;
  project(title: string, itemId?: string): Promise<string>;
  tryToAddTasks(projectId: string, tasks: object[]): Promise<any>;
  /** @returns ids in the order given; each task is estimated 1, 2, 3 hours unless said. */
  tasks(projectId: string, tasks: object[]): Promise<string[]>;
  /** @returns the payload. */
  session(input: object): Promise<any>;
}

const estimate = { optimisticHours: 1, likelyHours: 2, pessimisticHours: 3 };

export async function shedStory(api: TestApi): Promise<ShedStory> {
  const act = { action: 'story', actorId: null, now: new Date(api.nowMs).toISOString() };
  const ids = await api.database.write(act, async (work) => {
    const [personId, helperId] = [await person(work, 'Ilse'), await person(work, 'Bruno')];
    await insertRow(work, CollectionEntity, {
      name: 'The shed',
      ownerId: personId,
      homeCurrency: 'EUR',
      ituRegion: null,
      licenceClass: null,
      zone: 'Europe/Berlin',
    });
    const [rigId, otherRigId] = [await rig(work, 'R-001'), await rig(work, 'R-002')];
    return { personId, helperId, rigId, otherRigId };
  });
  const story: ShedStory = {
    personId: globalId('Party', ids.personId),
    helperId: globalId('Party', ids.helperId),
    rigId: globalId('Rig', ids.rigId),
    otherRigId: globalId('Rig', ids.otherRigId),
    project: async (title, itemId = story.rigId) => {
      const { openProject } = await api.ask(
        `mutation ($input: OpenProjectInput!) { openProject(input: $input) { project { id } } }`,
        { input: { itemId, title, targetStandard: 'WORKING' } },
      );
      return openProject.project.id;
    },
    tryToAddTasks: async (projectId, tasks) => {
      const { addTasks } = await api.ask(
        `mutation ($input: AddTasksInput!) {
          addTasks(input: $input) { tasks { id } problems { code message path } }
        }`,
        { input: { projectId, tasks: tasks.map((task) => ({ estimate, ...task })) } },
      );
      return addTasks;
    },
    tasks: async (projectId, tasks) => {
      const added = await story.tryToAddTasks(projectId, tasks);
      return idsOf(added.tasks);
    },
    session: async (input) => {
      const { recordSession } = await api.ask(
        `mutation ($input: RecordSessionInput!) {
          recordSession(input: $input) {
            session {
              id version startedAt endedAt zone note netSeconds
              person { name } item { id } task { id status startedAt project { status startedOn } }
              breaks { startedAt endedAt }
            }
            overlaps { seconds session { id } }
            problems { code message path }
          }
        }`,
        { input },
      );
      return recordSession;
    },
  };
  return story;
}

const person = async (work: UnitOfWork, name: string): Promise<string> => {
  const values = { kind: 'PERSON' as const, name, contact: null, note: null, retiredAt: null };
  return (await insertRow(work, PartyEntity, values)).id;
};

const rig = async (work: UnitOfWork, inventoryNumber: string): Promise<string> => {
  const values = {
    kind: 'RIG' as const,
    inventoryNumber,
    name: null,
    modelId: null,
    role: null,
    serialNumber: null,
    madeEdtf: null,
    placeId: null,
    housedInId: null,
    note: null,
    retiredAt: null,
    retiredReason: null,
  };
  return (await insertRow(work, ItemEntity, values)).id;
};

const idsOf = (records: readonly { id: string }[]): string[] => records.map(({ id }) => id);

/** Where the problems of a payload are, each as one text: `breaks.0.endedAt`. */
export const pathsOf = ({ problems }: { problems: readonly { path: string[] }[] }): string[] =>
  problems.map(({ path }) => path.join('.'));
