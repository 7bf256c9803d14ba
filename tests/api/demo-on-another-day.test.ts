import { describe, expect, it } from 'vitest';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { demoLevels, rigsByLevel } from '../support/demoLevels.js';
import { testApi } from '../support/testApi.js';

describe('the demo collection on another day', () => {
  it.each(['2027-03-29T00:20:00Z', '2031-10-31T23:30:00Z'])(
    'gives the same answers when it is loaded at %s',
    async (now) => {
      const api = await testApi('sqlite');
      try {
        api.nowMs = Date.parse(now);
        await loadDemo(api.database, seedFolder('demo'), new Date(now));
        expect(await rigsByLevel(api)).toEqual(demoLevels);
        const { collection } = await api.ask('{ collection { hours { repeatedHours } } }');
        expect(collection.hours.repeatedHours).toBe(1);
      } finally {
        await api.close();
      }
    },
    120_000,
  );
});
