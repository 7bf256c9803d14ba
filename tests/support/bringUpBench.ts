import { benchStory } from './benchStory.js';
import { bringUpStory } from './bringUpStory.js';
import { carried } from './carried.js';
import type { TestApi } from './testApi.js';

/** A bench at which receivers are brought up, one new rig after another, a minute apart. */
export async function bringUpBench(api: TestApi) {
  const { person } = await benchStory(api);
  let rigs = 0;
  return {
    person,
    story: bringUpStory(api),
    newRig: async (): Promise<string> => {
      api.nowMs += 60_000;
      const named = { inventoryNumber: `R-${100 + ++rigs}`, name: 'Larkmoor set' };
      return (await carried(api, 'createRig', named, 'rig')).id;
    },
    ofRig: async (id: string, fields: string) =>
      (await api.ask(`query ($id: ID!) { node(id: $id) { ... on Rig { ${fields} } } }`, { id }))
        .node,
  };
}
