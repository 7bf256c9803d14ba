import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { spareStory, type SpareStory } from '../support/spareStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('the wanted list on %s', (engine) => {
  let api: TestApi;
  let bench: BenchStory;
  let spares: SpareStory;
  beforeAll(async () => {
    api = await testApi(engine);
    bench = await benchStory(api);
    spares = spareStory(api);
  });
  afterAll(() => api?.close());

  const euros = (amount: string) => ({ amount, currency: 'EUR' });
  const add = async (input: object) =>
    (
      await api.ask(
        `mutation ($input: AddWantInput!) { addWant(input: $input) {
          want { id version standing { urgency openTasksWaiting openQuantity } item { inventoryNumber } designator }
          problems { code message path } } }`,
        { input },
      )
    ).addWant;
  const find = async (input: object) =>
    (
      await api.ask(
        `mutation ($input: RecordFindInput!) { recordFind(input: $input) {
          find { id want { standing { foundQuantity openQuantity } }
            acquisition { acquiredOn venue price { amount currency } lines { nodes { sundries } } }
            stockLot { id onHandQuantity reservedQuantity partType { designation } cost { amounts { amount } } } }
          problems { code message path } } }`,
        { input },
      )
    ).recordFind;
  const list = async () =>
    (
      await api.ask(`{ wantedList { html asOf wants { id description designator ceiling { amount }
        standing { urgency openTasksWaiting openQuantity basis { method } }
        partType { designation } item { inventoryNumber } substitutes { designation } } } }`)
    ).wantedList;

  it('gathers what is wanted, the most urgent first, on one sheet that prints by itself', async () => {
    const taskId = await spares.task(bench.rig);
    const other = await spares.partType('6883B');
    const knob = await add({ description: 'knob <script>alert(1)</script> & skirt' });
    expect(knob.want.standing).toMatchObject({ urgency: 'NOTHING_WAITS', openTasksWaiting: 0 });
    const position = await add({
      partTypeId: bench.tubeType,
      itemId: bench.otherRig,
      designator: 'v3',
    });
    expect(position.want).toMatchObject({
      designator: 'V3',
      standing: { urgency: 'STOPS_A_SET' },
    });
    const work = await add({
      partTypeId: bench.tubeType,
      taskId,
      quantity: 2,
      ceiling: euros('25.00'),
      substituteIds: [other],
    });
    expect(work.want).toMatchObject({
      item: { inventoryNumber: 'R-001' },
      standing: { urgency: 'STOPS_WORK', openTasksWaiting: 1, openQuantity: 2 },
    });
    const { wants, html } = await list();
    expect(wants.map((want: any) => want.standing.urgency)).toEqual([
      'STOPS_WORK',
      'STOPS_A_SET',
      'NOTHING_WAITS',
    ]);
    expect(wants[0]).toMatchObject({
      ceiling: { amount: '25.00' },
      substitutes: [{ designation: '6883B' }],
    });
    expect(html).toContain('6883B');
    expect(html).toContain('25.00 EUR');
    expect(html).toContain('knob &lt;script&gt;alert(1)&lt;/script&gt; &amp; skirt');
    expect(html).not.toMatch(/<script|https?:/);
  });

  it('says what serves instead by the substitution graph, and what one usually costs', async () => {
    const send = async (verb: string, type: string, input: object) => {
      const answer = await api.ask(
        `mutation ($input: ${type}!) { ${verb}(input: $input) { problems { message } } }`,
        { input },
      );
      expect(answer[verb].problems).toEqual([]);
    };
    const [wanted, other, heavier] = [
      await spares.partType('X-10'),
      await spares.partType('X-11'),
      await spares.partType('X-12'),
    ];
    await send('recordSubstitution', 'RecordSubstitutionInput', {
      originalId: wanted,
      substituteId: other,
      grade: 'WITH_CHANGES',
      recheck: 'neutralisation',
    });
    await send('recordSubstitution', 'RecordSubstitutionInput', {
      originalId: other,
      substituteId: heavier,
      grade: 'DIRECT',
    });
    for (const amount of ['8.00', '10.00', '30.00']) {
      await send('notePrice', 'NotePriceInput', {
        partTypeId: wanted,
        kind: 'ASKED',
        notedOn: '2026-05-20',
        amount: euros(amount),
        seenAt: 'a fair',
      });
    }
    const { want } = await add({ partTypeId: wanted, ceiling: euros('12.00') });
    const before = api.statements();
    const { wantedList } = await api.ask(`{ wantedList { html wants { id ceiling { amount }
      prices { median { amount currency } recentCount }
      standIns { grade recheck inStock partType { designation } recorded { grade } } } } }`);
    expect(api.statements() - before).toBeLessThan(25);
    const own = wantedList.wants.find(({ id }: any) => id === want.id);
    expect(own).toMatchObject({
      ceiling: { amount: '12.00' },
      prices: [{ median: { amount: '10.00', currency: 'EUR' }, recentCount: 3 }],
      standIns: [
        {
          grade: 'WITH_CHANGES',
          recheck: ['neutralisation'],
          partType: { designation: 'X-11' },
          recorded: { grade: 'WITH_CHANGES' },
        },
      ],
    });
    expect(wantedList.html).toContain('X-11 (with changes; check again: neutralisation)');
    expect(wantedList.html).toContain('10.00 EUR (3)');
  });

  it('turns a purchase of two touches into an acquisition, once however often it is sent', async () => {
    const taskId = await spares.task(bench.rig);
    const { want } = await add({ partTypeId: bench.tubeType, taskId });
    const sent = { key: 'fair stall 7', wantId: want.id, price: euros('18.00') };
    const answers = await Promise.all(Array.from({ length: 5 }, () => find(sent)));
    const [first] = answers;
    expect(first.problems).toEqual([]);
    expect(new Set(answers.map((answer: any) => answer.find.id)).size).toBe(1);
    expect(first.find).toMatchObject({
      want: { standing: { foundQuantity: 1, openQuantity: 0 } },
      acquisition: {
        acquiredOn: '2026-06-01',
        price: { amount: '18.00', currency: 'EUR' },
        lines: { nodes: [{ sundries: '1 × 6146B' }] },
      },
      stockLot: {
        onHandQuantity: 1,
        reservedQuantity: 1,
        partType: { designation: '6146B' },
        cost: { amounts: [{ amount: '18.00' }] },
      },
    });
    expect((await list()).wants.map(({ id }: any) => id)).not.toContain(want.id);
    const other = await find({ ...sent, price: euros('8.00') });
    expect(other.problems).toMatchObject([{ code: 'CONFLICT', path: ['key'] }]);
  });

  it('refuses what cannot be bought, and leaves nothing behind', async () => {
    const before = await spares.lots({});
    const nothing = await find({
      key: 'n',
      price: euros('1.00'),
      quantity: 0,
      foundOn: '2027-01-01',
    });
    expect(nothing.problems.map(({ path }: any) => path[0])).toEqual([
      'description',
      'quantity',
      'foundOn',
    ]);
    const negative = await find({ key: 'n', description: 'box', price: euros('-1.00') });
    expect(negative.problems).toMatchObject([{ path: ['price', 'amount'] }]);
    expect(await spares.lots({})).toHaveLength(before.length);
    const wrong = await add({ quantity: 0, designator: 'V1', ceiling: euros('-2.00') });
    expect(wrong.problems.map(({ path }: any) => path[0])).toEqual([
      'description',
      'designator',
      'quantity',
      'ceiling',
    ]);
  });
});
