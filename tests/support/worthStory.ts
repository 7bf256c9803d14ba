import { money, send } from './lotStory.js';
import type { TestApi } from './testApi.js';

/** One transmitter that lacks nothing yet, with a project to bring it back on the air. */
export interface WorthStory {
  readonly modelId: string;
  readonly rigId: string;
  readonly projectId: string;
  readonly tubeId: string;
  /** Sends a mutation that must be taken, and gives its object. */
  done(verb: string, field: string, input: object, shown?: string): Promise<any>;
  /** Notes a fair market value of the model at a standard, in euros. */
  value(standard: string, likely: string, more?: object): Promise<any>;
  /** Finds at an inspection that the tube of V1 is missing. */
  inspect(): Promise<any>;
  /** Notes what such a tube was sold for, in euros. */
  note(amount: string, more?: object): Promise<any>;
  project(shown: string): Promise<any>;
}

export async function worthStory(api: TestApi): Promise<WorthStory> {
  const done: WorthStory['done'] = async (verb, field, input, shown = 'id version') => {
    const answer: any = await send(api, verb, field, shown, input);
    if (answer.problems.length > 0) throw new Error(JSON.stringify(answer.problems));
    return answer[field];
  };
  const made = async (verb: string, field: string, input: object): Promise<string> =>
    (await done(verb, field, input)).id;
  const tubeId = await made('createPartType', 'partType', {
    kind: 'TUBE',
    designation: '6146B',
    description: 'Transmitting tube',
    ratings: [],
  });
  const modelId = await made('createModel', 'model', {
    itemKind: 'RIG',
    maker: 'Ombershaw',
    designation: 'Tallowick',
    description: 'Transmitter',
    fitOut: [{ designator: 'V1', zone: 'TUBES', isRequired: true, partTypeId: tubeId }],
  });
  const rigId = await made('createRig', 'rig', { modelId, inventoryNumber: 'R-1' });
  const projectId = await made('openProject', 'project', {
    itemId: rigId,
    title: 'Back on the air',
    targetStandard: 'WORKING_AND_CLEAN',
    ceiling: money('200.00'),
  });
  return {
    ...{ modelId, rigId, projectId, tubeId, done },
    value: (standard, likely, more = {}) =>
      done('noteValue', 'valueNote', {
        modelId,
        basis: 'FAIR_MARKET',
        standard,
        valuedOn: '2026-05-01',
        likely: money(likely),
        source: 'Autumn sale',
        ...more,
      }),
    inspect: () =>
      done('recordInspection', 'inspection', {
        itemId: rigId,
        inspectedAt: '2026-05-20T10:00:00Z',
        fitOutChecks: [{ designator: 'V1', state: 'MISSING' }],
      }),
    note: (amount, more = {}) =>
      done('notePrice', 'priceNote', {
        partTypeId: tubeId,
        kind: 'SOLD',
        notedOn: '2026-05-01',
        amount: money(amount),
        seenAt: 'Fair',
        ...more,
      }),
    project: async (shown) =>
      (
        await api.ask(`query ($id: ID!) { node(id: $id) { ... on Project { ${shown} } } }`, {
          id: projectId,
        })
      ).node,
  };
}
