import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { bringUpBench } from '../support/bringUpBench.js';
import { bringUpFields, passing } from '../support/bringUpStory.js';
import { carried } from '../support/carried.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('a step put right on %s', (engine) => {
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

  const bond = (value: string) => ({
    readings: [{ quantity: 'earth bond resistance', value, unit: 'Ohm' }],
  });
  const run = async (): Promise<any> =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Rig { bringUps { nodes { ${bringUpFields} } } } } }`,
        { id: rig },
      )
    ).node.bringUps.nodes[0];
  const correct = async (stepKey: string, given: object = {}) => {
    api.nowMs += 1000;
    const { id, version } = await run();
    const step = { holds: passing[stepKey]?.holds, readings: passing[stepKey]?.readings };
    const input = { bringUpId: id, version, stepKey, reason: 'misread the meter', ...step };
    return story.carryOut('correctBringUpStep', { ...input, ...given });
  };
  const ofRig = (fields: string) => bench.ofRig(rig, fields);
  const settle = (finding: { id: string; version: number }) =>
    carried(
      api,
      'settleFinding',
      { id: finding.id, version: finding.version, status: 'RESOLVED', note: 'measured again' },
      'finding',
    );

  it('a gate failed by mistake is passed as put right; what it opened waits for a person', async () => {
    const { bringUp } = await story.start(rig);
    await story.step(bringUp.id, 'cord-and-fuse');
    await story.step(bringUp.id, 'earth-bond', bond('0.7'));
    const { bringUp: right, problems } = await correct('earth-bond', bond('0.07'));
    expect(problems).toEqual([]);
    const step = right.steps[1];
    expect(step).toMatchObject({ outcome: 'PASSED', readings: [{ value: '0.07' }] });
    expect(step.earlierVersions).toEqual([
      {
        outcome: 'FAILED',
        reason: 'misread the meter',
        wasNeverDone: false,
        readings: [{ quantity: 'earth bond resistance', value: '0.7', unit: 'Ohm' }],
      },
    ]);
    expect(step.finding).toMatchObject({
      status: 'OPEN',
      hazards: [{ kind: 'UNGROUNDED_CHASSIS' }],
    });
    expect(right).toMatchObject({ status: 'STOPPED', power: { answer: 'DO_NOT_CONNECT' } });
    expect(right.reason).toContain(
      '“Earth bond” is passed as put right. What it opened still stands',
    );
    expect((await ofRig('readings { nodes { value } }')).readings.nodes).toHaveLength(2);
    const { id, version } = right;
    const soon = await story.carryOut('resumeBringUp', { id, version });
    expect(soon.problems[0].message).toContain('Settle the finding');
    await settle(step.finding);
    const { bringUp: on } = await story.carryOut('resumeBringUp', { id, version });
    expect(on.status).toBe('UNDER_WAY');
    expect((await story.step(id, 'insulation-resistance')).problems).toEqual([]);
  });

  it('a gate passed by mistake fails as put right: it stops the run and opens a finding', async () => {
    const { bringUp } = await story.start(rig);
    await story.passTo(bringUp.id, 'capacitors');
    const { bringUp: wrong } = await correct('earth-bond', bond('0.3'));
    expect(wrong).toMatchObject({ status: 'STOPPED', power: { answer: 'DO_NOT_CONNECT' } });
    const { finding } = wrong.steps[1];
    expect(finding).toMatchObject({ severity: 'BLOCKING', status: 'OPEN' });
    expect(wrong.reason).toBe(finding.note);
    // Still failed, by another value: one finding, which says what is so.
    const { bringUp: again } = await correct('earth-bond', bond('0.4'));
    expect(again.steps[1].finding).toMatchObject({ id: finding.id });
    expect(again.steps[1].finding.note).toContain('0.4 Ohm is above');
    expect(again.steps[1].earlierVersions.map(({ outcome }: any) => outcome)).toEqual([
      'PASSED',
      'FAILED',
    ]);
    expect((await ofRig('findings { totalCount }')).findings.totalCount).toBe(1);
  });

  it('a run that was passed by mistake is open again, and its final check is failed', async () => {
    const { bringUp } = await story.start(rig);
    await story.passTo(bringUp.id, 'final-checks');
    const checks = 'finalChecks { nodes { isPassed note } }';
    expect((await ofRig(checks)).finalChecks.nodes).toMatchObject([{ isPassed: true }]);
    const { bringUp: open } = await correct('earth-bond', bond('0.3'));
    expect(open).toMatchObject({ status: 'STOPPED', finalCheck: null, endedAt: null });
    expect((await ofRig(checks)).finalChecks.nodes).toEqual([
      {
        isPassed: false,
        note: '“Bring-up of a tube receiver” was not passed: misread the meter',
      },
    ]);
    // Put right back, settled and resumed: every step is passed, so that it closes by itself.
    const { bringUp: back } = await correct('earth-bond', bond('0.08'));
    await settle(back.steps[1].finding);
    const { id, version } = back;
    const { bringUp: closed } = await story.carryOut('resumeBringUp', { id, version });
    expect(closed).toMatchObject({ status: 'PASSED', finalCheck: { isPassed: true } });
    expect((await ofRig(checks)).finalChecks.nodes).toHaveLength(2);
  });

  it('passed by mistake while another run is under way, it is given up', async () => {
    const { bringUp } = await story.start(rig);
    await story.passTo(bringUp.id, 'final-checks');
    const { id, version } = await run();
    api.nowMs += 60_000;
    await story.start(rig);
    const input = { bringUpId: id, version, stepKey: 'warm-run', reason: 'no warm run' };
    const { bringUp: left } = await story.carryOut('correctBringUpStep', {
      ...input,
      wasNeverDone: true,
    });
    expect(left).toMatchObject({ status: 'ABANDONED', reason: 'no warm run', finalCheck: null });
  });

  it('a step that was never done is taken back with its readings; the time before counts again', async () => {
    const { bringUp } = await story.start(rig);
    await story.passTo(bringUp.id, 'earth-bond');
    await story.step(bringUp.id, 'earth-bond', bond('0.05'));
    const taken = () => correct('earth-bond', { wasNeverDone: true, holds: [], readings: [] });
    const { bringUp: one } = await taken();
    expect(one.steps[1]).toMatchObject({ outcome: 'PASSED', readings: [{ value: '70' }] });
    expect((await ofRig('readings { totalCount }')).readings.totalCount).toBe(2);
    const { bringUp: none } = await taken();
    expect(none.steps[1]).toMatchObject({ outcome: 'NOT_DONE', readings: [] });
    expect(none.steps[1].earlierVersions).toMatchObject([
      { wasNeverDone: true, readings: [{ value: '0.05' }] },
      { wasNeverDone: true, readings: [{ value: '70' }] },
    ]);
    const nothing = await taken();
    expect(nothing.problems[0].message).toContain('Recorded are: cord-and-fuse');
  });

  it('asks for a reason, for all of the step and for the version that was seen', async () => {
    const { bringUp } = await story.start(rig);
    await story.passTo(bringUp.id, 'earth-bond');
    const bad = await correct('earth-bond', {
      reason: ' ',
      holds: [],
      readings: [],
      doneAt: '2020-01-01T00:00:00Z',
    });
    expect(bad.problems.map(({ path }: any) => path[0])).toEqual([
      'reason',
      'holds',
      'readings',
      'doneAt',
    ]);
    const mixed = await correct('earth-bond', { wasNeverDone: true });
    expect(mixed.problems[0].path).toEqual(['wasNeverDone']);
    const { id, version } = await run();
    const input = { bringUpId: id, version, stepKey: 'earth-bond', reason: 'slip', holds: [true] };
    const send = () => story.carryOut('correctBringUpStep', { ...input, ...bond('0.06') });
    const twice = await Promise.all([send(), send()]);
    expect(twice.map(({ problems }) => problems[0]?.code ?? 'done').sort()).toEqual([
      'OUT_OF_DATE',
      'done',
    ]);
    expect((await run()).steps[1].earlierVersions).toHaveLength(1);
  });

  it('a reading of a step is put right at its step, and a reading more or less is kept so', async () => {
    const { bringUp } = await story.start(rig);
    const { bringUp: cold } = await story.passTo(bringUp.id, 'capacitors');
    expect(cold.steps[3].readings).toHaveLength(2);
    const { readings } = await ofRig('readings(first: 50) { nodes { id version quantity } }');
    const one = readings.nodes.find(({ quantity }: any) => quantity.startsWith('re-forming'));
    const { changeReading } = await api.ask(
      `mutation ($input: ChangeReadingInput!) { changeReading(input: $input) { problems { message } } }`,
      { input: { id: one.id, version: one.version, value: '9' } },
    );
    expect(changeReading.problems[0].message).toContain('correctBringUpStep');
    const current = (value: string) => ({
      quantity: 're-forming current at rated voltage',
      value,
      unit: 'mA',
    });
    const { bringUp: more } = await correct('capacitors', {
      readings: [current('0.1'), current('0.2'), current('0.3')],
    });
    expect(more.steps[3].readings.map(({ value }: any) => value)).toEqual(['0.1', '0.2', '0.3']);
    const { bringUp: less } = await correct('capacitors', { readings: [current('0.5')] });
    expect(less.steps[3]).toMatchObject({ outcome: 'PASSED', readings: [{ value: '0.5' }] });
    expect((await ofRig('readings { totalCount }')).readings.totalCount).toBe(4);
    expect(bench.person).toContain('Party');
  });
});
