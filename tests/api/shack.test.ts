import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { shackStory } from '../support/shackStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const DAY_MS = 86_400_000;

describe.each(['sqlite', 'postgres'] as const)('the whole shack on %s', (engine) => {
  let api: TestApi;
  let supply: string;
  let rigs: string[];
  let startedAt: string;
  beforeAll(async () => {
    api = await testApi(engine);
    const story = shackStory(api);
    const needsSupply = await story.model('Pellmere 2', {
      roles: [{ role: 'POWER_SUPPLY', isRequired: true }],
    });
    const alone = await story.model('Pellmere 9');
    rigs = [
      await story.rig('R-1', needsSupply),
      await story.rig('R-2', needsSupply),
      await story.rig('R-3', alone),
    ];
    supply = await story.accessory('PS-1', 'POWER_SUPPLY');
    startedAt = new Date(api.nowMs).toISOString();
    api.nowMs += DAY_MS;
    for (const rig of rigs.slice(0, 2)) await story.serves(supply, rig, 'POWER_SUPPLY');
    api.nowMs += DAY_MS;
  }, 60_000);
  afterAll(() => api.close());

  const shack = async (asOf?: string) =>
    (
      await api.ask(
        `query ($asOf: DateTimeISO) { shack(asOf: $asOf) {
          readyAlone readyAtOnce atMost isProven basis { method counted { what count } }
          served { rig { inventoryNumber } servedBy { role accessory { inventoryNumber } } }
          leftOut { rig { inventoryNumber } level reasons }
        } }`,
        { asOf },
      )
    ).shack;

  it('has as many rigs on the air at once as its supplies allow, and says who has them', async () => {
    const answer = await shack();
    expect(answer).toMatchObject({ readyAlone: 3, readyAtOnce: 2, atMost: 2, isProven: true });
    const numbers = answer.served.map(({ rig }: any) => rig.inventoryNumber);
    expect(numbers).toContain('R-3');
    const [first] = answer.served.filter(({ servedBy }: any) => servedBy.length > 0);
    expect(first.servedBy).toEqual([
      { role: 'POWER_SUPPLY', accessory: { inventoryNumber: 'PS-1' } },
    ]);
    expect(answer.leftOut).toEqual([
      {
        rig: { inventoryNumber: first.rig.inventoryNumber === 'R-1' ? 'R-2' : 'R-1' },
        level: 'ON_AIR_READY',
        reasons: [
          `Every power supply that can serve it is in use: PS-1 with ${first.rig.inventoryNumber} Pellmere 2.`,
        ],
      },
    ]);
  });

  it('knew of no supply before it was assigned', async () => {
    const before = await shack(startedAt);
    expect(before).toMatchObject({ readyAlone: 1, readyAtOnce: 1 });
    const { errors } = await api.tryToAsk('{ shack(asOf: "2031-01-01T00:00:00Z") { readyAlone } }');
    expect(errors?.[0]?.message).toMatch(/lies in the future/);
  });

  it('names a second supply as the step that brings most, and why', async () => {
    const { nextSteps } = await api.ask(`{ nextSteps(first: 3) {
      readyAlone readyAtOnce compared
      steps { rank kind action gainAlone gainAtOnce roughly { hours restsOn } price { currency }
        atOncePerHour atOncePerMoney reason item { inventoryNumber } brings { inventoryNumber } }
    } }`);
    expect(nextSteps).toMatchObject({ readyAlone: 3, readyAtOnce: 2, compared: 1 });
    expect(nextSteps.steps).toMatchObject([
      {
        rank: 1,
        kind: 'PURCHASE',
        gainAlone: 0,
        gainAtOnce: 1,
        atOncePerHour: 0.5,
        price: null,
        atOncePerMoney: null,
        item: { inventoryNumber: 'PS-1' },
        brings: [],
      },
    ]);
  });

  it('derives a level from leaves with evidence and date, as of any day', async () => {
    const [rig] = rigs as [string];
    const finding = await carried(
      api,
      'recordFinding',
      { itemId: rig, zone: 'POWER_SECTION', severity: 'BLOCKING', note: 'Hums loudly' },
      'finding',
      '{ id version }',
    );
    const seenAt = new Date(api.nowMs).toISOString();
    const project = await carried(
      api,
      'openProject',
      { itemId: rig, title: 'Hum', targetStandard: 'WORKING' },
      'project',
    );
    await api.ask(
      `mutation ($input: AddTasksInput!) { addTasks(input: $input) { problems { message } } }`,
      {
        input: {
          projectId: project.id,
          tasks: [
            {
              title: 'New filter capacitors',
              kind: 'CAPACITORS',
              estimate: { optimisticHours: 2, likelyHours: 3, pessimisticHours: 4 },
            },
            {
              title: 'Polish the dial',
              kind: 'CABINET',
              estimate: { optimisticHours: 1, likelyHours: 1, pessimisticHours: 1 },
            },
          ],
        },
      },
    );
    api.nowMs += DAY_MS;
    const derive = async (asOf?: string) =>
      (
        await api.ask(
          `query ($number: String!, $asOf: DateTimeISO) { rig(inventoryNumber: $number) {
            readiness { level }
            derivation(asOf: $asOf) { level basis { asOf }
              conditions { place partOf depth code state level joins evidence { recordId at words } }
              unmet { code statement wouldBeMetBy evidence { recordId at } roughly { hours restsOn taskIds } }
            }
          } }`,
          { number: 'R-1', asOf },
        )
      ).rig;
    const { derivation, readiness } = await derive();
    expect([derivation.level, readiness.level]).toEqual(['NOT_READY', 'NOT_READY']);
    expect(derivation.unmet).toMatchObject([
      {
        code: 'NO_BLOCKING_FINDING',
        wouldBeMetBy: 'Resolve the finding.',
        evidence: [{ recordId: finding.id, at: seenAt }],
        roughly: { hours: 3, restsOn: 'TASKS' },
      },
    ]);
    expect(derivation.conditions[0]).toMatchObject({
      place: '1',
      partOf: null,
      code: 'ON_AIR',
      joins: 'ALL',
    });
    const places = new Set(derivation.conditions.map(({ place }: any) => place));
    for (const { partOf } of derivation.conditions.slice(1)) expect(places.has(partOf)).toBe(true);
    const check = derivation.conditions.find(
      ({ code, joins }: any) => code === 'FINAL_CHECKS_PASSED' && joins === null,
    );
    expect(check).toMatchObject({
      state: 'MET',
      evidence: [{ words: 'The latest check, passed.' }],
    });

    const { nextSteps } = await api.ask(`{ nextSteps { steps {
      rank kind action gainAlone gainAtOnce reason taskIds brings { inventoryNumber } } } }`);
    expect(nextSteps.steps.map(({ kind, gainAlone }: any) => [kind, gainAlone])).toEqual([
      ['TASK', 1],
      ['PURCHASE', 0],
      ['TASK', 0],
    ]);
    expect(nextSteps.steps[0].brings).toEqual([{ inventoryNumber: 'R-1' }]);
    expect(nextSteps.steps[2].reason).toBe(
      'Nothing recorded that keeps a rig off the air waits for it.',
    );

    const settle = {
      id: finding.id,
      version: finding.version,
      status: 'RESOLVED',
      note: 'new capacitors',
    };
    await carried(api, 'settleFinding', settle, 'finding');
    expect((await derive()).derivation.level).toBe('ON_AIR_READY');
    expect((await derive(seenAt)).derivation.level).toBe('NOT_READY');
    expect((await derive(startedAt)).derivation.level).toBe('NOT_READY');

    // Opened again: on the day in between it was settled, whatever the finding says of itself now.
    const settledDay = new Date(api.nowMs).toISOString();
    api.nowMs += DAY_MS;
    const reopen = { id: finding.id, version: finding.version + 1, status: 'OPEN' };
    await carried(api, 'settleFinding', reopen, 'finding');
    expect((await derive()).derivation.level).toBe('NOT_READY');
    expect((await derive(settledDay)).derivation.level).toBe('ON_AIR_READY');
    expect((await derive(seenAt)).derivation.level).toBe('NOT_READY');
    const again = { ...settle, version: finding.version + 2 };
    await carried(api, 'settleFinding', again, 'finding');
    const early = (await derive(startedAt)).derivation.unmet.map(({ code }: any) => code);
    expect(early).toEqual(['ROLE_SERVED']);
  });

  it('remembers in what an accessory was housed', async () => {
    const story = shackStory(api);
    const cabinet = await story.accessory('LS-1', 'SPEAKER');
    const before = new Date(api.nowMs).toISOString();
    api.nowMs += DAY_MS;
    await carried(api, 'houseAccessory', { accessoryId: supply, housingId: cabinet }, 'accessory');
    const hazard = { itemId: cabinet, kind: 'DAMAGED_CORD', note: 'Bare cord' };
    await carried(api, 'raiseHazard', hazard, 'hazard');
    expect((await shack()).readyAlone).toBe(1);
    expect((await shack(before)).readyAlone).toBe(3);
    const { item } = await api.ask(`{ item(inventoryNumber: "R-2") {
      readiness { level } derivation { level unmet { statement } } } }`);
    expect(item.derivation.level).toBe('DO_NOT_CONNECT');
    expect(item.readiness.level).toBe('DO_NOT_CONNECT');
  });
});
