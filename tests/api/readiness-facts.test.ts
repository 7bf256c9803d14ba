import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rowSourceInWork, type RowSource } from '../../src/db/rowSource.js';
import { readFindings } from '../../src/features/findings/findingFacts.reads.js';
import { readHazards } from '../../src/features/hazards/hazardFacts.reads.js';
import { readCompletenessFacts } from '../../src/features/inspections/completenessFacts.reads.js';
import { readComponentStates } from '../../src/features/parts/componentFacts.reads.js';
import { readFinalChecks } from '../../src/features/readiness/finalCheckFacts.reads.js';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('what readiness rests on, on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  let rigId: string;
  let emptyId: string;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
    rigId = story.rig.slice('Rig_'.length);
    emptyId = story.unknownRig.slice('Rig_'.length);
    await api.ask(
      `mutation ($inspection: RecordInspectionInput!, $stored: RaiseHazardInput!, $v1: FitComponentInput!,
          $lamp: FitComponentInput!, $failed: RecordFinalCheckInput!, $passed: RecordFinalCheckInput!) {
        recordInspection(input: $inspection) { problems { message } }
        raiseHazard(input: $stored) { problems { message } }
        v1: fitComponent(input: $v1) { problems { message } }
        lamp: fitComponent(input: $lamp) { problems { message } }
        failed: recordFinalCheck(input: $failed) { problems { message } }
        passed: recordFinalCheck(input: $passed) { problems { message } }
      }`,
      {
        inspection: {
          itemId: story.rig,
          inspectedAt: '2026-02-01T00:00:00Z',
          findings: [
            {
              zone: 'WHOLE',
              severity: 'BLOCKING',
              note: 'Transformer smells',
              hazards: ['HOT_PARTS'],
            },
            { zone: 'CABINET', severity: 'COSMETIC', note: 'Scratch' },
          ],
          fitOutChecks: [{ designator: 'V2', state: 'MISSING' }],
        },
        stored: { itemId: story.rig, kind: 'STORED_CHARGE' },
        v1: {
          itemId: story.rig,
          designator: 'V1',
          component: { partTypeId: story.tubeType },
          fittedAt: '2026-02-02T00:00:00Z',
        },
        lamp: {
          itemId: story.rig,
          designator: 'dial lamp',
          component: { marking: '6.3 V 0.25 A' },
          fittedAt: '2026-02-02T00:00:00Z',
        },
        failed: {
          itemId: story.rig,
          procedure: 'Insulation  to chassis',
          isPassed: false,
          validDays: 30,
          checkedAt: '2026-02-03T00:00:00Z',
        },
        passed: {
          itemId: story.rig,
          procedure: 'insulation to chassis',
          isPassed: true,
          validDays: 365,
          checkedAt: '2026-02-04T00:00:00Z',
        },
      },
    );
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { components { nodes { designator component { id } } } } } }`,
      { id: story.rig },
    );
    const v1 = node.components.nodes.find((one: any) => one.designator === 'V1');
    await api.ask(
      `mutation ($input: RecordReadingsInput!) { recordReadings(input: $input) { problems { message } } }`,
      {
        input: {
          readings: [
            {
              componentId: v1.component.id,
              quantity: 'transconductance',
              value: '3.1',
              unit: 'mS',
              tier: 'IN_CIRCUIT',
            },
          ],
        },
      },
    );
  });
  afterAll(() => api.close());

  /** Both sides: what is committed, and what a transaction sees. */
  const onBothSides = async (check: (source: RowSource) => Promise<void>): Promise<void> => {
    await check(api.database.reader);
    const act = { action: 'look', actorId: null, now: '2026-06-01T12:00:00.000Z' };
    await api.database.write(act, (work) => check(rowSourceInWork(work)));
  };

  it('an open blocking finding, and those that only are seen', () =>
    onBothSides(async (source) => {
      const found = await readFindings(source, [rigId, emptyId]);
      expect(found.get(rigId)).toMatchObject([
        { description: 'Transformer smells', isBlocking: true, isOpen: true },
        { description: 'Scratch', isBlocking: false },
      ]);
      expect(found.has(emptyId)).toBe(false);
    }));

  it('hazards that stand, apart from those that belong to the design', () =>
    onBothSides(async (source) => {
      const found = await readHazards(source, [rigId]);
      expect(found.get(rigId)).toMatchObject([
        { description: 'Transformer smells', isByDesign: true, isCleared: false },
        { isByDesign: false, caution: expect.stringContaining('lethal charge') },
      ]);
    }));

  it('the components in the set, each with its state and whether its place is required', () =>
    onBothSides(async (source) => {
      const found = await readComponentStates(source, [rigId, emptyId]);
      expect(found.get(rigId)).toMatchObject([
        { name: 'V1 6146B', state: 'REJECTED', isInRequiredPosition: true },
        { name: 'dial lamp 6.3 V 0.25 A', state: 'UNTESTED', isInRequiredPosition: false },
      ]);
    }));

  it('one procedure however it was written, valid as its latest check says', () =>
    onBothSides(async (source) => {
      const checks = (await readFinalChecks(source, [rigId])).get(rigId);
      expect(checks?.procedures).toEqual([
        {
          procedureCode: 'insulation to chassis',
          name: 'insulation to chassis',
          validityDays: 365,
        },
      ]);
      expect(checks?.finalChecks.map((check) => check.isPassed)).toEqual([false, true]);
    }));

  it('the fit-out with its checks and fittings; nothing for a set without a model', () =>
    onBothSides(async (source) => {
      const facts = await readCompletenessFacts(source, [rigId, emptyId]);
      const ofRig = facts.get(rigId);
      expect(ofRig?.fitOut.map((one) => [one.positionKey, one.isRequired])).toEqual([
        ['V1', true],
        ['V2', true],
        ['V3', true],
        ['C12', true],
        ['bottom cover', false],
      ]);
      expect(ofRig?.checks).toMatchObject([{ positionKey: 'V2', state: 'MISSING' }]);
      expect(ofRig?.fittings.map((one) => one.positionKey).sort()).toEqual(['V1', 'dial lamp']);
      expect(facts.get(emptyId)).toEqual({ fitOut: [], checks: [], fittings: [] });
    }));
});
