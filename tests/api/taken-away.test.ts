import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { globalId } from '../../src/api/kit/globalId.js';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { carried } from '../support/carried.js';
import { newRig, record } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('what was written by mistake on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api.close());

  const remove = async (mutation: string, id: string, version: number) =>
    (
      await api.ask(
        `mutation ($input: RemovalInput!) {
           ${mutation}(input: $input) { removedId problems { code message } } }`,
        { input: { id, version } },
      )
    )[mutation];
  const rig = async () =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Rig { completeness { required }
           model { id version limits { id version } fitOut { nodes { id version designator } } } } } }`,
        { id: story.rig },
      )
    ).node;

  it('a position goes, the figures follow, and the history keeps it', async () => {
    const before = await rig();
    const position = before.model.fitOut.nodes[3];
    const stale = await remove('removeFitOutPosition', position.id, 9);
    expect(stale.problems[0].code).toBe('OUT_OF_DATE');
    const gone = await remove('removeFitOutPosition', position.id, position.version);
    expect(gone).toEqual({ removedId: position.id, problems: [] });
    const after = await rig();
    expect(after.completeness.required).toBe(before.completeness.required - 1);
    expect(after.model.fitOut.nodes.map((one: any) => one.designator)).not.toContain('C12');
    const changes = await api.database.reader.rows(
      `SELECT action FROM change WHERE record_table = 'fit_out_position' AND record_id = ?
       ORDER BY changed_at DESC`,
      [position.id.slice('FitOutPosition_'.length)],
    );
    expect(changes).toContainEqual({ action: 'removeFitOutPosition' });
    const again = await remove('removeFitOutPosition', position.id, position.version);
    expect(again.problems[0].code).toBe('NOT_FOUND');
  });

  it('a position that was checked off on a set stays, and says on which', async () => {
    const [position] = (await rig()).model.fitOut.nodes;
    const checks = [{ positionId: position.id, state: 'PRESENT' }];
    await carried(
      api,
      'recordInspection',
      { itemId: story.rig, fitOutChecks: checks },
      'inspection',
    );
    const kept = await remove('removeFitOutPosition', position.id, position.version);
    expect(kept.removedId).toBeNull();
    expect(kept.problems[0]).toMatchObject({ code: 'CONFLICT' });
    expect(kept.problems[0].message).toContain('V1 was checked off on R-001');
  });

  it('a limit goes', async () => {
    const [limit] = (await rig()).model.limits;
    expect((await remove('removeLimit', limit.id, limit.version)).removedId).toBe(limit.id);
    expect((await rig()).model.limits).toEqual([]);
  });

  it('a wrong id is named as such', async () => {
    const id = globalId('Place', '00000000-0000-7000-8000-000000000000');
    expect((await remove('removeLimit', id, 1)).problems[0].message).toContain('a Limit is wanted');
  });

  it("a model's version rises when only its bands change, and not when nothing does", async () => {
    const { model } = await rig();
    const capabilities = [{ band: '40m', mode: 'CW' }];
    const change = async (version: number) =>
      carried(api, 'changeModel', { id: model.id, version, capabilities }, 'model', '{ version }');
    expect(await change(model.version)).toEqual({ version: model.version + 1 });
    expect(await change(model.version + 1)).toEqual({ version: model.version + 1 });
    await expect(change(model.version)).rejects.toThrow('OUT_OF_DATE');
  });

  it('a lot line goes, the others bear its cost, and its item stays', async () => {
    const lot = await record(api, { lines: [newRig(), { sundries: 'a box of knobs' }] });
    const [line, knobs] = lot.lines;
    const stale = await remove('removeLotLine', line.id, 9);
    expect(stale.problems[0].code).toBe('OUT_OF_DATE');
    const gone = await remove('removeLotLine', line.id, line.version);
    expect(gone).toEqual({ removedId: line.id, problems: [] });
    const { acquisition, item } = await api.ask(
      `query ($lot: ID!, $item: ID!) {
         acquisition: node(id: $lot) { ... on Acquisition { lines { nodes { id price { amount } } } } }
         item: node(id: $item) { ... on Rig { inventoryNumber cost { byCurrency { currency } } } } }`,
      { lot: lot.id, item: line.item.id },
    );
    expect(acquisition.lines.nodes).toEqual([{ id: knobs.id, price: { amount: '100.00' } }]);
    expect(item).toEqual({ inventoryNumber: line.item.inventoryNumber, cost: { byCurrency: [] } });
    const kept = await api.database.reader.rows(
      `SELECT action FROM change WHERE record_table = 'lot_line' AND record_id = ?
       ORDER BY sequence DESC LIMIT 1`,
      [line.id.slice('LotLine_'.length)],
    );
    expect(kept).toEqual([{ action: 'removeLotLine' }]);
    const last = await remove('removeLotLine', knobs.id, knobs.version);
    expect(last.problems).toMatchObject([{ code: 'INVALID' }]);
    expect(last.problems[0].message).toContain('the only thing in this lot');
  });

  it('a lot line that spares came with stays, and says which', async () => {
    const lot = await record(api, { lines: [newRig(), { sundries: 'tubes' }] });
    const line = lot.lines[1];
    const spares = { description: 'odd tubes', quantity: 4, lotLineId: line.id };
    await carried(api, 'addStock', { ...spares, condition: 'UNKNOWN' }, 'stockLot');
    const kept = await remove('removeLotLine', line.id, line.version);
    expect(kept.problems[0]).toMatchObject({ code: 'CONFLICT' });
    expect(kept.problems[0].message).toContain('4 × odd tubes');
  });
});
