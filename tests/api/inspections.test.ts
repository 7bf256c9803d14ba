import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('taking a set in on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api.close());

  const record = `mutation ($input: RecordInspectionInput!) {
    recordInspection(input: $input) {
      inspection {
        id version inspectedAt inspector { name }
        findings { id version zone severity status note hazards { kind cautions source clearedAt } }
        fitOutChecks { id version state note position { designator } }
      }
      problems { code message path }
    }
  }`;
  const fitOutOf = `query ($id: ID!) { node(id: $id) { ... on Rig {
    fitOut { position { designator } state restsOn since component { id } check { note } }
  } } }`;

  it('keeps findings, what can hurt, and the fit-out in one go', async () => {
    const { recordInspection } = await api.ask(record, {
      input: {
        itemId: story.rig,
        inspectedAt: '2026-03-01T10:00:00Z',
        inspectorId: story.person,
        findings: [
          { zone: 'CABINET', severity: 'COSMETIC', note: 'Scratch on the left side' },
          {
            zone: 'POWER_SECTION',
            severity: 'BLOCKING',
            note: 'Bleeder open, cord brittle',
            hazards: ['STORED_CHARGE', 'DAMAGED_CORD', 'DAMAGED_CORD'],
          },
        ],
        fitOutChecks: [
          { designator: 'V1', state: 'PRESENT' },
          { designator: 'v2', state: 'WRONG', note: 'a 6146A' },
          { positionId: story.positionIds[2], state: 'MISSING' },
        ],
      },
    });
    expect(recordInspection.problems).toEqual([]);
    const { inspection } = recordInspection;
    expect(inspection.inspector.name).toBe('Bench hand');
    expect(inspection.findings.map((finding: any) => finding.status)).toEqual(['OPEN', 'OPEN']);
    const hazards = inspection.findings[1].hazards;
    expect(hazards.map((hazard: any) => hazard.kind).sort()).toEqual([
      'DAMAGED_CORD',
      'STORED_CHARGE',
    ]);
    for (const hazard of hazards) {
      expect(hazard.cautions.length).toBeGreaterThan(0);
      expect(hazard.source).not.toBe('');
    }
    expect(
      inspection.fitOutChecks.map((check: any) => [check.position.designator, check.state]),
    ).toEqual([
      ['V1', 'PRESENT'],
      ['V2', 'WRONG'],
      ['V3', 'MISSING'],
    ]);
    const { node } = await api.ask(fitOutOf, { id: story.rig });
    expect(
      node.fitOut.map((one: any) => [one.position.designator, one.state, one.restsOn]),
    ).toEqual([
      ['V1', 'PRESENT', 'CHECK'],
      ['V2', 'WRONG', 'CHECK'],
      ['V3', 'MISSING', 'CHECK'],
      ['C12', 'UNKNOWN', 'NOTHING'],
      ['bottom cover', 'UNKNOWN', 'NOTHING'],
    ]);
    expect(node.fitOut[1].check.note).toBe('a 6146A');
    expect(node.fitOut[1].since).toBe('2026-03-01T10:00:00.000Z');
  });

  it('reports three wrong positions as three problems, by name, and keeps nothing', async () => {
    const { recordInspection } = await api.ask(record, {
      input: {
        itemId: story.otherRig,
        findings: [{ zone: 'WHOLE', severity: 'MINOR', note: 'Dusty' }],
        fitOutChecks: [
          { designator: 'V9', state: 'PRESENT' },
          { designator: 'V1', state: 'PRESENT' },
          { designator: 'top hat', state: 'MISSING' },
          { designator: 'V1', state: 'MISSING' },
        ],
      },
    });
    expect(recordInspection.inspection).toBeNull();
    expect(recordInspection.problems).toEqual([
      {
        code: 'INVALID',
        message: 'V9 is not a position of Lark Moor L-200. It has V1, V2, V3, C12, bottom cover.',
        path: ['fitOutChecks', '0', 'designator'],
      },
      {
        code: 'INVALID',
        message:
          'top hat is not a position of Lark Moor L-200. It has V1, V2, V3, C12, bottom cover.',
        path: ['fitOutChecks', '2', 'designator'],
      },
      {
        code: 'INVALID',
        message: 'V1 is checked off twice: leave one out.',
        path: ['fitOutChecks', '3'],
      },
    ]);
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { inspections { totalCount } findings { totalCount } } } }`,
      { id: story.otherRig },
    );
    expect(node).toEqual({ inspections: { totalCount: 0 }, findings: { totalCount: 0 } });
  });

  it('has no fit-out to check off for a set whose model is unknown', async () => {
    const { recordInspection } = await api.ask(record, {
      input: { itemId: story.unknownRig, fitOutChecks: [{ designator: 'V1', state: 'PRESENT' }] },
    });
    expect(recordInspection.problems[0].message).toBe(
      'R-003 has no model, so no fit-out to check V1 against: give it one first.',
    );
  });

  it('refuses an inspection that lies in the future, together with all else', async () => {
    const { recordInspection } = await api.ask(record, {
      input: {
        itemId: story.rig,
        inspectedAt: '2026-06-02T00:00:00Z',
        inspectorId: story.rig,
        findings: [{ zone: 'WHOLE', severity: 'MINOR', note: ' ' }],
      },
    });
    expect(recordInspection.problems.map((problem: any) => problem.path)).toEqual([
      ['inspectedAt'],
      ['inspectorId'],
      ['findings', '0', 'note'],
    ]);
  });

  it('lets the latest check count, and a slip of the pen be corrected', async () => {
    const input = (state: string, inspectedAt: string) => ({
      itemId: story.otherRig,
      inspectedAt,
      fitOutChecks: [{ designator: 'C12', state }],
    });
    const later = await api.ask(record, { input: input('PRESENT', '2026-04-02T10:00:00Z') });
    await api.ask(record, { input: input('MISSING', '2026-04-01T10:00:00Z') });
    const c12 = async () =>
      (await api.ask(fitOutOf, { id: story.otherRig })).node.fitOut[3].state as string;
    expect(await c12()).toBe('PRESENT');
    const [check] = later.recordInspection.inspection.fitOutChecks;
    const changed = await api.ask(
      `mutation ($input: ChangeFitOutCheckInput!) { changeFitOutCheck(input: $input) {
        fitOutCheck { version state } problems { code } } }`,
      { input: { id: check.id, version: 1, state: 'WRONG' } },
    );
    expect(changed.changeFitOutCheck.fitOutCheck).toEqual({ version: 2, state: 'WRONG' });
    expect(await c12()).toBe('WRONG');
  });

  it('moves findings and checks along when the time of an inspection is corrected', async () => {
    const { recordInspection } = await api.ask(record, {
      input: {
        itemId: story.rig,
        inspectedAt: '2026-05-02T10:00:00Z',
        findings: [{ zone: 'WHOLE', severity: 'MINOR', note: 'Smells of smoke' }],
        fitOutChecks: [{ designator: 'C12', state: 'PRESENT' }],
      },
    });
    const { changeInspection } = await api.ask(
      `mutation ($input: ChangeInspectionInput!) { changeInspection(input: $input) {
        inspection { inspectedAt note findings { seenAt } fitOutChecks { checkedAt } } problems { message } } }`,
      {
        input: {
          id: recordInspection.inspection.id,
          version: 1,
          inspectedAt: '2026-05-01T10:00:00Z',
          note: 'By daylight',
        },
      },
    );
    const at = '2026-05-01T10:00:00.000Z';
    expect(changeInspection.problems).toEqual([]);
    expect(changeInspection.inspection).toEqual({
      inspectedAt: at,
      note: 'By daylight',
      findings: [{ seenAt: at }],
      fitOutChecks: [{ checkedAt: at }],
    });
  });

  it('costs the same number of statements for three sets as for one', async () => {
    const query = `query ($first: Int!) { rigs(first: $first) { nodes {
      inspections(first: 5) { nodes { findings { hazards { kind } } fitOutChecks { position { designator } } } }
      findings(status: OPEN, first: 5) { nodes { note inspection { inspectedAt } } }
      hazards { kind finding { note } }
      fitOut { state position { designator } check { note } }
    } } }`;
    const counted = async (first: number) => {
      const before = api.statements();
      const { rigs } = await api.ask(query, { first });
      expect(rigs.nodes).toHaveLength(first);
      return api.statements() - before;
    };
    const one = await counted(1);
    expect(await counted(3)).toBe(one);
  });
});
