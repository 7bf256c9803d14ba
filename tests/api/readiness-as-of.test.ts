import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { shackStory } from '../support/shackStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const HOUR_MS = 3_600_000;

interface Told {
  level: string;
  unmet: string[];
}

/** What happens to a set, each written down when it happens; what makes no sense just then is left. */
const acts = [
  'raiseHazard',
  'clearHazard',
  'raiseAgain',
  'find',
  'accept',
  'resolve',
  'openAgain',
  'fit',
  'takeOut',
  'rejectTube',
  'passCheck',
  'failCheck',
  'retire',
  'bringBack',
  'house',
  'takeOutOfHousing',
  'hurtTheSupply',
  'mendTheSupply',
  'unnameModel',
  'nameModel',
  'nameAnother',
] as const;
type Act = (typeof acts)[number];

describe.each(['sqlite', 'postgres'] as const)('readiness as of a past day on %s', (engine) => {
  let api: TestApi;
  let modelId: string;
  let anotherModelId: string;
  let housing: string;
  let partyId: string;
  let round = 0;
  beforeAll(async () => {
    api = await testApi(engine);
    const story = shackStory(api);
    modelId = await story.model('Pellmere 2', {
      roles: [{ role: 'POWER_SUPPLY', isRequired: true }],
      fitOut: [{ designator: 'V1', zone: 'POWER_SECTION' }],
    });
    anotherModelId = await story.model('Pellmere 5', {
      roles: [{ role: 'SPEAKER', isRequired: true }],
      fitOut: [{ designator: 'V9', zone: 'POWER_SECTION' }],
    });
    housing = await story.accessory('LS-1', 'SPEAKER');
    partyId = (await carried(api, 'createParty', { kind: 'PERSON', name: 'Ada' }, 'party')).id;
  }, 60_000);
  afterAll(() => api.close());

  const derive = async (inventoryNumber: string, asOf?: string): Promise<Told> => {
    const { rig } = await api.ask(
      `query ($number: String!, $asOf: DateTimeISO) { rig(inventoryNumber: $number) {
         readiness { level }
         derivation(asOf: $asOf) { level unmet { statement evidence { recordId words } } } } }`,
      { number: inventoryNumber, asOf },
    );
    if (asOf === undefined) expect(rig.derivation.level).toBe(rig.readiness.level);
    const { level, unmet } = rig.derivation;
    return { level, unmet: unmet.map((leaf: object) => JSON.stringify(leaf)).sort() };
  };

  /** One set with its supply, to which things happen. */
  async function aSet() {
    round += 1;
    const story = shackStory(api);
    const number = `R-${round}`;
    const rigId = await story.rig(number, modelId);
    const supply = await story.accessory(`PS-${round}`, 'POWER_SUPPLY');
    await story.serves(supply, rigId, 'POWER_SUPPLY');
    const rows = async <Row extends object>(sql: string, id = rigId): Promise<Row[]> =>
      api.database.reader.rows<Row>(sql, [id.slice(id.indexOf('_') + 1)]);
    const hazards = (id = rigId) =>
      rows<{ id: string; version: number; isCleared: boolean }>(
        `SELECT id AS "id", version AS "version", cleared_at IS NOT NULL AS "isCleared"
         FROM hazard WHERE item_id = ? ORDER BY id`,
        id,
      );
    const findings = () =>
      rows<{ id: string; version: number; status: string }>(
        `SELECT id AS "id", version AS "version", status AS "status"
         FROM finding WHERE item_id = ? ORDER BY id`,
      );
    const tube = async () => {
      const [one] = await rows<{ id: string }>(
        'SELECT component_id AS "id" FROM fitting WHERE item_id = ? AND removed_at IS NULL',
      );
      return one?.id;
    };
    const item = async () =>
      (
        await rows<{ version: number; retired: string | null }>(
          'SELECT version AS "version", retired_at AS "retired" FROM item WHERE id = ?',
        )
      )[0];
    const settle = async (status: string, from: readonly string[]) => {
      const one = (await findings()).find((finding) => from.includes(finding.status));
      if (!one) return;
      const input = { id: `Finding_${one.id}`, version: one.version, status };
      const note = status === 'OPEN' ? {} : { note: 'looked at' };
      await carried(api, 'settleFinding', { ...input, ...note }, 'finding');
    };
    const check = (isPassed: boolean) => {
      const made = { itemId: rigId, procedure: 'output power', isPassed, validDays: 365 };
      return carried(api, 'recordFinalCheck', made, 'finalCheck');
    };
    const clear = async (id?: string) => {
      const one = (await hazards(id)).find(({ isCleared }) => !isCleared);
      if (!one) return;
      const clearedByCheck = `bleeder measured at ${api.nowMs}`;
      const done = { clearedByCheck, clearedById: partyId };
      const input = { id: `Hazard_${one.id}`, version: one.version, ...done };
      await carried(api, 'clearHazard', input, 'hazard');
    };
    const change = async (changes: object) => {
      const version = (await item())?.version;
      return carried(api, 'changeRig', { id: rigId, version, ...changes }, 'rig');
    };
    const raise = (itemId: string) =>
      carried(api, 'raiseHazard', { itemId, kind: 'STORED_CHARGE' }, 'hazard');
    const happens: Record<Act, () => Promise<unknown>> = {
      raiseHazard: () => raise(rigId),
      clearHazard: () => clear(),
      raiseAgain: async () => {
        const one = (await hazards()).find(({ isCleared }) => isCleared);
        const input = { id: `Hazard_${one?.id ?? ''}`, version: one?.version, isOpenAgain: true };
        if (one) await carried(api, 'changeHazard', input, 'hazard');
      },
      find: () =>
        carried(
          api,
          'recordFinding',
          { itemId: rigId, zone: 'POWER_SECTION', severity: 'BLOCKING', note: 'Hums' },
          'finding',
        ),
      accept: () => settle('ACCEPTED', ['OPEN']),
      resolve: () => settle('RESOLVED', ['OPEN', 'ACCEPTED']),
      openAgain: () => settle('OPEN', ['ACCEPTED', 'RESOLVED']),
      fit: async () => {
        const component = { marking: '6146B' };
        const input = { itemId: rigId, designator: 'V1', component };
        if (!(await tube())) await carried(api, 'fitComponent', input, 'fitting');
      },
      takeOut: async () => {
        const id = await tube();
        const input = { componentId: `Component_${id ?? ''}`, disposition: 'KEPT' };
        if (id) await carried(api, 'removeComponent', input, 'fitting');
      },
      rejectTube: async () => {
        const id = await tube();
        const reading = { quantity: 'emission', value: '20', unit: '%', tier: 'TESTER' };
        const readings = [{ componentId: `Component_${id ?? ''}`, ...reading }];
        if (id) await carried(api, 'recordReadings', { readings }, 'readings');
      },
      passCheck: () => check(true),
      failCheck: () => check(false),
      retire: async () => {
        const one = await item();
        const input = { id: rigId, version: one?.version, reason: 'no room' };
        if (one?.retired === null) await carried(api, 'retireItem', input, 'item');
      },
      bringBack: async () => {
        const one = await item();
        const input = { id: rigId, version: one?.version };
        if (one?.retired !== null) await carried(api, 'returnItem', input, 'item');
      },
      house: () =>
        carried(
          api,
          'houseAccessory',
          { accessoryId: supply, housingId: housing },
          'accessory',
        ).catch(() => null),
      takeOutOfHousing: () =>
        carried(api, 'takeOutOfHousing', { accessoryId: supply }, 'accessory').catch(() => null),
      hurtTheSupply: () => raise(supply),
      mendTheSupply: () => clear(supply),
      unnameModel: () => change({ modelId: null, serialNumber: null }),
      nameAnother: () => change({ modelId: anotherModelId }),
      nameModel: () => change({ modelId, serialNumber: `no. ${api.nowMs}` }),
    };
    return { number, happens };
  }

  it('is what was said on that day, whatever was cleared, settled or opened again since', async () => {
    const levels = new Set<string>();
    const steps = fc.array(fc.constantFrom(...acts), { minLength: 6, maxLength: 14 });
    await fc.assert(
      fc.asyncProperty(steps, async (story) => {
        const { number, happens } = await aSet();
        const told: { at: string; said: Told }[] = [];
        for (const act of story) {
          api.nowMs += HOUR_MS;
          await happens[act]();
          const said = await derive(number);
          told.push({ at: new Date(api.nowMs).toISOString(), said });
          levels.add(said.level);
        }
        api.nowMs += HOUR_MS;
        for (const { at, said } of told) expect(await derive(number, at)).toEqual(said);
      }),
      { numRuns: 12, seed: 807, endOnFailure: true },
    );
    expect([...levels].sort()).toEqual(['DO_NOT_CONNECT', 'NOT_READY', 'ON_AIR_READY']);
  }, 120_000);

  it('knows each stretch of a hazard that was cleared, raised again and cleared once more', async () => {
    const { number, happens } = await aSet();
    const told: { at: string; level: string }[] = [];
    for (const act of ['raiseHazard', 'clearHazard', 'raiseAgain', 'clearHazard'] as const) {
      api.nowMs += HOUR_MS;
      await happens[act]();
      told.push({ at: new Date(api.nowMs).toISOString(), level: (await derive(number)).level });
    }
    api.nowMs += HOUR_MS;
    const hurts = ['DO_NOT_CONNECT', 'ON_AIR_READY', 'DO_NOT_CONNECT', 'ON_AIR_READY'];
    expect(told.map(({ level }) => level)).toEqual(hurts);
    const asOf = await Promise.all(told.map(({ at }) => derive(number, at)));
    expect(asOf.map(({ level }) => level)).toEqual(hurts);
  });
});
