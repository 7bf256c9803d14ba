import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attempt, done } from '../support/catalogue.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('the catalogue on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  describe('parties', () => {
    it('are written down, changed, taken out of lists and brought back', async () => {
      const party = await done(
        api,
        'createParty',
        { name: ' Anna Miller ', contact: 'Mill Lane 4' },
        'party { id version kind name contact }',
      );
      expect(party).toMatchObject({ kind: 'PERSON', name: 'Anna Miller', version: 1 });
      const change = { id: party.id, version: 1, isRetired: true };
      await done(api, 'changeParty', change, 'party { retiredAt }');
      const { here, gone } = await api.ask(`{
        here: parties(filter: { text: "MILLER lane" }) { totalCount }
        gone: parties(filter: { text: "MILLER lane", isRetired: true }) { nodes { name } }
      }`);
      expect(here.totalCount).toBe(0);
      expect(gone.nodes).toEqual([{ name: 'Anna Miller' }]);
      const back = { id: party.id, version: 2, isRetired: false };
      const now = await done(api, 'changeParty', back, 'party { retiredAt }');
      expect(now.retiredAt).toBeNull();
      const nulls = { id: party.id, version: 3, name: null, kind: null, isRetired: null };
      expect(await done(api, 'changeParty', nulls, 'party { name kind version }')).toEqual({
        name: 'Anna Miller',
        kind: 'PERSON',
        version: 3,
      });
    });

    it('are found by their own letters where those mean something to the engine', async () => {
      await done(
        api,
        'createParty',
        { name: '100% Valve_Club', kind: 'ORGANISATION' },
        'party { id }',
      );
      const found = async (text: string) =>
        (
          await api.ask(
            `query ($text: String) { parties(filter: { text: $text }) { totalCount } }`,
            {
              text,
            },
          )
        ).parties.totalCount;
      expect(await found('100%')).toBe(1);
      expect(await found('e_c')).toBe(1);
      expect(await found('1%0')).toBe(0);
      expect(await found(`' OR 1=1 --`)).toBe(0);
    });
  });

  describe('part types', () => {
    it('carry ratings with units and sources', async () => {
      const ratings = [{ name: 'heater voltage', value: '6.3', unit: 'V', source: 'data sheet' }];
      const partType = await done(
        api,
        'createPartType',
        { kind: 'TUBE', designation: '6146B', ratings },
        'partType { id version kind designation ratings { name value unit source } limits { id } }',
      );
      expect(partType).toMatchObject({ designation: '6146B', ratings, limits: [] });
      const { partTypes } = await api.ask(
        `{ partTypes(filter: { text: "614", kind: TUBE }) { nodes { designation ratings { value } } } }`,
      );
      expect(partTypes.nodes).toEqual([{ designation: '6146B', ratings: [{ value: '6.3' }] }]);
      const twin = await attempt(
        api,
        'createPartType',
        { kind: 'TUBE', designation: '6146B' },
        'partType { id }',
      );
      expect(twin.problems).toMatchObject([{ code: 'CONFLICT', path: ['designation'] }]);
    });

    it('are refused with every problem of every rating at once', async () => {
      const ratings = [
        { name: '', value: '1', unit: 'volts' },
        { name: 'capacitance', value: '1', unit: 'uF' },
      ];
      const { problems } = await attempt(
        api,
        'createPartType',
        { kind: 'TUBE', designation: ' ', ratings },
        'partType { id }',
      );
      expect(problems.map(({ path }) => path.join('.')).sort()).toEqual([
        'designation',
        'ratings.0.name',
        'ratings.0.unit',
      ]);
    });

    it('and models have limits: one for a quantity and tier, which can be changed', async () => {
      const partType = { kind: 'TUBE', designation: '12AX7A' };
      const { id } = await done(api, 'createPartType', partType, 'partType { id }');
      const limit = { ofId: id, quantity: 'transconductance', lower: '960', unit: 'uS' };
      const answer = 'limit { id version quantity tier lower upper unit source }';
      const set = await done(api, 'setLimit', limit, answer);
      expect(set).toMatchObject({ lower: '960', upper: null, tier: null, unit: 'uS' });
      const twin = await attempt(api, 'setLimit', limit, answer);
      expect(twin.problems).toMatchObject([{ code: 'CONFLICT', path: ['quantity'] }]);
      await done(api, 'setLimit', { ...limit, tier: 'TESTER' }, answer);
      const back = await attempt(
        api,
        'changeLimit',
        { id: set.id, version: 1, upper: '900' },
        answer,
      );
      expect(back.problems).toMatchObject([{ code: 'INVALID', path: ['lower'] }]);
      const change = { id: set.id, version: 1, lower: '0.96', unit: 'mS' };
      expect(await done(api, 'changeLimit', change, answer)).toMatchObject({
        lower: '0.96',
        unit: 'mS',
        version: 2,
      });
      const { problems } = await attempt(
        api,
        'setLimit',
        { ...limit, quantity: 'hum', unit: '('.repeat(5000) },
        answer,
      );
      expect(problems[0]?.path).toEqual(['unit']);
    });

    it('get no second limit when two people set it at the same time', async () => {
      const partType = { kind: 'TUBE', designation: '0A2' };
      const { id } = await done(api, 'createPartType', partType, 'partType { id }');
      const limit = { ofId: id, quantity: 'striking voltage', upper: '185', unit: 'V' };
      const both = await Promise.all([
        attempt(api, 'setLimit', limit, 'limit { id }'),
        attempt(api, 'setLimit', limit, 'limit { id }'),
      ]);
      expect(both.map(({ problems }) => problems.length).sort()).toEqual([0, 1]);
    });
  });

  describe('models', () => {
    const model = {
      itemKind: 'RIG',
      maker: 'Northmoor',
      designation: 'NM-400',
      firstYearMade: 1962,
      lastYearMade: 1967,
    };
    const answer = `model {
      id version capabilities { band mode outputMilliwatts } roles { role isRequired }
      fitOut(first: 2) { totalCount nodes { id version designator ordinal isRequired partType { designation } model { designation } } pageInfo { hasNextPage endCursor } }
      limits { id } items { totalCount }
    }`;

    it('are written down whole: bands, roles and fit-out in order', async () => {
      const tube = { kind: 'TUBE', designation: '6BA6' };
      const { id: partTypeId } = await done(api, 'createPartType', tube, 'partType { id }');
      const made = await done(
        api,
        'createModel',
        {
          ...model,
          capabilities: [
            { band: '80m', mode: 'SSB', outputMilliwatts: 100_000 },
            { band: '40m', mode: 'CW' },
          ],
          roles: [{ role: 'POWER_SUPPLY' }, { role: 'SPEAKER', isRequired: false }],
          fitOut: [
            { designator: 'V1', zone: 'TUBES', partTypeId },
            { designator: 'V2', zone: 'TUBES', partTypeId },
            { designator: 'bottom cover', zone: 'CABINET', isRequired: false },
          ],
        },
        answer,
      );
      expect(made.capabilities).toEqual([
        { band: '40m', mode: 'CW', outputMilliwatts: null },
        { band: '80m', mode: 'SSB', outputMilliwatts: 100_000 },
      ]);
      expect(made.roles).toEqual([
        { role: 'POWER_SUPPLY', isRequired: true },
        { role: 'SPEAKER', isRequired: false },
      ]);
      expect(made.fitOut.totalCount).toBe(3);
      expect(made.fitOut.nodes[0]).toMatchObject({
        designator: 'V1',
        ordinal: 1,
        partType: { designation: '6BA6' },
        model: { designation: 'NM-400' },
      });
      const more = await done(
        api,
        'addFitOutPositions',
        { modelId: made.id, positions: [{ designator: 'C12', zone: 'CHASSIS_UNDERSIDE' }] },
        'model { fitOut { nodes { id version designator ordinal } } }',
      );
      expect(
        (more.fitOut.nodes as { designator: unknown }[]).map((position) => position.designator),
      ).toEqual(['V1', 'V2', 'bottom cover', 'C12']);
      const [v1, v2] = more.fitOut.nodes;
      const renamed = await attempt(
        api,
        'changeFitOutPosition',
        { id: v2.id, version: 1, designator: 'V1' },
        'position { id }',
      );
      expect(renamed.problems).toMatchObject([{ code: 'CONFLICT', path: ['designator'] }]);
      const changed = await done(
        api,
        'changeFitOutPosition',
        { id: v1.id, version: 1, isRequired: false, partTypeId: null, ordinal: 9 },
        'position { version isRequired ordinal partType { id } }',
      );
      expect(changed).toEqual({ version: 2, isRequired: false, ordinal: 9, partType: null });
    });

    it('change their bands as a whole, keep what is left out, and can be retired', async () => {
      const { models } = await api.ask(
        `{ models(filter: { text: "nm-400" }) { nodes { id version } } }`,
      );
      const [{ id, version }] = models.nodes;
      const changed = await done(
        api,
        'changeModel',
        {
          id,
          version,
          capabilities: [
            { band: '40m', mode: 'CW' },
            { band: '20m', mode: 'CW' },
          ],
        },
        answer,
      );
      expect((changed.capabilities as { band: unknown }[]).map((one) => one.band)).toEqual([
        '20m',
        '40m',
      ]);
      expect(changed.roles).toHaveLength(2);
      // Its bands are part of it: they raised its version.
      await done(api, 'changeModel', { id, version: version + 1, isRetired: true }, 'model { id }');
      const lists = await api.ask(`{
        open: models(filter: { itemKind: RIG }) { totalCount }
        all: models(filter: { itemKind: RIG, isRetired: null }) { totalCount }
      }`);
      expect(lists).toEqual({ open: { totalCount: 0 }, all: { totalCount: 1 } });
      await done(
        api,
        'changeModel',
        { id, version: version + 2, isRetired: false },
        'model { id }',
      );
    });

    it('are refused with all their problems at once', async () => {
      const { problems } = await attempt(
        api,
        'createModel',
        {
          ...model,
          firstYearMade: 1970,
          capabilities: [
            { band: 'forty', mode: 'cw' },
            { band: '40m', mode: 'CW' },
            { band: '40m', mode: 'CW' },
          ],
          roles: [{ role: 'KEY' }, { role: 'KEY' }],
          fitOut: [
            { designator: 'V1', zone: 'TUBES' },
            { designator: 'V1', zone: 'TUBES' },
          ],
        },
        'model { id }',
      );
      expect(problems.map(({ path }) => path.join('.')).sort()).toEqual([
        'capabilities.0.band',
        'capabilities.0.mode',
        'capabilities.2',
        'designation',
        'fitOut.1.designator',
        'lastYearMade',
        'roles.1',
      ]);
    });
  });
});
