import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { insertRow } from '../../src/db/insertRow.js';
import { ModelEntity } from '../../src/features/models/model.entity.js';
import { newRig, record, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)(
  'the chain and the object itself, on %s',
  (engine) => {
    let api: TestApi;
    let modelId: string;
    let serial = 0;
    beforeAll(async () => {
      api = await testApi(engine);
      const { id } = await api.database.write(
        { action: 'test', actorId: null, now: '2026-06-01T12:00:00.000Z' },
        (work) =>
          insertRow(work, ModelEntity, {
            itemKind: 'RIG',
            maker: 'Alder & Finch',
            designation: 'HR-60',
            description: null,
            firstYearMade: 1958,
            lastYearMade: 1967,
            note: null,
            retiredAt: null,
          }),
      );
      modelId = `Model_${id}`;
    });
    afterAll(() => api.close());

    const rig = async (more: object = {}) =>
      (await record(api, { lines: [newRig(more)], acquiredOn: '2020-05-03' })).lines[0].item
        .id as string;
    const event = async (input: object): Promise<string> => {
      const { provenanceEvent, problems } = await send(
        api,
        'recordProvenanceEvent',
        'provenanceEvent',
        'id',
        input,
      );
      expect(problems).toEqual([]);
      return provenanceEvent.id as string;
    };
    const party = (name: string) => ({ name: `${name} ${++serial}` });
    const fit = async (itemId: string, designator: string, component: object) => {
      const answer: any = await send(api, 'fitComponent', 'fitting', 'id', {
        itemId,
        designator,
        fittedAt: '2021-01-01T10:00:00Z',
        component: { marking: 'capacitor', ...component },
      });
      expect(answer.problems).toEqual([]);
    };
    const past = async (id: string) =>
      (
        await api.ask(
          `query ($id: ID!) { node(id: $id) { ... on Item { provenance {
          events { nodes { id confidence { level rule evidenceCount } evidenceFor { kind keptAt } parties { role party { name } } } }
          contradictions { code message events { id } }
          chain { coveredFrom certainShare possibleShare gaps { from to daysAtLeast daysAtMost }
            holdings { isOwnCollection cameLatestOn wentEarliestOn end holder { name } } }
          dates { making { earliest latest } statementCount conflict { statement }
            codes { designator dateCode origin readingCount possible { earliest latest } repair { earliest latest } }
            serial { state spreadDays bracket { earliest latest } estimate { earliest latest } serialNumbers } }
        } } } }`,
          { id },
        )
      ).node.provenance;

    it('follows the hands it went through, up to this collection, and shows what is missing', async () => {
      const itemId = await rig();
      const shop = party('Harbour Radio Shop');
      await event({ itemId, kind: 'MADE', dateEdtf: '1960-01-01', toParty: party('Works') });
      await event({ itemId, kind: 'SOLD', dateEdtf: '1960-12-31', toParty: party('Ines Carver') });
      await event({
        itemId,
        kind: 'SOLD',
        dateEdtf: '1980-01-01',
        fromParty: shop,
        toParty: party('Tom'),
      });
      const { chain, contradictions } = await past(itemId);
      expect(
        (chain.holdings as any[]).map(({ holder, end }) => [holder?.name.split(' ')[0], end]),
      ).toEqual([
        ['Works', 'GIVEN_UP_IMPLIED'],
        ['Ines', 'NOT_RECORDED'],
        ['Harbour', 'GIVEN_UP'],
        ['Tom', 'GIVEN_UP_IMPLIED'],
        [undefined, 'STILL_HELD'],
      ]);
      expect(chain.holdings[4]).toMatchObject({
        isOwnCollection: true,
        cameLatestOn: '2020-05-03',
      });
      // 1961-01-01 to 1979-12-31: 19 years, four of them leap years.
      expect(chain.gaps).toEqual([
        { from: '1961-01-01', to: '1979-12-31', daysAtLeast: 6939, daysAtMost: 6939 },
      ]);
      expect(contradictions).toEqual([]);
    });

    it('takes a seller’s word for a claim until evidence bears on it', async () => {
      const itemId = await rig();
      const eventId = await event({ itemId, kind: 'SOLD', dateEdtf: '1971' });
      const level = async () => (await past(itemId)).events.nodes[0].confidence.level;
      const evidence = (more: object) =>
        send(api, 'recordEvidence', 'evidence', 'id version', {
          eventId,
          kind: 'INVOICE',
          strength: 'STRONG',
          description: 'It names the serial number.',
          ...more,
        }) as any;
      expect(await level()).toBe('CLAIMED');
      await evidence({ kind: 'STATEMENT', description: 'The seller says so.' });
      expect(await level()).toBe('CLAIMED');
      const { evidence: invoice } = await evidence({ keptAt: 'Folder 3' });
      expect(await level()).toBe('WELL_SUPPORTED');
      await send(api, 'changeEvidence', 'evidence', 'id', {
        id: invoice.id,
        version: 1,
        withdrawnReason: 'It is of another set.',
      });
      expect(await level()).toBe('CLAIMED');
      await evidence({ bearing: 'CONTRADICTS', strength: 'WEAK' });
      expect(await level()).toBe('CONTRADICTED');
      expect((await evidence({ claimId: eventId })).problems).toHaveLength(2);
      const { eventParty }: any = await send(api, 'recordEventParty', 'eventParty', 'role', {
        eventId,
        party: party('Auction house'),
        role: 'AUCTIONEER',
      });
      expect(eventParty).toEqual({ role: 'AUCTIONEER' });
      expect((await past(itemId)).events.nodes[0].parties[0].party.name).toContain('Auction house');
    });

    it('dates the making by original parts and a repair by what replaced them', async () => {
      const itemId = await rig({ modelId });
      await fit(itemId, 'C1', { dateCode: '137-2-34', origin: 'ORIGINAL' });
      await fit(itemId, 'C2', { dateCode: '137-7-10', origin: 'REPLACEMENT' });
      await fit(itemId, 'C3', { dateCode: 'smudged', origin: 'ORIGINAL' });
      const { dates } = await past(itemId);
      expect(dates.conflict).toEqual([]);
      // Made from 1958 to 1967; a "2" before that is 1962, or an old part of 1952 or 1942.
      expect(dates.making).toEqual({ earliest: '1958-01-01', latest: '1967-12-31' });
      const [first, second, third] = dates.codes;
      expect((first.possible as any[]).map(({ earliest }) => earliest.slice(0, 4))).toEqual([
        '1942',
        '1952',
        '1962',
      ]);
      expect(second.repair).toMatchObject({ earliest: '1958-01-01', latest: '2021-01-01' });
      expect(third).toMatchObject({ readingCount: 0, possible: [] });
      await event({ itemId, kind: 'MADE', dateEdtf: '1960' });
      expect(((await past(itemId)).dates.codes[0].possible as any[]).length).toBe(2);
    });

    it('takes a part that is original to another set for a replacement', async () => {
      const donor = await rig({ modelId });
      const itemId = await rig({ modelId });
      await fit(donor, 'V7', { dateCode: '137-7-10', origin: 'ORIGINAL' });
      const { item } = await api.ask(
        'query ($id: ID!) { item: node(id: $id) { ... on Rig { components { nodes { component { id } } } } } }',
        { id: donor },
      );
      const { id } = item.components.nodes[0].component;
      await send(api, 'removeComponent', 'fitting', 'id', {
        componentId: id,
        disposition: 'MOVED',
        removedAt: '2021-02-01T10:00:00Z',
      });
      await send(api, 'fitComponent', 'fitting', 'id', {
        itemId,
        designator: 'V7',
        componentId: id,
        fittedAt: '2021-02-02T10:00:00Z',
      });
      const [code] = (await past(itemId)).dates.codes;
      expect(code.origin).toBe('REPLACEMENT');
    });

    it('names the fewest statements that cannot all be true', async () => {
      const itemId = await rig({ modelId });
      await event({ itemId, kind: 'MADE', dateEdtf: '1960-02' });
      for (const [place, code] of [
        ['C1', '190-6234'],
        ['C2', '190-6235'],
        ['C3', '190-6101'],
      ]) {
        await fit(itemId, place ?? '', { dateCode: code, origin: 'ORIGINAL' });
      }
      const { dates, contradictions } = await past(itemId);
      expect(dates.making).toBeNull();
      expect((dates.conflict as any[]).map(({ statement }) => statement)).toEqual([
        'An event (made) is dated 1960-02.',
        'The date code 190-6234 on the part in C1.',
        'The part is on record as original.',
      ]);
      expect(contradictions).toEqual([
        expect.objectContaining({ code: 'CONFLICTING_DATES', events: [expect.anything()] }),
      ]);
    });

    it('dates a set by its serial number among those of known date', async () => {
      for (const [serialNumber, dateEdtf] of [
        ['1000', '1959-01-01'],
        ['1200', '1959-07-20'],
        ['1400', '1960-02-05'],
      ]) {
        const answer: any = await send(api, 'recordDatedSerial', 'datedSerial', 'id', {
          modelId,
          serialNumber,
          dateEdtf,
          source: 'Production list',
        });
        expect(answer.problems).toEqual([]);
      }
      const { dates } = await past(await rig({ modelId, serialNumber: '1100' }));
      expect(dates.serial).toEqual({
        state: 'DATED',
        spreadDays: 0,
        bracket: { earliest: '1959-01-01', latest: '1959-07-20' },
        estimate: { earliest: '1959-04-11', latest: '1959-04-11' },
        serialNumbers: ['1000', '1200'],
      });
      expect(dates.making).toEqual({ earliest: '1959-04-11', latest: '1959-04-11' });
      const bad: any = await send(api, 'recordDatedSerial', 'datedSerial', 'id', {
        modelId,
        serialNumber: ' ',
        dateEdtf: '1959/..',
        source: 'x',
      });
      expect(bad.problems.map(({ path }: any) => path)).toEqual([['serialNumber'], ['dateEdtf']]);
    });

    it('offers EDTF for people’s words, and compares uncertain dates', async () => {
      const answer = await api.ask(`{
      plain: readDate(text: "195X") { isEdtf earliestOn latestOn offers { edtf } problem }
      words: readDate(text: "late 60s") { isEdtf offers { edtf readAs earliestOn } problem }
      none: readDate(text: "long ago") { isEdtf offers { edtf } problem }
      before: compareDates(first: "195X", second: "1961")
      unknown: compareDates(first: "195X", second: "1955/")
    }`);
      expect(answer.plain).toEqual({
        isEdtf: true,
        earliestOn: '1950-01-01',
        latestOn: '1959-12-31',
        offers: [],
        problem: null,
      });
      expect(answer.words.offers).toEqual([
        { edtf: '[1966..1969]', readAs: 'one of the years 1966 to 1969', earliestOn: '1966-01-01' },
      ]);
      expect(answer.none.problem).toContain('not an EDTF date');
      expect(answer).toMatchObject({ before: 'BEFORE', unknown: 'UNDECIDED' });
    });
  },
);
