import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { spareStory, type SpareStory } from '../support/spareStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('spares on %s', (engine) => {
  let api: TestApi;
  let bench: BenchStory;
  let spares: SpareStory;
  beforeAll(async () => {
    api = await testApi(engine);
    bench = await benchStory(api);
    spares = spareStory(api);
  });
  afterAll(() => api?.close());

  const noProblems = <T extends { problems: unknown[] }>(answer: T): T => {
    expect(answer.problems).toEqual([]);
    return answer;
  };
  const euros = (amount: string) => ({ amount, currency: 'EUR' });

  it('draws the oldest lot first, at what that lot cost', async () => {
    const partTypeId = await spares.partType('12AX7A');
    const young = await spares.add({
      partTypeId,
      quantity: 5,
      receivedOn: '2026-02-01',
      cost: euros('50.00'),
    });
    const old = await spares.add({
      partTypeId,
      quantity: 3,
      receivedOn: '2020-02-01',
      cost: euros('10.00'),
    });
    const { draws } = noProblems(
      await spares.draw({ partTypeId, quantity: 4, reason: 'PASSED_ON' }),
    );
    expect(draws).toMatchObject([
      {
        quantity: 3,
        lot: { id: old.id, onHandQuantity: 0 },
        cost: { amounts: [{ amount: '10.00' }] },
      },
      {
        quantity: 1,
        lot: { id: young.id, onHandQuantity: 4 },
        cost: { amounts: [{ amount: '10.00' }] },
      },
    ]);
    expect(draws[0].cost.basis.method).toContain('First in, first out');
    const listed = await spares.lots({ partTypeId });
    expect(listed.map((lot: any) => lot.id)).toEqual([young.id]);
    const empty = await spares.lots({ partTypeId, isEmpty: true });
    expect(empty.map((lot: any) => lot.id)).toEqual([old.id]);
  });

  it('fits a spare in one act: it leaves the shelf with its task’s reservation, at its cost', async () => {
    const taskId = await spares.task(bench.rig);
    const lot = await spares.add({
      partTypeId: bench.tubeType,
      quantity: 2,
      cost: euros('15.01'),
      condition: 'UNUSED',
    });
    noProblems(await spares.reserve({ taskId, partTypeId: bench.tubeType, quantity: 2 }));
    const forAnother = await spares.fit({
      itemId: bench.rig,
      designator: 'V1',
      fromStock: { partTypeId: bench.tubeType },
    });
    expect(forAnother.problems).toMatchObject([{ code: 'CONFLICT', path: ['fromStock'] }]);
    expect(forAnother.problems[0].message).toBe(
      '1 of 6146B are wanted and 0 can be had: 2 lie on the shelf, 2 of them put aside for tasks.',
    );
    const fitted = noProblems(
      await spares.fit({
        itemId: bench.rig,
        designator: 'V1',
        fromStock: { partTypeId: bench.tubeType, taskId, marking: 'spare one' },
      }),
    ).fitting;
    expect(fitted).toMatchObject({
      component: {
        marking: 'spare one',
        origin: 'REPLACEMENT',
        partType: { designation: '6146B' },
      },
      draws: [{ quantity: 1, reason: 'FITTED', cost: { amounts: [{ amount: '7.50' }] } }],
    });
    expect(await spares.lot(lot.id)).toMatchObject({
      onHandQuantity: 1,
      reservedQuantity: 1,
      availableQuantity: 0,
      reservations: [{ quantity: 2, openQuantity: 1 }],
    });
    const clash = await spares.fit({
      itemId: bench.rig,
      designator: 'V1',
      fromStock: { lotId: lot.id, taskId },
    });
    expect(clash.problems).toMatchObject([{ code: 'CONFLICT', path: ['designator'] }]);
    expect(await spares.lot(lot.id)).toMatchObject({ onHandQuantity: 1, reservedQuantity: 1 });
    await spares.finish(taskId);
    expect(await spares.lot(lot.id)).toMatchObject({ reservedQuantity: 0, availableQuantity: 1 });
  });

  it('puts a removed part on the shelf, and takes that very part from it again', async () => {
    const { fitting } = noProblems(
      await spares.fit({
        itemId: bench.rig,
        designator: 'V2',
        component: { partTypeId: bench.tubeType, marking: 'veteran', origin: 'ORIGINAL' },
      }),
    );
    const componentId = fitting.component.id;
    await spares.remove({ componentId, disposition: 'STOCK' });
    const [lot] = await spares.lots({ text: 'veteran' });
    expect(lot).toMatchObject({ onHandQuantity: 1, component: { id: componentId } });
    noProblems(
      await spares.fit({ itemId: bench.otherRig, designator: 'V2', fromStock: { lotId: lot.id } }),
    );
    expect(await spares.lot(lot.id)).toMatchObject({ onHandQuantity: 0 });
    const removed = noProblems(await spares.remove({ componentId, disposition: 'STOCK' })).fitting;
    const [again] = await spares.lots({ text: 'veteran' });
    expect(again).toMatchObject({ onHandQuantity: 1 });
    noProblems(
      await spares.changeFitting({
        id: removed.id,
        version: removed.version,
        disposition: 'BINNED',
      }),
    );
    expect(await spares.lots({ text: 'veteran' })).toEqual([]);
    noProblems(await spares.fit({ itemId: bench.rig, designator: 'V2', componentId }));
  });

  it('never goes negative under 100 reservations at once', async () => {
    const partTypeId = await spares.partType('6AU6A');
    const taskId = await spares.task(bench.rig);
    const first = await spares.add({ partTypeId, quantity: 23, receivedOn: '2024-01-01' });
    const second = await spares.add({ partTypeId, quantity: 20, receivedOn: '2025-01-01' });
    const answers = await Promise.all(
      Array.from({ length: 100 }, (_, index) =>
        index % 4 === 0
          ? spares.draw({ partTypeId, quantity: 1, reason: 'CONSUMED' })
          : spares.reserve({ taskId, partTypeId, quantity: 1 + (index % 2) }),
      ),
    );
    const granted = answers.filter(({ problems }) => problems.length === 0);
    const refused = answers.filter(({ problems }) => problems.length > 0);
    expect(granted.length).toBeGreaterThan(20);
    expect(new Set(refused.map(({ problems }) => problems[0].code))).toEqual(new Set(['CONFLICT']));
    const units = granted
      .flatMap((answer) => answer.draws ?? answer.reservations)
      .reduce((sum: number, { quantity }: { quantity: number }) => sum + quantity, 0);
    const lots = [await spares.lot(first.id), await spares.lot(second.id)];
    for (const lot of lots) {
      expect(lot.availableQuantity).toBeGreaterThanOrEqual(0);
      expect(lot.drawnQuantity + lot.reservedQuantity + lot.availableQuantity).toBe(lot.quantity);
    }
    expect(lots.reduce((sum, lot) => sum + lot.drawnQuantity + lot.reservedQuantity, 0)).toBe(
      units,
    );
    expect(units).toBe(43);
  });

  it('lets counts be corrected, but never below what has left and is put aside', async () => {
    const partTypeId = await spares.partType('0A2');
    const taskId = await spares.task(bench.rig);
    const lot = await spares.add({ partTypeId, quantity: 5 });
    const { reservations } = noProblems(
      await spares.reserve({ taskId, lotId: lot.id, quantity: 2 }),
    );
    const { draws } = noProblems(
      await spares.draw({ lotId: lot.id, taskId, quantity: 1, reason: 'DISCARDED' }),
    );
    const change = (quantity: number) => spares.changeLot({ id: lot.id, version: 1, quantity });
    const tooFew = await change(1);
    expect(tooFew.problems).toMatchObject([{ code: 'CONFLICT', path: ['quantity'] }]);
    expect(tooFew.problems[0].message).toContain('1 have left it and 1 are put aside');
    noProblems(await change(2));
    const draw = { id: draws[0].id, version: 1 };
    const overdrawn = await spares.changeDraw({ ...draw, quantity: 3 });
    expect(overdrawn.problems).toMatchObject([{ code: 'CONFLICT' }]);
    noProblems(await spares.changeDraw({ ...draw, quantity: 0, note: 'was still in the box' }));
    expect(await spares.lot(lot.id)).toMatchObject({ drawnQuantity: 0, reservedQuantity: 2 });
    noProblems(
      await spares.changeReservation({ id: reservations[0].id, version: 1, isReleased: true }),
    );
    expect(await spares.lot(lot.id)).toMatchObject({ availableQuantity: 2 });
  });

  it('says all that is wrong with spares at once', async () => {
    const { problems } = await spares.tryToAdd({
      quantity: 0,
      receivedOn: '2027-01-01',
      cost: { amount: '-1.00', currency: 'EUR' },
    });
    expect(problems.map(({ path }: { path: string[] }) => path.join('.'))).toEqual([
      'description',
      'quantity',
      'receivedOn',
      'cost.amount',
    ]);
    const both = await spares.reserve({ taskId: await spares.task(bench.rig), quantity: 1 });
    expect(both.problems[0].message).toContain('one of the two');
    const wrongFit = await spares.fit({ itemId: bench.rig, designator: 'V3' });
    expect(wrongFit.problems[0].message).toContain('one of the three');
  });
});
