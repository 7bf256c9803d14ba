import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('substitutes and prices on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const partType = async (kind: string, designation: string, ratings: object[] = []) =>
    (
      await api.ask(
        `mutation ($input: CreatePartTypeInput!) { createPartType(input: $input) { partType { id } problems { message } } }`,
        { input: { kind, designation, ratings } },
      )
    ).createPartType.partType.id as string;
  const record = async (originalId: string, substituteId: string, more: object = {}) =>
    (
      await api.ask(
        `mutation ($input: RecordSubstitutionInput!) {
          recordSubstitution(input: $input) { substitution { id version } problems { code message path } }
        }`,
        { input: { originalId, substituteId, grade: 'DIRECT', ...more } },
      )
    ).recordSubstitution;
  const note = async (input: object) =>
    (
      await api.ask(
        `mutation ($input: NotePriceInput!) {
          notePrice(input: $input) { priceNote { id version amount { amount } partType { designation } } problems { message path } }
        }`,
        { input: { kind: 'ASKED', notedOn: '2026-05-01', seenAt: 'Skelmersey fair', ...input } },
      )
    ).notePrice;
  const substitutesOf = async (id: string, heaters = 'PARALLEL') =>
    (
      await api.ask(
        `query ($id: ID!, $heaters: HeaterSupply!) { node(id: $id) { ... on PartType {
          substitutes(heaters: $heaters) { partType { designation } origin serves grade supposedGrade worse recheck unconfirmed whyNot
            inStock lastPrice { amount currency } basis { method } recorded { source } }
        } } }`,
        { id, heaters },
      )
    ).node.substitutes;

  it('offers what a person wrote down before what ratings merely suggest', async () => {
    const sharp = await partType('TUBE', '6AU6');
    const steep = await partType('TUBE', '6AH6');
    await partType('TUBE', '6CB6A');
    await record(sharp, steep, {
      grade: 'WITH_CHANGES',
      consequence: 'More gain, may oscillate.',
      recheck: 'Stability',
      source: 'Own trial',
    });
    const [first, ...others] = await substitutesOf(sharp);
    expect(first).toMatchObject({
      partType: { designation: '6AH6' },
      origin: 'RECORDED',
      serves: true,
      grade: 'WITH_CHANGES',
      recorded: { source: 'Own trial' },
    });
    expect(first.worse[0]).toBe('More gain, may oscillate.');
    expect(others.map((one: any) => one.partType.designation)).not.toContain('6CB6A');
  });

  it('leaves a verdict open while ratings are unconfirmed, and says which', async () => {
    const one = await partType('TUBE', '12AX7');
    const other = await partType('TUBE', '7025');
    const [only] = await substitutesOf(one);
    expect(only).toMatchObject({
      partType: { designation: '7025' },
      serves: null,
      grade: null,
      supposedGrade: 'DIRECT',
    });
    expect(only.unconfirmed).toContain('base of 7025');
    expect(only.unconfirmed).not.toContain('base of 12AX7');
    const { node } = await api.ask(
      `query ($id: ID!, $other: ID!) { node(id: $id) { ... on PartType {
        substituteBy(candidateId: $other) { serves whyNot partType { designation } } } } }`,
      { id: one, other: await partType('TUBE', '6BE6') },
    );
    expect(node.substituteBy).toMatchObject({ serves: null, partType: { designation: '6BE6' } });
    expect(node.substituteBy.whyNot.join(' ')).toMatch(/base is 7CH; the socket is wired for 9A/);
    expect(other).toBeTruthy();
  });

  it('computes capacitors from what is printed on them, the cheaper first', async () => {
    const capacitor = (name: string, microfarads: string, volts: string) =>
      partType('CAPACITOR', name, [
        { name: 'capacitance', value: microfarads, unit: 'uF' },
        { name: 'working voltage', value: volts, unit: 'V' },
      ]);
    const paper = await capacitor('paper 0.1/400', '0.1', '400');
    const dear = await capacitor('film 0.1/630 axial', '0.1', '630');
    const cheap = await capacitor('film 0.1/630 radial', '0.1', '630');
    await capacitor('film 0.1/250', '0.1', '250');
    await note({ partTypeId: dear, amount: { amount: '2.40', currency: 'EUR' } });
    await note({ partTypeId: cheap, amount: { amount: '8.00', currency: 'EUR' }, quantity: 10 });
    const found = await substitutesOf(paper);
    expect(
      found.map((one: any) => [one.partType.designation, one.grade, one.lastPrice?.amount]),
    ).toEqual([
      ['film 0.1/630 radial', 'DIRECT', '0.80'],
      ['film 0.1/630 axial', 'DIRECT', '2.40'],
    ]);
  });

  it('refuses a circle and names the way round, twice at once included', async () => {
    const [a, b, c] = [
      await partType('LAMP', 'lamp A'),
      await partType('LAMP', 'lamp B'),
      await partType('LAMP', 'lamp C'),
    ];
    await record(a, b);
    await record(b, c);
    const circle = await record(c, a);
    expect(circle.substitution).toBeNull();
    expect(circle.problems[0]).toMatchObject({ code: 'CONFLICT', path: ['substituteId'] });
    expect(circle.problems[0].message).toMatch(
      /lamp . is replaced by lamp . is replaced by lamp . is replaced by lamp/,
    );
    const [d, e] = [await partType('LAMP', 'lamp D'), await partType('LAMP', 'lamp E')];
    const both = await Promise.all([record(d, e), record(e, d)]);
    expect(both.filter(({ substitution }) => substitution)).toHaveLength(1);
    expect((await record(a, a)).problems[0].message).toMatch(/by itself/);
  });

  it('lets a mutual substitution serve both ways until it is taken out of use', async () => {
    const [x, y] = [await partType('LAMP', 'lamp X'), await partType('LAMP', 'lamp Y')];
    const { substitution } = await record(x, y, { isMutual: true });
    expect((await substitutesOf(y))[0].partType.designation).toBe('lamp X');
    const { changeSubstitution } = await api.ask(
      `mutation ($input: ChangeSubstitutionInput!) { changeSubstitution(input: $input) {
        substitution { version retiredAt original { designation } substitute { designation } } problems { message } } }`,
      { input: { id: substitution.id, version: 1, isRetired: true } },
    );
    expect(changeSubstitution.substitution).toMatchObject({
      version: 2,
      original: { designation: 'lamp X' },
    });
    expect(await substitutesOf(y)).toEqual([]);
  });

  it('answers with a median, the counts and the age of prices, and forgets struck notes', async () => {
    const part = await partType('TUBE', '6146B');
    await note({ partTypeId: part, amount: { amount: '30', currency: 'EUR' } });
    await note({ partTypeId: part, amount: { amount: '100', currency: 'EUR' }, quantity: 2 });
    const wrong = await note({ partTypeId: part, amount: { amount: '4000', currency: 'EUR' } });
    await api.ask(
      `mutation ($input: ChangePriceNoteInput!) { changePriceNote(input: $input) { problems { message } } }`,
      { input: { id: wrong.priceNote.id, version: 1, isStruck: true } },
    );
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on PartType {
        prices { median { amount } recentCount totalCount newestAgeDays basis { counted { what count } } }
        priceNotes(first: 2) { totalCount nodes { seenAt amount { amount } } }
        reference { designation base isBaseConfirmed ratings { name value isConfirmed sources { title } } }
      } } }`,
      { id: part },
    );
    expect(node.prices).toMatchObject([
      { median: { amount: '40.00' }, recentCount: 2, totalCount: 2, newestAgeDays: 31 },
    ]);
    expect(node.priceNotes).toMatchObject({ totalCount: 3 });
    expect(node.reference).toMatchObject({
      designation: '6146B',
      base: '7CK',
      isBaseConfirmed: false,
    });
    const watts = node.reference.ratings.find((one: any) => one.name === 'plate dissipation');
    expect(watts).toMatchObject({ value: '27', isConfirmed: true });
  });

  it('refuses a price of nothing, of two things, of the future and below zero, all at once', async () => {
    const refused = await note({
      notedOn: '2031-01-01',
      amount: { amount: '-1', currency: 'EUR' },
      quantity: 0,
      seenAt: ' ',
    });
    expect(refused.priceNote).toBeNull();
    expect(refused.problems.map(({ path }: any) => path[0])).toEqual([
      'partTypeId',
      'notedOn',
      'amount',
      'quantity',
      'seenAt',
    ]);
  });

  it('decodes markings and finds preferred values without a collection', async () => {
    const answer = await api.ask(`{
      preferredValues(value: "0.05", series: E12) { nearest { value worstDeviationPercent } serving { value } source { title } }
      resistorByColours(colours: [YELLOW, VIOLET, ORANGE, SILVER]) { value unit tolerancePercent problem }
      unread: valueByLetters(marking: "hello") { value problem }
      dateCodeReadings(code: "606-4-21", fromYear: 1960, toYear: 1969) { year earliest latest maker }
      bands(region: REGION_2) { band upperKilohertz }
      referenceTubes(beginning: "6ba") { designation otherNames tubeClass }
    }`);
    expect(answer.preferredValues.nearest.value).toBe('0.047');
    expect(answer.resistorByColours).toEqual({
      value: '47000',
      unit: 'Ohm',
      tolerancePercent: '10',
      problem: null,
    });
    expect(answer.unread.problem).toMatch(/no value code/);
    expect(answer.dateCodeReadings).toMatchObject([{ year: 1964, maker: '606' }]);
    expect(answer.bands).toContainEqual({ band: '80m', upperKilohertz: '4000' });
    expect(answer.referenceTubes).toEqual([
      { designation: '6BA6', otherNames: ['EF93'], tubeClass: 'REMOTE_PENTODE' },
    ]);
    const { errors } = await api.tryToAsk(`{ preferredValues(value: "0") { nearest { value } } }`);
    expect(errors?.[0]?.message).toBe('Give a value above 0.');
  });
});
