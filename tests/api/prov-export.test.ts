import { parse as parseTurtle } from '@frogcat/ttl2jsonld';
import jsonld from 'jsonld';
import { Parser } from 'n3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newRig, record, send } from '../support/lotStory.js';
import { provJsonFaults } from '../support/provJsonFaults.js';
import { brokenOrderings } from '../support/provOrder.js';
import { testApi, type TestApi } from '../support/testApi.js';

const canonical = (document: object): Promise<string> =>
  jsonld.canonize(document, { format: 'application/n-quads' });

describe.each(['sqlite', 'postgres'] as const)('provenance as W3C PROV, on %s', (engine) => {
  let api: TestApi;
  let itemId: string;
  beforeAll(async () => {
    api = await testApi(engine);
    itemId = (await record(api, { lines: [newRig()], acquiredOn: '2020-05-03' })).lines[0].item.id;
    const event = async (input: object) =>
      (await send(api, 'recordProvenanceEvent', 'provenanceEvent', 'id', { itemId, ...input }))
        .provenanceEvent.id as string;
    const works = { name: 'Alder & Finch Works', kind: 'ORGANISATION' };
    await event({ kind: 'MADE', dateEdtf: '1960-01-02', toParty: works });
    await event({ kind: 'REPAIRED', dateEdtf: '197X', note: 'New "mains" lead\nand plug' });
    const eventId = await event({
      kind: 'SOLD',
      dateEdtf: '1961~',
      toParty: { name: 'Inès Carver' },
    });
    await send(api, 'recordEvidence', 'evidence', 'id', {
      eventId,
      kind: 'INVOICE',
      strength: 'STRONG',
      description: 'Bill “No. 7” \\ stamped',
      keptAt: 'Folder 3',
    });
  });
  afterAll(() => api.close());

  const prov = async (format: string): Promise<string> =>
    (
      await api.ask(
        `query ($id: ID!, $format: ProvFormat!) { node(id: $id) { ... on Item { provenance { prov(format: $format) } } } }`,
        { id: itemId, format },
      )
    ).node.provenance.prov;

  it('is PROV-JSON whose statements name only what is there, in an order that can be', async () => {
    const document = JSON.parse(await prov('PROV_JSON'));
    expect(brokenOrderings(document)).toEqual([]);
    expect(provJsonFaults(document)).toEqual([]);
    const known = new Set(
      ['entity', 'activity', 'agent'].flatMap((sort) => Object.keys(document[sort])),
    );
    const ends = Object.entries(document)
      .filter(([sort]) => !['prefix', 'entity', 'activity', 'agent'].includes(sort))
      .flatMap(([, statements]) => Object.values(statements as object))
      .flatMap((statement) => Object.entries(statement as object))
      .filter(([name]) => !['prov:time', 'prov:type', 'prov:role'].includes(name))
      .map(([, name]) => name as string);
    expect(ends.length).toBeGreaterThan(10);
    for (const end of ends) expect(known).toContain(end);
    const types = Object.values(document.activity).map((one: any) => one['prov:type'].$);
    expect(types.sort()).toEqual([
      'crm:E11_Modification',
      'crm:E12_Production',
      'crm:E8_Acquisition',
      'crm:E96_Purchase',
    ]);
  });

  it('says the same as JSON-LD and as Turtle, read back by a parser that did not write it', async () => {
    const linked = await canonical(JSON.parse(await prov('JSON_LD')));
    const turtle = await prov('TURTLE');
    expect(await canonical(parseTurtle(turtle))).toBe(linked);
    expect(new Parser().parse(turtle)).toHaveLength(linked.trim().split('\n').length);
    expect(linked).toContain('<http://www.w3.org/ns/prov#wasRevisionOf>');
    expect(linked).toContain('Inès Carver');
    // A day gives an exact time; an uncertain date gives its bounds and no time.
    expect(linked).toContain('startedAtTime> "1960-01-02T00:00:00Z"');
    expect(linked).toContain('P82a_begin_of_the_begin> "1970-01-01"');
  });
});
