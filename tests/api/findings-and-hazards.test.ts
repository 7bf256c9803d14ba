import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('findings and hazards on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api.close());

  const find = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: RecordFindingInput!) { recordFinding(input: $input) {
          finding { id version status inspection { id } hazards { id version kind finding { note } } }
          problems { code message path } } }`,
        { input: { itemId: story.rig, zone: 'TUBES', severity: 'MAJOR', ...input } },
      )
    ).recordFinding;
  const settle = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: SettleFindingInput!) { settleFinding(input: $input) {
          finding { version status settledAt settledNote hazards { clearedAt } } problems { code message path } } }`,
        { input },
      )
    ).settleFinding;
  const raise = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: RaiseHazardInput!) { raiseHazard(input: $input) {
          hazard { id version kind cautions source guide { clearedBy advice } item { inventoryNumber } }
          problems { code message path } } }`,
        { input },
      )
    ).raiseHazard;
  const clear = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: ClearHazardInput!) { clearHazard(input: $input) {
          hazard { version clearedAt clearedByCheck clearedBy { name } cautions } problems { code message path } } }`,
        { input },
      )
    ).clearHazard;

  it('a finding at the bench is settled with a reason, and can be opened again', async () => {
    const { finding } = await find({ note: 'Socket loose', seenAt: '2026-05-01T10:00:00Z' });
    expect(finding.inspection).toBeNull();
    const silent = await settle({ id: finding.id, version: 1, status: 'RESOLVED' });
    expect(silent.problems).toEqual([
      { code: 'INVALID', message: 'Say how it was put right.', path: ['note'] },
    ]);
    const early = await settle({
      id: finding.id,
      version: 1,
      status: 'ACCEPTED',
      note: 'It holds',
      settledAt: '2026-04-01T10:00:00Z',
    });
    expect(early.problems[0].path).toEqual(['settledAt']);
    const done = await settle({ id: finding.id, version: 1, status: 'RESOLVED', note: 'Bent' });
    expect(done.finding).toMatchObject({ version: 2, status: 'RESOLVED', settledNote: 'Bent' });
    const open = await settle({ id: finding.id, version: 2, status: 'OPEN' });
    expect(open.finding).toMatchObject({ version: 3, status: 'OPEN', settledAt: null });
    const { changeFinding } = await api.ask(
      `mutation ($input: ChangeFindingInput!) { changeFinding(input: $input) {
        finding { note severity } problems { message } } }`,
      { input: { id: finding.id, version: 3, severity: 'MINOR', note: 'Socket V1 loose' } },
    );
    expect(changeFinding.finding).toEqual({ note: 'Socket V1 loose', severity: 'MINOR' });
    const nothing = await api.ask(
      `mutation ($input: ChangeFindingInput!) { changeFinding(input: $input) {
        finding { version note } problems { message } } }`,
      { input: { id: finding.id, version: 4, zone: null, note: null, seenAt: null } },
    );
    expect(nothing.changeFinding.finding).toEqual({ version: 4, note: 'Socket V1 loose' });
  });

  it('lists findings by what has become of them, the latest first', async () => {
    const { finding } = await find({ note: 'Dial cord', itemId: story.otherRig });
    await find({ note: 'Knob', itemId: story.otherRig, seenAt: '2026-01-01T00:00:00Z' });
    await settle({ id: finding.id, version: 1, status: 'ACCEPTED', note: 'As found' });
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig {
        all: findings { totalCount nodes { note } } open: findings(status: OPEN) { totalCount nodes { note } } } } }`,
      { id: story.otherRig },
    );
    expect(node.all.nodes).toEqual([{ note: 'Dial cord' }, { note: 'Knob' }]);
    expect(node.open).toEqual({ totalCount: 1, nodes: [{ note: 'Knob' }] });
  });

  it('resolving a finding does not clear its hazard', async () => {
    const { finding } = await find({ note: 'Cord brittle', hazards: ['DAMAGED_CORD'] });
    expect(finding.hazards).toMatchObject([
      { kind: 'DAMAGED_CORD', finding: { note: 'Cord brittle' } },
    ]);
    const done = await settle({ id: finding.id, version: 1, status: 'RESOLVED', note: 'New cord' });
    expect(done.finding.hazards).toEqual([{ clearedAt: null }]);
  });

  it('a hazard shows its cautions, and is cleared only by a check named in words', async () => {
    const { hazard } = await raise({ itemId: story.rig, kind: 'STORED_CHARGE', note: 'C1' });
    expect(hazard.item.inventoryNumber).toBe('R-001');
    expect(hazard.cautions[0]).toContain('lethal charge');
    expect(hazard.guide.advice).toContain('local codes');
    const ok = await clear({
      id: hazard.id,
      version: 1,
      clearedByCheck: 'ok',
      clearedById: story.person,
    });
    expect(ok.problems).toMatchObject([{ code: 'INVALID', path: ['clearedByCheck'] }]);
    expect(ok.problems[0].message).toContain(hazard.guide.clearedBy);
    const nobody = await clear({
      id: hazard.id,
      version: 1,
      clearedByCheck: '0.2 V across C1 after 60 s',
      clearedById: 'Party_00000000-0000-7000-8000-000000000000',
    });
    expect(nobody.problems).toMatchObject([{ code: 'NOT_FOUND', path: ['clearedById'] }]);
    const measured = {
      id: hazard.id,
      version: 1,
      clearedByCheck: '0.2 V across C1 after 60 s',
      clearedById: story.person,
    };
    const cleared = await clear(measured);
    expect(cleared.hazard).toMatchObject({
      version: 2,
      clearedBy: { name: 'Bench hand' },
      clearedByCheck: '0.2 V across C1 after 60 s',
    });
    expect((await clear(measured)).problems).toMatchObject([{ code: 'OUT_OF_DATE' }]);
    expect((await clear({ ...measured, version: 2 })).problems).toMatchObject([
      { code: 'CONFLICT' },
    ]);
    const { changeHazard } = await api.ask(
      `mutation ($input: ChangeHazardInput!) { changeHazard(input: $input) {
        hazard { clearedAt clearedByCheck clearedBy { name } note } problems { message } } }`,
      { input: { id: hazard.id, version: 2, isOpenAgain: true } },
    );
    expect(changeHazard.hazard).toEqual({
      clearedAt: null,
      clearedByCheck: null,
      clearedBy: null,
      note: 'C1',
    });
  });

  it('refuses a hazard on a finding of another set', async () => {
    const { finding } = await find({ note: 'Smell' });
    const { problems } = await raise({
      itemId: story.otherRig,
      kind: 'SELENIUM',
      findingId: finding.id,
    });
    expect(problems).toEqual([
      {
        code: 'INVALID',
        message: 'This finding was made on another item.',
        path: ['findingId'],
      },
    ]);
  });

  it('tells what is known of every kind of hazard', async () => {
    const { hazardKinds } = await api.ask(
      `{ hazardKinds { kind recognisedBy cautions protection clearedBy belongsToDesign advice source } }`,
    );
    const { __type } = await api.ask(`{ __type(name: "HazardKind") { enumValues { name } } }`);
    expect(hazardKinds.map((guide: any) => guide.kind).sort()).toEqual(
      __type.enumValues.map((value: any) => value.name).sort(),
    );
  });

  it('keeps final checks, passed or not, the latest first', async () => {
    const check = async (input: Record<string, unknown>) =>
      (
        await api.ask(
          `mutation ($input: RecordFinalCheckInput!) { recordFinalCheck(input: $input) {
            finalCheck { id version isPassed validDays checkedBy { name } } problems { path } } }`,
          { input: { itemId: story.rig, procedure: 'insulation to chassis', ...input } },
        )
      ).recordFinalCheck;
    await check({ isPassed: false, validDays: 30, checkedAt: '2026-05-01T00:00:00Z' });
    const passed = await check({ isPassed: true, validDays: 365, checkedById: story.person });
    expect(passed.finalCheck).toMatchObject({ isPassed: true, checkedBy: { name: 'Bench hand' } });
    const slip = await check({ isPassed: true, validDays: 0, procedure: '' });
    expect(slip.problems).toEqual([{ path: ['procedure'] }, { path: ['validDays'] }]);
    const { changeFinalCheck } = await api.ask(
      `mutation ($input: ChangeFinalCheckInput!) { changeFinalCheck(input: $input) {
        finalCheck { version validDays procedure } problems { message } } }`,
      { input: { id: passed.finalCheck.id, version: 1, validDays: 180 } },
    );
    expect(changeFinalCheck.finalCheck).toEqual({
      version: 2,
      validDays: 180,
      procedure: 'insulation to chassis',
    });
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { finalChecks { nodes { isPassed } } } } }`,
      { id: story.rig },
    );
    expect(node.finalChecks.nodes).toEqual([{ isPassed: true }, { isPassed: false }]);
  });
});
