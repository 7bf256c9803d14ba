import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { money, newAccessory, newRig, record, tryToRecord } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const sum = (parts: { minorUnits: number }[]) =>
  parts.reduce((total, { minorUnits }) => total + minorUnits, 0);

describe.each(['sqlite', 'postgres'] as const)('a lot that comes in, on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  it('spreads 100.00 EUR over three items and a box of knobs, with carriage in its own currency', async () => {
    const lot = await record(api, {
      venue: 'Spring fair',
      otherParty: { name: 'Olga Vance' },
      extraCosts: [
        { description: 'carriage', amount: money('10.01') },
        { description: 'ferry', amount: money('1000', 'JPY') },
      ],
      lines: [newRig({ name: 'Grey receiver' }), newRig(), newAccessory(), { sundries: 'knobs' }],
      claims: [{ statement: 'It worked when put away.', line: 0 }, { statement: 'One owner.' }],
    });
    expect(lot.lines.map((line) => line.price.amount)).toEqual(Array(4).fill('25.00'));
    expect(lot.lines.map((line) => line.extras[0])).toEqual([
      { amount: '2.51', currency: 'EUR', minorUnits: 251 },
      ...Array(3).fill({ amount: '2.50', currency: 'EUR', minorUnits: 250 }),
    ]);
    expect(lot.lines[0].totals).toEqual([
      { amount: '27.51', currency: 'EUR', minorUnits: 2751 },
      { amount: '250', currency: 'JPY', minorUnits: 250 },
    ]);
    expect(lot.totals).toEqual([
      { amount: '110.01', currency: 'EUR' },
      { amount: '1000', currency: 'JPY' },
    ]);
    expect(lot.lines[0].item.name).toBe('Grey receiver');
    expect(lot.lines[3]).toMatchObject({ item: null, sundries: 'knobs', ordinal: 3 });
    expect(lot.lines[0].basis.counted).toEqual([
      { what: 'lines of the lot', count: 4 },
      { what: 'extra costs of the lot', count: 2 },
    ]);
    expect(lot.claims).toEqual([
      {
        statement: 'It worked when put away.',
        saidBy: { name: 'Olga Vance' },
        item: { inventoryNumber: lot.lines[0].item.inventoryNumber },
      },
      { statement: 'One owner.', saidBy: { name: 'Olga Vance' }, item: null },
    ]);
  });

  it('spreads yen, dinars and units of account without a rounding', async () => {
    const three = { lines: [newRig(), newRig(), newRig()] };
    const priceParts = async (price: object) =>
      (await record(api, { ...three, price })).lines.map((line) => line.price.amount);
    expect(await priceParts(money('100', 'JPY'))).toEqual(['34', '33', '33']);
    expect(await priceParts(money('1.000', 'KWD'))).toEqual(['0.334', '0.333', '0.333']);
    expect(await priceParts(money('1.0000', 'CLF'))).toEqual(['0.3334', '0.3333', '0.3333']);
  });

  it('spreads by stated shares of unequal length, and by stated values', async () => {
    const shares = await record(api, {
      price: money('10.00'),
      spreadMethod: 'STATED_SHARES',
      lines: [
        { ...newRig(), statedShare: '1.5' },
        { ...newRig(), statedShare: '0.25' },
        { sundries: 'valves', statedShare: '0.250' },
      ],
    });
    expect(shares.lines.map((line) => line.price.amount)).toEqual(['7.50', '1.25', '1.25']);
    const values = await record(api, {
      price: money('90', 'JPY'),
      spreadMethod: 'STATED_VALUES',
      lines: [
        { ...newRig(), statedValue: '200' },
        { ...newRig(), statedValue: '100' },
      ],
    });
    expect(values.lines.map((line) => line.price.amount)).toEqual(['60', '30']);
    expect(values.lines[0].statedValue).toEqual({ amount: '200', currency: 'JPY' });
  });

  it('takes a gift at a price of zero, and refuses a price below it with the reason', async () => {
    const gift = await record(api, { price: money('0'), lines: [newRig()] });
    expect(gift.lines[0].totals).toEqual([{ amount: '0.00', currency: 'EUR', minorUnits: 0 }]);
    const { acquisition, problems } = await tryToRecord(api, {
      price: money('-5'),
      lines: [newRig()],
    });
    expect(acquisition).toBeNull();
    expect(problems).toEqual([
      { code: 'INVALID', message: expect.stringContaining('gift'), path: ['price', 'amount'] },
    ]);
  });

  it('parts sum to the whole, whatever the lot', async () => {
    const currency = fc.constantFrom('EUR', 'JPY', 'KWD');
    const lotOf = fc.record({
      price: fc.record({ amount: fc.nat(1_000_000_000).map(String), currency }),
      extras: fc.array(fc.record({ amount: fc.nat(9_999).map(String), currency }), {
        maxLength: 4,
      }),
      shares: fc.array(
        fc.tuple(fc.integer({ min: 1, max: 999 }), fc.nat(999)).map(([a, b]) => `${a}.${b}`),
        { minLength: 1, maxLength: 7 },
      ),
    });
    await fc.assert(
      fc.asyncProperty(lotOf, async ({ price, extras, shares }) => {
        const lot = await record(api, {
          price,
          extraCosts: extras.map((amount) => ({ description: 'carriage', amount })),
          spreadMethod: 'STATED_SHARES',
          lines: shares.map((statedShare) => ({ sundries: 'parts', statedShare })),
        });
        expect(sum(lot.lines.map((line) => line.price))).toBe(lot.price.minorUnits);
        for (const total of lot.totals) {
          const parts = lot.lines.flatMap((line) =>
            (line.totals as any[]).filter((part) => part.currency === total.currency),
          );
          const digits = { EUR: 2, JPY: 0, KWD: 3 }[total.currency as 'EUR' | 'JPY' | 'KWD'];
          expect(sum(parts)).toBe(Math.round(Number(total.amount) * 10 ** digits));
        }
      }),
      { numRuns: 25 },
    );
  });

  it('tells everything that is wrong with a lot at once, and keeps none of it', async () => {
    const count = async () => (await api.ask(`{ acquisitions { totalCount } }`)).acquisitions;
    const before = await count();
    const { acquisition, problems } = await tryToRecord(api, {
      acquiredOn: '2031-01-01',
      price: money('1.234'),
      spreadMethod: 'STATED_SHARES',
      otherParty: {},
      extraCosts: [{ description: ' ', amount: money('1.5', 'JPY') }],
      lines: [
        { ...newRig(), sundries: 'both', statedShare: '1' },
        newAccessory({ role: null }),
        { itemId: 'Rig_00000000-0000-7000-8000-000000000000', statedShare: '2' },
      ],
      claims: [{ statement: 'x', line: 9 }],
    });
    expect(acquisition).toBeNull();
    expect(problems.map(({ path }) => path.join('.')).sort()).toEqual([
      'acquiredOn',
      'claims.0.line',
      'extraCosts.0.amount.amount',
      'extraCosts.0.description',
      'lines.0',
      'lines.1.newItem.role',
      'lines.1.statedShare',
      'lines.2.itemId',
      'otherParty',
      'price.amount',
    ]);
    expect(await count()).toEqual(before);
  });

  it('refuses shares that are all zero, negative, or none at all', async () => {
    const paths = async (shares: (string | null)[]) =>
      (
        await tryToRecord(api, {
          spreadMethod: 'STATED_SHARES',
          lines: shares.map((statedShare) => ({ sundries: 'box', statedShare })),
        })
      ).problems.map(({ path }) => path);
    expect(await paths(['0', '0.0'])).toEqual([['lines']]);
    expect(await paths(['1', '-1', '0'])).toEqual([
      ['lines', '1', 'statedShare'],
      ['lines', '2', 'statedShare'],
    ]);
    expect(await paths([null, '1', null])).toEqual([
      ['lines', '0', 'statedShare'],
      ['lines', '2', 'statedShare'],
    ]);
    expect(await paths([])).toEqual([['lines']]);
  });

  it('lets an item come in once: the second lot is told of the first', async () => {
    const lot = await record(api, { venue: 'Barn sale', lines: [newRig()] });
    const { item } = lot.lines[0];
    const again = await tryToRecord(api, { lines: [{ itemId: item.id }, { itemId: item.id }] });
    expect(again.problems[0]).toEqual({
      code: 'CONFLICT',
      message: `${item.inventoryNumber} came in with the lot of 2026-05-03 (Barn sale) already; an item comes in once.`,
      path: ['lines', '0', 'itemId'],
    });
  });

  it('gives two people who record lots at the same time different numbers', async () => {
    const lots = await Promise.all(
      Array.from({ length: 6 }, () => record(api, { lines: [newRig(), newAccessory()] })),
    );
    const numbers = lots.flatMap((lot) => lot.lines.map((line) => line.item.inventoryNumber));
    expect(new Set(numbers).size).toBe(12);
    expect(numbers.every((number) => /^[RA]-\d{3,}$/.test(number as string))).toBe(true);
  });

  it('goes on from the highest number, passes by one given in the same lot, and refuses one in use', async () => {
    await record(api, { lines: [newRig({ inventoryNumber: 'R-700' })] });
    await record(api, { lines: [newRig({ inventoryNumber: 'R-7000 bis' })] });
    const lot = await record(api, { lines: [newRig(), newRig({ inventoryNumber: 'R-701' })] });
    expect(lot.lines.map((line) => line.item.inventoryNumber)).toEqual(['R-702', 'R-701']);
    const { problems } = await tryToRecord(api, { lines: [newRig({ inventoryNumber: 'R-700' })] });
    expect(problems).toEqual([
      expect.objectContaining({
        code: 'CONFLICT',
        path: ['lines', '0', 'newItem', 'inventoryNumber'],
      }),
    ]);
  });
});
