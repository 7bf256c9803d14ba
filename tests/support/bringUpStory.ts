import type { TestApi } from './testApi.js';

export const bringUpFields = `id version status reason endedAt power { answer reasons }
  procedure { key steps { key } } finalCheck { procedure isPassed validDays }
  steps { plan { key } outcome verdicts { quantity word } readings { quantity value unit }
    earlierVersions { outcome reason wasNeverDone readings { quantity value unit } }
    finding { id version note severity status hazards { id version kind } } }`;

/** What passes each step of the procedure for a receiver. */
export const passing: Record<string, { holds: boolean[]; readings: object[] }> = {
  'cord-and-fuse': { holds: [true, true], readings: [read('fuse rating', '1', 'A')] },
  'earth-bond': { holds: [true], readings: [read('earth bond resistance', '70', 'mOhm')] },
  'insulation-resistance': { holds: [], readings: [read('insulation resistance', '20', 'MOhm')] },
  capacitors: {
    holds: [true, true, true],
    readings: [
      read('re-forming current at rated voltage', '0.4', 'mA'),
      read('re-forming current at rated voltage', '300', 'uA'),
    ],
  },
  'limited-first-power': {
    holds: [true, true],
    readings: [read('line current behind the series lamp', '0.2', 'A')],
  },
  'voltages-in-order': {
    holds: [true, true],
    readings: [read('heater voltage', '6.4', 'V'), read('high voltage', '265', 'V')],
  },
  'warm-run': { holds: [true], readings: [read('high voltage after an hour', '262', 'V')] },
  'final-checks': {
    holds: [true],
    readings: [
      read('touch current', '0.2', 'mA'),
      read('filter voltage a minute after switching off', '12', 'V'),
    ],
  },
};

function read(quantity: string, value: string, unit: string) {
  return { quantity, value, unit };
}

const inputTypes: Record<string, string> = {
  startBringUp: 'StartBringUpInput',
  recordBringUpStep: 'RecordBringUpStepInput',
  correctBringUpStep: 'CorrectBringUpStepInput',
  abandonBringUp: 'AbandonBringUpInput',
  resumeBringUp: 'ResumeBringUpInput',
};

/** A bring-up at the bench, told step by step. */
export function bringUpStory(api: TestApi) {
  let sent = 0;
  const carryOut = async (name: string, input: object) =>
    (
      await api.ask(
        `mutation ($input: ${inputTypes[name] ?? ''}!) { ${name}(input: $input) {
          bringUp { ${bringUpFields} } problems { code message path } } }`,
        { input },
      )
    )[name];
  const start = (itemId: string, given: object = {}) =>
    carryOut('startBringUp', {
      key: `run-${++sent}`,
      itemId,
      procedureKey: 'tube-receiver',
      ...given,
    });
  const step = (bringUpId: string, stepKey: string, given: object = {}) =>
    carryOut('recordBringUpStep', {
      key: `step-${++sent}`,
      bringUpId,
      stepKey,
      ...passing[stepKey],
      ...given,
    });
  /** Passes the steps from the first to one that is named. */
  const passTo = async (bringUpId: string, lastKey: string) => {
    const keys = Object.keys(passing);
    let answer: any;
    for (const key of keys.slice(0, keys.indexOf(lastKey) + 1)) answer = await step(bringUpId, key);
    return answer;
  };
  return { carryOut, start, step, passTo };
}
