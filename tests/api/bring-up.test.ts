import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { bringUpBench } from '../support/bringUpBench.js';
import { bringUpFields, passing } from '../support/bringUpStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('bring-up on %s', (engine) => {
  let api: TestApi;
  let bench: Awaited<ReturnType<typeof bringUpBench>>;
  let story: typeof bench.story;
  let rig: string;
  beforeAll(async () => {
    api = await testApi(engine);
    bench = await bringUpBench(api);
    ({ story } = bench);
  });
  afterAll(() => api?.close());
  beforeEach(async () => {
    rig = await bench.newRig();
  });

  const raise = async (kind: string) =>
    (
      await api.ask(
        `mutation ($input: RaiseHazardInput!) { raiseHazard(input: $input) { hazard { id version } problems { message } } }`,
        { input: { itemId: rig, kind } },
      )
    ).raiseHazard.hazard;
  const clear = (hazard: { id: string; version: number }) =>
    api.ask(
      `mutation ($input: ClearHazardInput!) { clearHazard(input: $input) { problems { message } } }`,
      {
        input: {
          ...hazard,
          clearedByCheck: '0.1 V across every capacitor after 60 s',
          clearedById: bench.person,
        },
      },
    );
  const ofRig = (fields: string) => bench.ofRig(rig, fields);
  const outcomes = (run: { steps: { plan: { key: string }; outcome: string }[] }) =>
    Object.fromEntries(run.steps.map(({ plan, outcome }) => [plan.key, outcome]));

  it('a run that is passed step by step keeps its readings and records the final check', async () => {
    const { bringUp } = await story.start(rig, { startedById: bench.person });
    expect(bringUp).toMatchObject({ status: 'UNDER_WAY', power: { answer: 'GATES_FIRST' } });
    expect(new Set(Object.values(outcomes(bringUp)))).toEqual(new Set(['NOT_DONE']));
    const before = await story.passTo(bringUp.id, 'capacitors');
    expect(before.problems).toEqual([]);
    expect(before.bringUp.power).toEqual({ answer: 'NOTHING_RECORDED_AGAINST', reasons: [] });
    const capacitors = before.bringUp.steps[3];
    expect(capacitors.verdicts.map(({ word }: any) => word)).toEqual([
      'WITHIN_LIMITS',
      'WITHIN_LIMITS',
    ]);
    const { bringUp: done } = await story.passTo(bringUp.id, 'final-checks');
    expect(done).toMatchObject({
      status: 'PASSED',
      finalCheck: { procedure: 'Bring-up of the receiver', isPassed: true, validDays: 365 },
    });
    const { readings, finalChecks, bringUps } = await ofRig(
      `readings { totalCount } finalChecks { totalCount } bringUps { nodes { ${bringUpFields} } }`,
    );
    expect(readings.totalCount).toBe(5 + 11);
    expect(finalChecks.totalCount).toBe(1);
    expect(bringUps.nodes).toEqual([done]);
    const late = await story.step(bringUp.id, 'earth-bond');
    expect(late.problems[0].message).toContain('passed and closed');
  });

  it('a later step waits for the gates before it', async () => {
    const { bringUp } = await story.start(rig);
    const early = await story.step(bringUp.id, 'limited-first-power');
    expect(early.problems).toMatchObject([{ code: 'CONFLICT', path: ['stepKey'] }]);
    expect(early.problems[0].message).toMatch(/Line cord and fuse.*Capacitors re-formed/);
    const skipped = await story.step(bringUp.id, 'earth-bond');
    expect(skipped.problems[0].message).toContain('“Line cord and fuse”');
  });

  it('a failed gate stops it and opens a finding with its hazard; settled and cleared, it goes on', async () => {
    const { bringUp } = await story.start(rig);
    await story.passTo(bringUp.id, 'cord-and-fuse');
    const failed = await story.step(bringUp.id, 'earth-bond', {
      readings: [{ quantity: 'earth bond resistance', value: '0.3', unit: 'Ohm' }],
    });
    expect(failed.bringUp).toMatchObject({
      status: 'STOPPED',
      power: { answer: 'DO_NOT_CONNECT' },
    });
    const { finding } = failed.bringUp.steps[1];
    expect(finding).toMatchObject({
      severity: 'BLOCKING',
      status: 'OPEN',
      hazards: [{ kind: 'UNGROUNDED_CHASSIS' }],
    });
    expect(finding.note).toBe(
      'Bring-up failed at “Earth bond”: earth bond resistance 0.3 Ohm is above 0.1 Ohm.',
    );
    expect(await ofRig('readiness { level }')).toEqual({ readiness: { level: 'DO_NOT_CONNECT' } });
    const more = await story.step(bringUp.id, 'insulation-resistance');
    expect(more.problems[0].message).toContain('is stopped');
    const { id, version } = failed.bringUp;
    const soon = await story.carryOut('resumeBringUp', { id, version });
    expect(soon.problems[0].message).toContain('Settle the finding');
    await api.ask(
      `mutation ($input: SettleFindingInput!) { settleFinding(input: $input) { problems { message } } }`,
      { input: { id: finding.id, version: 1, status: 'RESOLVED', note: 'Bond bolted anew' } },
    );
    const resumed = await story.carryOut('resumeBringUp', { id, version });
    expect(resumed.bringUp).toMatchObject({ status: 'UNDER_WAY', reason: null });
    const past = await story.step(bringUp.id, 'insulation-resistance');
    expect(past.problems[0].message).toContain('“Earth bond”');
    const { bringUp: cold } = await story.passTo(bringUp.id, 'capacitors');
    expect(outcomes(cold)['earth-bond']).toBe('PASSED');
    const power = await story.step(bringUp.id, 'limited-first-power');
    expect(power.problems[0].message).toMatch(/^Do not connect:.*hazard that is not cleared/);
    await clear(finding.hazards.map(({ id, version }: any) => ({ id, version }))[0]);
    const { bringUp: on } = await story.step(bringUp.id, 'limited-first-power');
    expect(outcomes(on)['limited-first-power']).toBe('PASSED');
  });

  it('under an open hazard it answers “do not connect” whatever else is true, and goes no further than cold', async () => {
    const { bringUp } = await story.start(rig);
    const { bringUp: cold } = await story.passTo(bringUp.id, 'capacitors');
    expect(cold.power.answer).toBe('NOTHING_RECORDED_AGAINST');
    const hazard = await raise('STORED_CHARGE');
    const refused = await story.step(bringUp.id, 'limited-first-power');
    expect(refused.problems).toMatchObject([{ code: 'CONFLICT', path: ['stepKey'] }]);
    expect(refused.problems[0].message).toMatch(/^Do not connect:/);
    const again = await story.step(bringUp.id, 'capacitors');
    expect(again.bringUp.power.answer).toBe('DO_NOT_CONNECT');
    expect(again.bringUp.power.reasons[0]).toContain('not cleared');
    await clear(hazard);
    expect((await story.step(bringUp.id, 'limited-first-power')).problems).toEqual([]);
  });

  it('what belongs to the design of every tube set keeps nobody from it', async () => {
    await raise('LETHAL_VOLTAGE');
    const { bringUp } = await story.start(rig);
    await story.passTo(bringUp.id, 'capacitors');
    expect((await story.step(bringUp.id, 'limited-first-power')).problems).toEqual([]);
  });

  it('sent twice, or twice at once, a start and a step happen once; another content is refused', async () => {
    const twice = () => story.start(rig, { key: `${engine} twice` });
    const [one, other] = await Promise.all([twice(), twice()]);
    expect(one.bringUp.id).toBe(other.bringUp.id);
    const { bringUp } = one;
    const record = (given = {}) =>
      story.step(bringUp.id, 'cord-and-fuse', { key: `${engine} cord`, ...given });
    const answers = await Promise.all([record(), record()]);
    expect(answers.map(({ problems }) => problems)).toEqual([[], []]);
    expect((await ofRig('readings { totalCount }')).readings.totalCount).toBe(1);
    const changed = await record({ holds: [true, false] });
    expect(changed.problems[0].message).toContain('under a key of its own');
  });

  it('an item is brought up once at a time, also when two begin at once', async () => {
    const answers = await Promise.all([story.start(rig), story.start(rig)]);
    expect(answers.filter(({ bringUp }) => bringUp !== null)).toHaveLength(1);
    const refused = answers.find(({ bringUp }) => bringUp === null);
    expect(refused.problems[0].message).toContain('is under way');
  });

  it('may be given up with a reason and taken up again', async () => {
    const { bringUp } = await story.start(rig);
    const { id, version } = bringUp;
    await story.passTo(id, 'earth-bond');
    const silent = await story.carryOut('abandonBringUp', { id, version, reason: ' ' });
    expect(silent.problems[0].path).toEqual(['reason']);
    const left = await story.carryOut('abandonBringUp', { id, version, reason: 'No tubes.' });
    expect(left.bringUp).toMatchObject({ status: 'ABANDONED', reason: 'No tubes.' });
    expect((await story.step(id, 'insulation-resistance')).problems[0].message).toContain('Resume');
    const other = await story.start(rig);
    const clash = await story.carryOut('resumeBringUp', { id, version: left.bringUp.version });
    expect(clash.problems[0].message).toContain('Finish it or abandon it first');
    await story.carryOut('abandonBringUp', {
      id: other.bringUp.id,
      version: other.bringUp.version,
      reason: 'A slip.',
    });
    const on = await story.carryOut('resumeBringUp', { id, version: left.bringUp.version });
    expect(on.bringUp).toMatchObject({ status: 'UNDER_WAY', endedAt: null });
    expect(outcomes(on.bringUp)['earth-bond']).toBe('PASSED');
  });

  it('a step must answer what it asks, all of it and nothing else', async () => {
    const { bringUp } = await story.start(rig);
    const bad = await story.step(bringUp.id, 'cord-and-fuse', {
      holds: [true],
      readings: [
        { quantity: 'mood', value: '1', unit: '1' },
        { quantity: 'fuse rating', value: '1', unit: 'V' },
      ],
      doneAt: '2020-01-01T00:00:00Z',
    });
    expect(bad.problems.map(({ path }: any) => path.join('.'))).toEqual([
      'holds',
      'readings.0.quantity',
      'readings.1.unit',
      'doneAt',
    ]);
    const missing = await story.step(bringUp.id, 'cord-and-fuse', { readings: [] });
    expect(missing.problems[0].message).toBe('Not read yet: fuse rating (A).');
    const unknown = await story.step(bringUp.id, 'coffee', { holds: [], readings: [] });
    expect(unknown.problems[0].message).toContain('cord-and-fuse, earth-bond');
    const nowhere = await story.start(rig, { procedureKey: 'magic' });
    expect(nowhere.problems[0].message).toContain('tube-receiver, tube-transmitter');
    expect((await ofRig('readings { totalCount }')).readings.totalCount).toBe(0);
  });

  it('the procedures are listed with limits, cautions and sources', async () => {
    const { bringUpProcedures } = await api.ask(
      `{ bringUpProcedures { key advice steps { key isGate cautions source readings { quantity lower upper source } } } }`,
    );
    const receiver = bringUpProcedures.find(({ key }: any) => key === 'tube-receiver');
    expect(receiver.steps.map(({ key }: any) => key)).toEqual(Object.keys(passing));
    expect(receiver.advice).toContain('local codes');
  });
});
