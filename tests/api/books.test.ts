import { parse } from 'csv-parse/sync';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { contextOf } from '../../src/api/serveApi.js';
import { writeSchedule } from '../../src/features/insurance/writeSchedule.js';
import { money, newRig, record, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('the books on %s', (engine) => {
  let api: TestApi;
  let rigs: string[];

  const done = async (verb: string, field: string, input: object, shown = 'id version') => {
    const answer: any = await send(api, verb, field, shown, input);
    expect(answer.problems).toEqual([]);
    return answer[field];
  };
  const value = (itemId: string, basis: string, valuedOn: string, likely: object) =>
    done('noteValue', 'valueNote', {
      itemId,
      basis,
      standard: 'NOT_WORKING',
      valuedOn,
      likely,
      source: 'Saleroom',
    });

  beforeEach(async () => {
    api = await testApi(engine);
    const lot = await record(api, {
      acquiredOn: '2024-03-01',
      price: money('300.00'),
      spreadMethod: 'STATED_SHARES',
      lines: [
        { ...newRig({ name: '=1+1', serialNumber: '@77' }), statedShare: '2' },
        { ...newRig({ name: 'Attic set' }), statedShare: '1' },
      ],
    });
    rigs = lot.lines.map(({ item }) => item.id);
  });
  afterEach(() => api.close());

  it('set what the collection cost against what it was worth, year by year', async () => {
    const [first = '', second = ''] = rigs;
    await value(first, 'FAIR_MARKET', '2024-06-01', money('150.00'));
    await value(first, 'FAIR_MARKET', '2025-06-01', money('260.00'));
    await value(first, 'REPLACEMENT', '2025-07-01', money('999.00'));
    await done('recordExpense', 'expense', {
      itemId: first,
      spentOn: '2025-02-01',
      amount: money('40.00'),
      description: 'Cord',
    });
    await done('recordDisposal', 'disposal', {
      kind: 'SOLD',
      disposedOn: '2025-10-01',
      price: money('80.00'),
      costs: [{ description: 'Fee', amount: money('5.00') }],
      lines: [{ itemId: second }],
    });
    const { books } = await api.ask(`{ books { currency
      years { day heldCount valuedCount cost { total { amount } } worth { total { amount } } }
      disposals { inventoryNumber proceeds { amount } sellingCosts { amount } cost { amount } gain { amount } basis { method } }
      basis { method } } }`);
    const { months } = (
      await api.ask(
        '{ books { months { month spent { total { amount } } worth { total { amount } } } } }',
      )
    ).books;
    expect(months.map(({ month }: any) => month)).toHaveLength(24);
    expect([months[0].month, months.at(-1).month]).toEqual(['2024-07', '2026-06']);
    const ofMonth = (wanted: string) => months.find(({ month }: any) => month === wanted);
    expect(ofMonth('2025-02')).toMatchObject({
      spent: { total: { amount: '40.00' } },
      worth: { total: { amount: '150.00' } },
    });
    expect(ofMonth('2025-06')).toMatchObject({
      spent: { total: { amount: '0.00' } },
      worth: { total: { amount: '260.00' } },
    });
    const year = (day: string, heldCount: number, cost: string, worth: string) => ({
      day,
      heldCount,
      valuedCount: 1,
      cost: { total: { amount: cost } },
      worth: { total: { amount: worth } },
    });
    expect(books.years).toEqual([
      year('2024-12-31', 2, '300.00', '150.00'),
      year('2025-12-31', 1, '240.00', '260.00'),
      year('2026-06-01', 1, '240.00', '260.00'),
    ]);
    expect(books.disposals).toMatchObject([
      {
        proceeds: { amount: '80.00' },
        sellingCosts: { amount: '5.00' },
        cost: { amount: '100.00' },
        gain: { amount: '-25.00' },
      },
    ]);
  });

  it('list for the insurer each value with its basis and date, and what has none', async () => {
    const [first = ''] = rigs;
    await value(first, 'FAIR_MARKET', '2026-05-01', money('260.00'));
    await value(first, 'REPLACEMENT', '2025-07-01', money('400.00'));
    const asked = `{ insuranceSchedule { items { inventoryNumber what serialNumber value { amount } valueBasis valuedOn item { name } }
      total { total { amount } } unvalued csv pdfPath basis { counted { what count } } } }`;
    const { insuranceSchedule } = await api.ask(asked);
    expect(insuranceSchedule.items[0]).toMatchObject({
      what: '=1+1',
      value: { amount: '400.00' },
      valueBasis: 'REPLACEMENT',
      valuedOn: '2025-07-01',
      item: { name: '=1+1' },
    });
    expect(insuranceSchedule).toMatchObject({
      total: { total: { amount: '400.00' } },
      unvalued: [insuranceSchedule.items[1].inventoryNumber],
      pdfPath: '/download/insurance-schedule.pdf',
    });
    const [head, row] = parse(insuranceSchedule.csv);
    expect(head).toHaveLength(10);
    expect(row?.slice(1, 4)).toEqual(["'=1+1", "'@77", '400.00']);
    expect(insuranceSchedule.csv).toContain('\r\n');
    await value(rigs[1] ?? '', 'REPLACEMENT', '2025-07-01', money('100.00', 'GBP'));
    const foreign = (await api.ask(asked)).insuranceSchedule;
    expect(foreign.total.total).toBeNull();
  });

  it('print as PDF, of the whole or of a part', async () => {
    const context = contextOf(api.database, api.nowMs);
    const pdf = await writeSchedule(context, { numbers: null, placeName: null }, 'pdf');
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    const { items }: any = (await api.ask('{ insuranceSchedule { items { inventoryNumber } } }'))
      .insuranceSchedule;
    const { inventoryNumber } = items[1];
    const one = await writeSchedule(
      context,
      { numbers: [inventoryNumber], placeName: null },
      'csv',
    );
    const rows = parse(one.toString());
    expect(rows.map(([number]) => number)).toEqual(['inventory number', inventoryNumber]);
  });

  it('refuse a number or a place that is unknown: what is left out is found out after the fire', async () => {
    const context = contextOf(api.database, api.nowMs);
    const of = { numbers: ['R-404', 'R-405'], placeName: 'Nowhere' };
    await expect(writeSchedule(context, of, 'csv')).rejects.toThrow(
      /R-404.*R-405.*no place called “Nowhere”/,
    );
    await expect(writeSchedule(context, { numbers: [], placeName: null }, 'pdf')).rejects.toThrow(
      'at least one inventory number',
    );
  });
});
