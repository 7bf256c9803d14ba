import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testApi, type TestApi } from '../support/testApi.js';
import { pathsOf, shedStory, type ShedStory } from '../support/shedStory.js';

const open = `mutation ($input: OpenProjectInput!) {
  openProject(input: $input) {
    project {
      id version title status targetStandard startedOn decision ceilingHours
      ceiling { amount minorUnits currency } item { __typename inventoryNumber }
    }
    problems { code message path }
  }
}`;
const setStatus = `mutation ($input: SetProjectStatusInput!) {
  setProjectStatus(input: $input) {
    project { id version status closedAt decision } problems { code message path }
  }
}`;

describe.each(['sqlite', 'postgres'] as const)('projects on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterAll(() => api?.close());

  it('opens a restoration with ceilings of money and hours', async () => {
    const { openProject } = await api.ask(open, {
      input: {
        itemId: story.rigId,
        title: 'Back on the air',
        targetStandard: 'WORKING_AND_CLEAN',
        ceiling: { amount: '450.50', currency: 'EUR' },
        ceilingHours: 37.5,
        decision: 'For use in the field station.',
      },
    });
    expect(openProject.problems).toEqual([]);
    expect(openProject.project).toMatchObject({
      version: 1,
      status: 'PLANNED',
      startedOn: null,
      ceilingHours: 37.5,
      ceiling: { amount: '450.50', minorUnits: 45050, currency: 'EUR' },
      item: { __typename: 'Rig', inventoryNumber: 'R-001' },
    });
  });

  it('names everything that is wrong at once', async () => {
    const { openProject } = await api.ask(open, {
      input: {
        itemId: story.personId,
        title: ' ',
        targetStandard: 'WORKING',
        startedOn: '2026-07-01',
        ceiling: { amount: '1.005', currency: 'EUR' },
        ceilingHours: -1,
      },
    });
    expect(openProject.project).toBeNull();
    expect(pathsOf(openProject)).toEqual([
      'itemId',
      'title',
      'startedOn',
      'ceiling.amount',
      'ceilingHours',
    ]);
  });

  it('changes and lifts a ceiling, and refuses a change made on an older version', async () => {
    const id = await story.project('Ceiling');
    const change = `mutation ($input: ChangeProjectInput!) {
      changeProject(input: $input) {
        project { version title ceilingHours ceiling { amount currency } } problems { code path }
      }
    }`;
    const raised = await api.ask(change, {
      input: { id, version: 1, ceiling: { amount: '20000', currency: 'JPY' }, ceilingHours: 0.5 },
    });
    expect(raised.changeProject.project).toEqual({
      version: 2,
      title: 'Ceiling',
      ceilingHours: 0.5,
      ceiling: { amount: '20000', currency: 'JPY' },
    });
    const lifted = await api.ask(change, { input: { id, version: 2, ceiling: null } });
    expect(lifted.changeProject.project).toMatchObject({ ceilingHours: 0.5, ceiling: null });
    const late = await api.ask(change, { input: { id, version: 2, title: 'Late' } });
    expect(late.changeProject.problems).toEqual([{ code: 'OUT_OF_DATE', path: ['version'] }]);
  });

  it('is completed only when no task is open, and takes no task while closed', async () => {
    const id = await story.project('Completion');
    const [task] = await story.tasks(id, [{ title: 'Clean the dial' }]);
    const early = await api.ask(setStatus, { input: { id, version: 1, status: 'COMPLETED' } });
    expect(early.setProjectStatus.problems).toEqual([
      {
        code: 'CONFLICT',
        message: 'Tasks are still open: “Clean the dial”. Finish or drop them first.',
        path: ['status'],
      },
    ]);
    await api.ask(`mutation ($id: ID!) { dropTask(input: { id: $id }) { problems { message } } }`, {
      id: task,
    });
    const done = await api.ask(setStatus, {
      input: { id, version: 1, status: 'COMPLETED', decision: 'Kept as it is.' },
    });
    expect(done.setProjectStatus.project).toMatchObject({
      version: 2,
      status: 'COMPLETED',
      closedAt: '2026-06-01T12:00:00.000Z',
      decision: 'Kept as it is.',
    });
    const refused = await story.tryToAddTasks(id, [{ title: 'One more' }]);
    expect(refused.problems).toEqual([
      {
        code: 'CONFLICT',
        message: 'The project “Completion” is completed. Set it active again first.',
        path: ['projectId'],
      },
    ]);
    const again = await api.ask(setStatus, { input: { id, version: 2, status: 'ACTIVE' } });
    expect(again.setProjectStatus.project).toMatchObject({ status: 'ACTIVE', closedAt: null });
  });

  it('lists projects by status, and those of an item', async () => {
    const id = await story.project('Deferred one');
    await api.ask(setStatus, { input: { id, version: 1, status: 'DEFERRED' } });
    const { projects, node } = await api.ask(
      `query ($rig: ID!) {
        projects(status: [DEFERRED]) { totalCount nodes { title } }
        node(id: $rig) { ... on Rig { projects { title item { inventoryNumber } } } }
      }`,
      { rig: story.rigId },
    );
    const item = { inventoryNumber: 'R-001' };
    expect(projects).toEqual({ totalCount: 1, nodes: [{ title: 'Deferred one' }] });
    expect(node.projects).toEqual([
      { title: 'Back on the air', item },
      { title: 'Ceiling', item },
      { title: 'Completion', item },
      { title: 'Deferred one', item },
    ]);
  });
});
