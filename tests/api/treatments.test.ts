import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const shown = `id version surface material dwellMinutes passes isRinsed outcome remains overrideReason
  overriddenBy { name } item { inventoryNumber } component { id } finding { note }
  agents { kind name agentParts waterParts guide { cautions source } volumes(amount: "1000") { agent water unit } }
  meetings { agents why earlier { surface treatedAt } }`;

describe.each(['sqlite', 'postgres'] as const)('treatments on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api.close());

  const act =
    (verb: string, field: string, fields: string) =>
    async (input: object): Promise<any> => {
      const type = `${verb.charAt(0).toUpperCase()}${verb.slice(1)}Input`;
      const answer = await api.ask(
        `mutation ($input: ${type}!) {
          ${verb}(input: $input) { ${field} { ${fields} } problems { code message path } } }`,
        { input },
      );
      return answer[verb];
    };
  const treat = (input: object) =>
    act(
      'recordTreatment',
      'treatment',
      shown,
    )({
      itemId: story.rig,
      surface: 'front panel',
      material: 'PAINTED_METAL',
      agents: [{ kind: 'DETERGENT' }],
      isRinsed: true,
      ...input,
    });
  const change = act('changeTreatment', 'treatment', shown);

  it('says how much agent and water make an amount, with the usual cautions', async () => {
    const { treatment } = await treat({
      surface: 'chassis',
      material: 'ALUMINIUM',
      agents: [
        { kind: 'ACID', name: 'citric acid', dilution: { agentParts: '1', waterParts: '9' } },
        { kind: 'WATER' },
      ],
      dwellMinutes: 10,
      passes: 2,
      outcome: 'WORKED_IN_PART',
      remains: 'dark spots at the rear',
    });
    expect(treatment).toMatchObject({
      dwellMinutes: 10,
      passes: 2,
      outcome: 'WORKED_IN_PART',
      remains: 'dark spots at the rear',
      item: { inventoryNumber: 'R-001' },
      meetings: [],
    });
    const [acid, water] = treatment.agents;
    expect(acid.volumes).toEqual({ agent: '100', water: '900', unit: 'ml' });
    expect(acid.guide.cautions.join(' ')).toMatch(/Never mix it with bleach/);
    expect(water.volumes).toEqual({ agent: '1000', water: '0', unit: 'ml' });
    const { dilutionVolumes } = await api.ask(
      `{ dilutionVolumes(dilution: { agentParts: "1", waterParts: "3" }, amount: "2", unit: "l") { agent water unit } }`,
    );
    expect(dilutionVolumes).toEqual({ agent: '0.5', water: '1.5', unit: 'l' });
    const { errors } = await api.tryToAsk(
      `{ dilutionVolumes(dilution: { agentParts: "0", waterParts: "3" }, amount: "2") { agent } }`,
    );
    expect(errors?.[0]?.message).toMatch(/above zero/);
  });

  it('refuses agents that must not meet, unless somebody answers for it', async () => {
    const agents = [{ kind: 'CHLORINE_BLEACH' }, { kind: 'ACID' }, { kind: 'AMMONIA' }];
    const refused = await treat({ agents });
    expect(refused.treatment).toBeNull();
    expect(refused.problems.map(({ code }: any) => code)).toEqual(['CONFLICT', 'CONFLICT']);
    expect(refused.problems[0].message).toMatch(/chloramine/);
    const silent = await treat({ agents, override: { byId: story.person, reason: ' ' } });
    expect(silent.problems[0].path).toEqual(['override', 'reason']);
    const { treatment } = await treat({
      surface: 'old crate',
      agents,
      override: { byId: story.person, reason: 'Done by the owner before; written down after' },
    });
    expect(treatment).toMatchObject({
      overrideReason: 'Done by the owner before; written down after',
      overriddenBy: { name: 'Bench hand' },
    });
    expect(treatment.meetings.map(({ earlier }: any) => earlier)).toEqual([null, null]);
    const needless = await treat({ override: { byId: story.person, reason: 'in case' } });
    expect(needless.problems[0].message).toMatch(/leave the override out/);
    const mended = await change({
      id: treatment.id,
      version: 1,
      agents: [{ kind: 'AMMONIA' }, { kind: 'WATER' }],
    });
    expect(mended.treatment).toMatchObject({ version: 2, overrideReason: null, meetings: [] });
    const again = await change({ id: treatment.id, version: 2, agents });
    expect(again.problems[0].code).toBe('CONFLICT');
  });

  it('flags agents that follow one another on a surface without a rinse', async () => {
    const dial = { surface: 'Dial  window', material: 'GLASS' };
    const bleach = await treat({
      ...dial,
      agents: [{ kind: 'CHLORINE_BLEACH' }],
      isRinsed: false,
      treatedAt: '2026-05-01T10:00:00Z',
    });
    const vinegar = await treat({
      ...dial,
      surface: 'dial window',
      agents: [{ kind: 'ACID' }],
      treatedAt: '2026-05-01T11:00:00Z',
    });
    expect(vinegar.treatment.meetings).toMatchObject([{ earlier: { surface: 'Dial  window' } }]);
    await change({ id: bleach.treatment.id, version: 1, isRinsed: true });
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Treatment { meetings { why } } } }`,
      { id: vinegar.treatment.id },
    );
    expect(node.meetings).toEqual([]);
  });

  it('refuses what does not belong to the item, and numbers that make no sense', async () => {
    const find = act('recordFinding', 'finding', 'id');
    const { finding } = await find({
      itemId: story.otherRig,
      zone: 'CABINET',
      severity: 'MINOR',
      note: 'Rust',
    });
    const { problems } = await treat({
      findingId: finding.id,
      surface: ' ',
      agents: [{ kind: 'ACID', dilution: { agentParts: '0', waterParts: '1' } }],
      dwellMinutes: -1,
      passes: 0,
      treatedAt: '2027-01-01T00:00:00Z',
    });
    expect(problems.map(({ path }: any) => path.join('.'))).toEqual([
      'findingId',
      'dwellMinutes',
      'passes',
      'agents.0.dilution',
      'surface',
      'treatedAt',
    ]);
    expect((await treat({ agents: [] })).problems[0].path).toEqual(['agents']);
    const kept = await treat({ itemId: story.otherRig, findingId: finding.id });
    expect(kept.treatment.finding).toEqual({ note: 'Rust' });
    const both = await Promise.all([
      change({ id: kept.treatment.id, version: 1, outcome: 'WORKED' }),
      change({ id: kept.treatment.id, version: 1, outcome: 'HARMED' }),
    ]);
    expect(both.filter(({ treatment }) => treatment !== null)).toHaveLength(1);
    expect(both.flatMap(({ problems: some }) => some)[0].code).toBe('OUT_OF_DATE');
  });

  it('answers what worked on which surface, across the collection', async () => {
    const brass = { surface: 'Tuning knob', material: 'COPPER_ALLOY' };
    for (const [itemId, kind, outcome] of [
      [story.rig, 'ABRASIVE', 'WORKED'],
      [story.otherRig, 'ABRASIVE', 'WORKED'],
      [story.otherRig, 'ABRASIVE', 'HARMED'],
      [story.unknownRig, 'ALCOHOL', 'NO_EFFECT'],
    ]) {
      await treat({ ...brass, itemId, agents: [{ kind }], outcome });
    }
    await treat({ ...brass, surface: 'tuning  KNOB', agents: [{ kind: 'ALCOHOL' }] });
    const { treatmentResults, treatments } = await api.ask(`{
      treatmentResults(filter: { surface: "knob" }) { surface material agent treatmentCount workedCount
        harmedCount noEffectCount undecidedCount cautions basis { counted { what count } } }
      treatments(filter: { material: COPPER_ALLOY, agent: ABRASIVE }, first: 2) {
        totalCount nodes { item { inventoryNumber } outcome } pageInfo { hasNextPage } } }`);
    expect(treatmentResults).toMatchObject([
      { agent: 'ABRASIVE', treatmentCount: 3, workedCount: 2, harmedCount: 1, noEffectCount: 0 },
      { agent: 'ALCOHOL', treatmentCount: 2, noEffectCount: 1, undecidedCount: 1 },
    ]);
    expect(treatmentResults[0].basis.counted).toEqual([{ what: 'treatments', count: 3 }]);
    expect(treatments).toMatchObject({ totalCount: 3, pageInfo: { hasNextPage: true } });
  });

  it('are listed on the item and its finding at a fixed number of statements', async () => {
    const count = async (first: number): Promise<number> => {
      const before = api.statements();
      const { items } = await api.ask(
        `query ($first: Int!) { items(first: $first) { nodes { inventoryNumber
          treatments(first: 5) { totalCount nodes { surface agents { kind } meetings { why } } } } } }`,
        { first },
      );
      expect(items.nodes[0].treatments.totalCount).toBeGreaterThan(0);
      return api.statements() - before;
    };
    expect(await count(3)).toBe(await count(1));
    const { cleaningAgents } = await api.ask(
      '{ cleaningAgents { agents { kind cautions source } forbiddenPairs { agents why source } } }',
    );
    expect(cleaningAgents.agents).toHaveLength(14);
    expect(cleaningAgents.forbiddenPairs.length).toBeGreaterThan(8);
  });
});
