import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { insertRow } from '../../src/db/insertRow.js';
import { ModelEntity } from '../../src/features/models/model.entity.js';
import { newRig, record, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('what is known of the past, on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const rig = async (more: object = {}) =>
    (await record(api, { lines: [newRig(more)] })).lines[0].item.id as string;
  const event = (input: object) =>
    send(
      api,
      'recordProvenanceEvent',
      'provenanceEvent',
      'id version kind dateEdtf earliestOn latestOn standing evidence fromParty { name } toParty { name } item { id }',
      input,
    );
  const provenance = async (id: string, after: string | null = null, first = 20) =>
    (
      await api.ask(
        `query ($id: ID!, $after: String, $first: Int!) { node(id: $id) { ... on Item { provenance {
          events(first: $first, after: $after) { nodes { dateEdtf } totalCount pageInfo { hasNextPage endCursor } }
          contradictions { code message events { id dateEdtf toParty { name } } }
          basis { method counted { what count } asOf }
        } } } }`,
        { id, after, first },
      )
    ).node.provenance;
  it('shows what may have happened between two days, and where it was kept meanwhile', async () => {
    const id = await rig();
    await event({ itemId: id, kind: 'SOLD', dateEdtf: '1961' });
    await event({ itemId: id, kind: 'STORED', dateEdtf: '1994/..', placeName: 'A boat store' });
    await event({ itemId: id, kind: 'SHOWN', dateEdtf: '1970-05', toParty: { name: 'Town hall' } });
    await event({ itemId: id, kind: 'REPAIRED' });
    await send(api, 'lendItem', 'loan', 'id', {
      itemId: id,
      borrower: { name: 'Radio club' },
      lentOn: '2026-05-01',
    });
    const asked = async (range: string) =>
      (
        await api.ask(
          `query ($id: ID!) { node(id: $id) { ... on Item { provenance {
            events(${range}) { nodes { kind } totalCount }
            chain { overlaps { from } custody { kind startEarliestOn endLatestOn placeName isOnRecordAsLoan keeper { name } } } } } } }`,
          { id },
        )
      ).node.provenance;
    const kinds = async (range: string) =>
      (await asked(range)).events.nodes.map(({ kind }: any) => kind);
    expect(await kinds('first: 9')).toEqual(['SOLD', 'SHOWN', 'STORED', 'REPAIRED']);
    expect(await kinds('from: "1961-06-01", to: "1970-05-15"')).toEqual(['SOLD', 'SHOWN']);
    expect(await kinds('from: "1980-01-01"')).toEqual(['STORED']);
    expect((await asked('to: "1969-12-31"')).events).toEqual({
      nodes: [{ kind: 'SOLD' }],
      totalCount: 1,
    });
    const { chain } = await asked('first: 1');
    expect(chain.overlaps).toEqual([]);
    expect(chain.custody).toMatchObject([
      { kind: 'SHOWN', startEarliestOn: '1970-05-01', keeper: { name: 'Town hall' } },
      { kind: 'STORED', endLatestOn: null, placeName: 'A boat store', keeper: null },
      { kind: 'LENT', isOnRecordAsLoan: true, keeper: { name: 'Radio club' } },
    ]);
  });

  const model = (firstYearMade: number) =>
    api.database.write({ action: 'test', actorId: null, now: '2026-06-01T12:00:00.000Z' }, (work) =>
      insertRow(work, ModelEntity, {
        itemKind: 'RIG',
        maker: 'Alder & Finch',
        designation: `HR-${firstYearMade}`,
        description: null,
        firstYearMade,
        lastYearMade: null,
        note: null,
        retiredAt: null,
      }),
    );

  it('keeps a date as uncertain as it is, with the days that it allows', async () => {
    const { provenanceEvent } = await event({
      itemId: await rig(),
      kind: 'SOLD',
      dateEdtf: ' 1957-04~ ',
      fromParty: { name: 'Harbour Radio Shop', kind: 'ORGANISATION' },
      toParty: { name: 'Ines Carver' },
    });
    expect(provenanceEvent).toMatchObject({
      kind: 'SOLD',
      dateEdtf: '1957-04~',
      earliestOn: '1957-03-01',
      latestOn: '1957-05-31',
      standing: 'CLAIM',
      fromParty: { name: 'Harbour Radio Shop' },
      toParty: { name: 'Ines Carver' },
    });
  });

  it('lists events by date, undated ones last, page by page', async () => {
    const itemId = await rig();
    for (const dateEdtf of [null, '1999', '../1950', '195X', '1972-05', null, '1972-05-02']) {
      expect((await event({ itemId, kind: 'USED', dateEdtf })).problems).toEqual([]);
    }
    const dates: (string | null)[] = [];
    let after: string | null = null;
    do {
      const { events }: any = await provenance(itemId, after, 2);
      expect(events.totalCount).toBe(7);
      dates.push(...(events.nodes as any[]).map((node) => node.dateEdtf));
      after = events.pageInfo.hasNextPage ? events.pageInfo.endCursor : null;
    } while (after);
    expect(dates).toEqual(['195X', '../1950', '1972-05', '1972-05-02', '1999', null, null]);
  });

  it('finds what surely happened before the model, or the set itself, was made', async () => {
    const { id } = await model(1958);
    const itemId = await rig({ modelId: `Model_${id}` });
    await event({ itemId, kind: 'SOLD', dateEdtf: '1955', toParty: { name: 'Ruben Aalto' } });
    await event({ itemId, kind: 'SOLD', dateEdtf: '1957~' });
    await event({ itemId, kind: 'MADE', dateEdtf: '1961' });
    const { contradictions, basis } = await provenance(itemId);
    expect(
      (contradictions as any[]).map(({ code, events }) => [
        code,
        ...(events as any[]).map(({ dateEdtf }) => dateEdtf),
      ]),
    ).toEqual([
      ['BEFORE_FIRST_YEAR_MADE', '1955'],
      ['BEFORE_MAKING', '1955', '1961'],
      ['BEFORE_MAKING', '1957~', '1961'],
    ]);
    expect(contradictions[0].message).toContain('1958');
    expect(contradictions[0].events[0].toParty).toEqual({ name: 'Ruben Aalto' });
    expect(basis.counted).toEqual([{ what: 'provenance events', count: 3 }]);
    expect((await provenance(await rig())).contradictions).toEqual([]);
  });

  it('refuses what is no date, a day to come, and support without evidence, all at once', async () => {
    const itemId = await rig();
    const bad = await event({
      itemId,
      kind: 'SOLD',
      dateEdtf: 'last spring',
      standing: 'SUPPORTED',
    });
    expect(bad.problems.map(({ path }) => path)).toEqual([['dateEdtf'], ['evidence']]);
    expect(bad.problems[0]?.message.length).toBeLessThan(300);
    const late = await event({ itemId, kind: 'SOLD', dateEdtf: '2031' });
    expect(late.problems).toEqual([expect.objectContaining({ path: ['dateEdtf'] })]);
  });

  it('corrects an event, and refuses a correction made on an older version', async () => {
    const { provenanceEvent } = await event({
      itemId: await rig(),
      kind: 'SOLD',
      dateEdtf: '1957',
    });
    const change = (input: object) =>
      send(api, 'changeProvenanceEvent', 'provenanceEvent', 'dateEdtf latestOn standing kind', {
        id: provenanceEvent.id,
        version: 1,
        ...input,
      });
    const { provenanceEvent: changed } = await change({
      dateEdtf: '1958-01',
      standing: 'CONTRADICTED',
      evidence: 'The invoice is of another set.',
    });
    expect(changed).toEqual({
      dateEdtf: '1958-01',
      latestOn: '1958-01-31',
      standing: 'CONTRADICTED',
      kind: 'SOLD',
    });
    expect((await change({ dateEdtf: null })).problems[0]?.code).toBe('OUT_OF_DATE');
    const undated = await change({ version: 2, dateEdtf: null });
    expect(undated.provenanceEvent).toMatchObject({ dateEdtf: null, latestOn: null });
  });

  it('keeps what was said as a claim, of an item or of a lot', async () => {
    const lot = await record(api, { lines: [newRig()] });
    const itemId = lot.lines[0].item.id;
    const claim = (input: object) =>
      send(
        api,
        'recordClaim',
        'claim',
        'id statement saidBy { name } item { id } acquisition { id }',
        {
          statement: 'It came from a coast station.',
          ...input,
        },
      );
    const first = await claim({ itemId, saidBy: { name: 'Tom Fielding' }, saidOn: '2026-05-03' });
    expect(first.claim).toMatchObject({ saidBy: { name: 'Tom Fielding' }, item: { id: itemId } });
    expect((await claim({ acquisitionId: lot.id })).claim.acquisition.id).toBe(lot.id);
    expect((await claim({})).problems[0]).toMatchObject({ code: 'INVALID', path: ['itemId'] });
    expect((await claim({ itemId, acquisitionId: lot.id })).problems).toHaveLength(1);
    const twin = await claim({ itemId, saidBy: { name: 'Tom Fielding' } });
    expect(twin.problems[0]).toMatchObject({ code: 'CONFLICT', path: ['saidBy', 'name'] });
    const { claim: changed } = await send(
      api,
      'changeClaim',
      'claim',
      'statement saidBy { name }',
      {
        id: first.claim.id,
        version: 1,
        statement: 'It came from a ship.',
        saidBy: null,
      },
    );
    expect(changed).toEqual({ statement: 'It came from a ship.', saidBy: null });
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Item { claims { nodes { statement } } } } }`,
      { id: itemId },
    );
    expect(node.claims.nodes).toEqual([{ statement: 'It came from a ship.' }]);
  });
});
