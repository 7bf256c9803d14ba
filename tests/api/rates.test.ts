import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('exchange rates on %s', (engine) => {
  let api: TestApi;
  beforeEach(async () => {
    api = await testApi(engine);
  });
  afterEach(() => api.close());

  const pound = {
    fromCurrency: 'GBP',
    toCurrency: 'EUR',
    ratedOn: '2026-01-05',
    rate: '1.1825',
    source: 'Bulletin of the harbour bank',
  };
  const setRate = (input: object): Promise<any> =>
    send(api, 'setRate', 'exchangeRate', 'id version rate source ratedOn', input);
  const sum = async (amounts: object[], more = ''): Promise<any> =>
    (
      await api.ask(
        `query ($amounts: [MoneyInput!]!) { sumOfMoney(amounts: $amounts, currency: "EUR"${more}) {
          total { amount currency } problems { message } basis { assumptions } } }`,
        { amounts },
      )
    ).sumOfMoney;
  const mixed = [
    { amount: '10.00', currency: 'EUR' },
    { amount: '100.00', currency: 'GBP' },
  ];

  it('refuses a sum across currencies until there is a rate, which is then named', async () => {
    expect(await sum(mixed)).toMatchObject({
      total: null,
      problems: [{ message: expect.stringMatching(/no rate between GBP and EUR/) }],
    });
    const { exchangeRate } = await setRate(pound);
    const answer = await sum(mixed);
    expect(answer.total).toEqual({ amount: '128.25', currency: 'EUR' });
    expect(answer.basis.assumptions[0]).toContain(exchangeRate.id);
    expect((await sum(mixed, `, on: "2026-01-04"`)).total).toBeNull();
    expect((await sum(mixed, `, rateId: "${exchangeRate.id}"`)).total.amount).toBe('128.25');
    const struck = await setRate({ ...pound, version: 1, isStruck: true });
    expect(struck.problems).toEqual([]);
    expect((await sum(mixed)).total).toBeNull();
  });

  it('keeps one rate a day, replaced only by somebody who saw it', async () => {
    const answers = await Promise.all([setRate(pound), setRate({ ...pound, rate: '1.2' })]);
    expect(answers.filter(({ problems }) => problems.length > 0)).toHaveLength(1);
    const seen = answers.find(({ exchangeRate }) => exchangeRate).exchangeRate;
    const replaced = await setRate({ ...pound, rate: '1.3', version: seen.version });
    expect(replaced.exchangeRate.rate).toBe('1.3');
  });

  it('says everything that is wrong with a rate', async () => {
    const { problems } = await setRate({
      ...pound,
      toCurrency: 'GBP',
      rate: '0',
      ratedOn: '2027-01-01',
      source: ' ',
    });
    expect(problems.map(({ path }: { path: string[] }) => path[0])).toEqual([
      'toCurrency',
      'rate',
      'ratedOn',
      'source',
    ]);
  });

  it('brings in a table whole or not at all', async () => {
    const load = (csv: string, more: object = {}): Promise<any> =>
      send(api, 'importRates', 'exchangeRates', 'rate ratedOn', { csv, source: 'Bank', ...more });
    const bad = await load('date,from,to,rate\n2026-01-05,GBP,EUR,1.18\n2026-01-06,GBP,XXQ,-1\n');
    expect(bad.exchangeRates).toBeNull();
    expect(bad.problems).toHaveLength(2);
    expect(bad.problems[0].message).toMatch(/^Line 3: /);
    const good =
      '\ufeffDate,From,To,Rate\r\n2026-01-05,GBP,EUR,1.18\r\n2026-01-05,USD,EUR,0.92\r\n';
    expect((await load(good)).exchangeRates).toHaveLength(2);
    expect((await load(good)).exchangeRates).toEqual([]);
    const other = good.replace('1.18', '1.19');
    expect((await load(other)).problems[0].message).toMatch(/written down as 1.18/);
    expect((await load(other, { isReplacing: true })).exchangeRates).toHaveLength(1);
    expect((await load('date,from\n1,2\n')).problems[0].message).toMatch(
      /lacks the columns to, rate/,
    );
    expect((await load('')).problems[0].message).toMatch(/nothing below/);
  });
});
