import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { computeStandings } from '../../src/features/standing/computeStandings.js';
import { carried } from '../support/carried.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('how a set stands, on %s', (engine) => {
  let api: TestApi;
  let rig: { id: string };
  let supply: { id: string };
  let project: { id: string };
  const person = { id: '' };

  const standing = async () =>
    (
      await api.ask(`{
        rig(inventoryNumber: "R-001") {
          hours { hours byTaskKind { taskKind hours } byMonth { month hours } repeatedHours runningSince basis { counted { what count } } }
          completion { share budgetedHours earnedHours }
          remaining { expectedHours p50Hours p80Hours p95Hours openTasks }
          completeness { share required present missing wrong unknown }
          cost { byCurrency { currency price { amount } extras { amount } expenses { amount } total { amount } } }
          readiness { level blockers { code message level wouldBeMetBy } cautions { code } checksValidUntil }
          projects { hours { hours } completion { share } remaining { openTasks } cost { byCurrency { total { amount } } } }
        }
      }`)
    ).rig;

  beforeAll(async () => {
    api = await testApi(engine);
    person.id = (await carried(api, 'createParty', { kind: 'PERSON', name: 'Imre' }, 'party'))
      .id as string;
    const collection = { version: 0, ownerId: person.id, zone: 'Europe/Berlin' };
    await carried(api, 'describeCollection', collection, 'collection', '{ name }');
    const tube = await carried(
      api,
      'createPartType',
      { kind: 'TUBE', designation: '6146B' },
      'partType',
    );
    const model = await carried(
      api,
      'createModel',
      {
        itemKind: 'RIG',
        maker: 'Quellmoor',
        designation: 'Q-80',
        roles: [{ role: 'POWER_SUPPLY' }, { role: 'MICROPHONE', isRequired: false }],
        fitOut: [
          { designator: 'V1', zone: 'TUBES', partTypeId: tube.id },
          { designator: 'V2', zone: 'TUBES', partTypeId: tube.id },
          { designator: 'bottom cover', zone: 'CABINET' },
          { designator: 'dust cover', zone: 'CABINET', isRequired: false },
        ],
      },
      'model',
    );
    const lot = await carried(
      api,
      'recordAcquisition',
      {
        acquiredOn: '2026-01-10',
        price: { amount: '100.00', currency: 'EUR' },
        extraCosts: [{ description: 'carriage', amount: { amount: '10.01', currency: 'EUR' } }],
        lines: [
          { newItem: { kind: 'RIG', inventoryNumber: 'R-001', modelId: model.id } },
          {
            newItem: { kind: 'ACCESSORY', inventoryNumber: 'A-001', role: 'POWER_SUPPLY' },
          },
          { sundries: 'box of knobs' },
        ],
      },
      'acquisition',
      '{ lines { nodes { item { id } } } }',
    );
    [rig, supply] = [lot.lines.nodes[0].item, lot.lines.nodes[1].item];
    project = await carried(
      api,
      'openProject',
      { itemId: rig.id, title: 'Back on the air', targetStandard: 'WORKING' },
      'project',
    );
  });
  afterAll(() => api.close());

  it('spreads the lot to the last cent, and says what was counted', async () => {
    const { cost } = await standing();
    expect(cost.byCurrency).toEqual([
      {
        currency: 'EUR',
        price: { amount: '33.34' },
        extras: { amount: '3.34' },
        expenses: { amount: '0.00' },
        total: { amount: '36.68' },
      },
    ]);
  });

  it('knows nothing of positions until they are looked at', async () => {
    expect((await standing()).completeness).toEqual({
      share: 0,
      required: 3,
      present: 0,
      missing: [],
      wrong: [],
      unknown: ['V1', 'V2', 'bottom cover'],
    });
    await carried(
      api,
      'recordInspection',
      {
        itemId: rig.id,
        fitOutChecks: [
          { designator: 'V1', state: 'PRESENT' },
          { designator: 'V2', state: 'MISSING' },
          { designator: 'bottom cover', state: 'PRESENT' },
        ],
        findings: [
          {
            zone: 'CORD_AND_CABLES',
            severity: 'BLOCKING',
            note: 'Cord brittle, bare at the plug',
            hazards: ['DAMAGED_CORD'],
          },
        ],
      },
      'inspection',
    );
    const { completeness, readiness } = await standing();
    expect(completeness).toMatchObject({ share: 0.6667, present: 2, missing: ['V2'] });
    expect(readiness.level).toBe('DO_NOT_CONNECT');
    expect(readiness.blockers.map(({ code }: { code: string }) => code).sort()).toEqual(
      [
        'BLOCKING_FINDING_OPEN',
        'HAZARD_NOT_CLEARED',
        'NO_FINAL_CHECK_NAMED',
        'POSITION_MISSING',
        'ROLE_NOT_SERVED',
      ].sort(),
    );
    for (const blocker of readiness.blockers) {
      expect(blocker.wouldBeMetBy.length).toBeGreaterThan(10);
    }
  });

  it('earns by the rules of its tasks, and foresees what is left of them', async () => {
    const tasks = await carried(
      api,
      'addTasks',
      {
        projectId: project.id,
        tasks: [
          { title: 'New cord', kind: 'WIRING', estimate: hours(1, 2, 3) },
          {
            title: 'Capacitors',
            kind: 'CAPACITORS',
            rule: 'FIFTY_FIFTY',
            estimate: hours(4, 6, 8),
          },
        ],
      },
      'tasks',
    );
    await carried(
      api,
      'recordSession',
      {
        taskId: tasks[0].id,
        startedAt: '2026-03-29T00:30:00Z',
        endedAt: '2026-03-29T03:30:00Z',
        breaks: [{ startedAt: '2026-03-29T01:00:00Z', endedAt: '2026-03-29T01:30:00Z' }],
      },
      'session',
    );
    await carried(api, 'finishTask', { id: tasks[0].id }, 'task');
    await carried(api, 'startTask', { id: tasks[1].id }, 'task');
    const { completion, remaining, hours: invested, projects } = await standing();
    expect(completion).toEqual({ share: 0.625, budgetedHours: 8, earnedHours: 5 });
    expect(remaining.openTasks).toBe(1);
    expect(remaining.expectedHours).toBeCloseTo(6, 0);
    expect(remaining.p50Hours).toBeLessThan(remaining.p80Hours);
    expect(remaining.p80Hours).toBeLessThan(remaining.p95Hours);
    expect(invested.hours).toBe(2.5);
    expect(invested.byTaskKind).toEqual([{ taskKind: 'WIRING', hours: 2.5 }]);
    expect(invested.byMonth).toEqual([{ month: '2026-03', hours: 2.5 }]);
    expect(projects).toEqual([
      {
        hours: { hours: 2.5 },
        completion: { share: 0.625 },
        remaining: { openTasks: 1 },
        cost: { byCurrency: [] },
      },
    ]);
  });

  it('counts a minute of one person once, on whatever item it was spent', async () => {
    await carried(
      api,
      'recordSession',
      { itemId: supply.id, startedAt: '2026-03-29T03:00:00Z', endedAt: '2026-03-29T05:00:00Z' },
      'session',
    );
    const { collection, accessories } = await api.ask(`{
      collection { hours { hours repeatedHours } }
      accessories { nodes { hours { hours repeatedHours } } }
    }`);
    expect(accessories.nodes[0].hours).toEqual({ hours: 1.5, repeatedHours: 0.5 });
    expect(collection.hours).toEqual({ hours: 4, repeatedHours: 0.5 });
  });

  it('names a running timer, and counts it when it is stopped', async () => {
    await carried(api, 'startTimer', { itemId: rig.id }, 'session');
    expect((await standing()).hours).toMatchObject({
      hours: 2.5,
      runningSince: ['2026-06-01T12:00:00.000Z'],
    });
    api.nowMs += 3_600_000;
    await carried(api, 'stopTimer', {}, 'session');
    expect((await standing()).hours).toMatchObject({ hours: 3.5, runningSince: [] });
  });

  it('is ready when every blocker is met, until a check lapses', async () => {
    const { rig: found } = await api.ask(`{
      rig(inventoryNumber: "R-001") { hazards { id version } findings { nodes { id version } } }
    }`);
    for (const { id, version } of found.hazards) {
      const clear = {
        id,
        version,
        clearedByCheck: 'new three-wire cord, earth bond measured',
        clearedById: person.id,
      };
      await carried(api, 'clearHazard', clear, 'hazard');
    }
    for (const { id, version } of found.findings.nodes) {
      await carried(
        api,
        'settleFinding',
        { id, version, status: 'RESOLVED', note: 'new cord' },
        'finding',
      );
    }
    const tube = { itemId: rig.id, designator: 'V2', component: { marking: '6146B' } };
    await carried(api, 'fitComponent', tube, 'fitting');
    const service = { accessoryId: supply.id, rigId: rig.id, role: 'POWER_SUPPLY' };
    await carried(api, 'assignAccessory', service, 'service');
    const check = {
      itemId: rig.id,
      procedure: 'output into a dummy load',
      isPassed: true,
      validDays: 180,
    };
    await carried(api, 'recordFinalCheck', check, 'finalCheck');
    const { readiness, completeness } = await standing();
    expect([readiness.level, readiness.blockers]).toEqual(['ON_AIR_READY', []]);
    expect(completeness.share).toBe(1);
    api.nowMs += 181 * 86_400_000;
    const later = (await standing()).readiness;
    expect(later.level).toBe('CHECKS_DUE');
    expect(later.blockers[0].code).toBe('FINAL_CHECK_LAPSED');
    const listed = await api.ask(`{
      ready: rigs(filter: { readiness: [ON_AIR_READY] }) { totalCount }
      due: rigs(filter: { readiness: [CHECKS_DUE] }) { totalCount }
      collection { readiness { byLevel { level rigs } } }
    }`);
    expect([listed.ready.totalCount, listed.due.totalCount]).toEqual([0, 1]);
    expect(listed.collection.readiness.byLevel[1]).toEqual({ level: 'CHECKS_DUE', rigs: 1 });
    api.nowMs -= 181 * 86_400_000;
  });

  it('falls with an accessory that it needs', async () => {
    const hazard = {
      itemId: supply.id,
      kind: 'OLD_DIELECTRIC',
      note: 'oil-filled capacitor weeps',
    };
    await carried(api, 'raiseHazard', hazard, 'hazard');
    const { readiness } = await standing();
    expect(readiness.level).toBe('DO_NOT_CONNECT');
    expect(readiness.blockers[0].message).toContain('A-001');
  });

  it('is the same when it is computed afresh from the records', async () => {
    const { reader } = api.database;
    const kept = await reader.rows<{ itemId: string; facts: string }>(
      'SELECT item_id AS "itemId", facts AS "facts" FROM item_standing ORDER BY item_id',
    );
    const ids = kept.map(({ itemId }) => itemId);
    const afresh = await computeStandings(reader, ids, api.nowMs);
    const timeless = (facts: unknown) =>
      JSON.parse(JSON.stringify(facts, (key, value: unknown) => (key === 'asOf' ? null : value)));
    for (const [index, { facts }] of kept.entries()) {
      expect(timeless(JSON.parse(facts))).toEqual(timeless(afresh[index]?.facts));
    }
  });
});

const hours = (optimisticHours: number, likelyHours: number, pessimisticHours: number) => ({
  optimisticHours,
  likelyHours,
  pessimisticHours,
});
