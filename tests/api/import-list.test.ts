// cspell:words Hersteller Standort Kaufdatum Preis Währung Gekauft Baujahr Bemerkungen Werkstatt staubig
// cspell:words Netzteil nund Kabel Zwiebelkiste Lanternworks Rolle
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testApi, type TestApi } from '../support/testApi.js';

const bring = `mutation ($input: ImportListInput!) {
  importList(input: $input) {
    report {
      isDryRun rowsRead rowsLoaded encoding delimiter columns { column field isIgnored }
      newModels newPlaces newParties remarks problemCount problems { line column message }
    }
    problems { code message path }
  }
}`;

describe.each(['sqlite', 'postgres'] as const)('bringing an existing list on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const importList = async (csv: string, input: object = {}) =>
    (await api.ask(bring, { input: { kind: 'RIG', isDryRun: false, csv, ...input } })).importList;
  const problemsOf = async (csv: string, input: object = {}) => {
    const { report } = await importList(csv, { isDryRun: true, ...input });
    return report.problems as { line: number | null; column: string | null; message: string }[];
  };
  const rows = (sql: string) => api.database.reader.rows<Record<string, any>>(sql);
  const countOf = async (table: string) =>
    Number((await rows(`SELECT COUNT(*) AS "n" FROM ${table}`))[0]?.['n']);

  it('loads a German list with semicolons, quoted newlines and decimal commas', async () => {
    const csv = [
      '\uFEFFInv.-Nr.;Hersteller;Typ;S/N;Standort;Kaufdatum;Preis;Währung;Gekauft von;Baujahr;Zustand;Bemerkungen',
      'T-1;Morrow & Quill;MQ-40;0042;Werkstatt > Regal A;3.4.1999;1.234,50;eur;R. Invented;ca. 1965;staubig;"mit ""Netzteil""',
      'und Kabel"',
      'T-2;morrow  & quill;mq-40;;regal a;12. März 2001;80;EUR;r. invented;1960er;;',
    ].join('\r\n');
    const { report, problems } = await importList(csv);
    expect(problems).toEqual([]);
    expect(report).toMatchObject({
      rowsRead: 2,
      rowsLoaded: 2,
      encoding: 'utf-8',
      delimiter: 'SEMICOLON',
      newModels: ['Morrow & Quill MQ-40'],
      newPlaces: ['Werkstatt', 'Regal A'],
      newParties: ['R. Invented'],
      problemCount: 0,
    });
    expect(report.columns).toContainEqual({ column: 'Zustand', field: null, isIgnored: false });
    const items = await rows(
      `SELECT item.note AS "note", item.serial_number AS "serial", item.made_edtf AS "made",
         place.name AS "place", lot.acquired_on AS "on", lot.price_minor_units AS "price"
       FROM item JOIN place ON place.id = item.place_id
       JOIN lot_line ON lot_line.item_id = item.id
       JOIN acquisition AS lot ON lot.id = lot_line.acquisition_id ORDER BY item.inventory_number`,
    );
    expect(items).toEqual([
      {
        note: 'Zustand: staubig\nmit "Netzteil"\nund Kabel',
        serial: '0042',
        made: '1965~',
        place: 'Regal A',
        on: '1999-04-03',
        price: 123450,
      },
      { note: null, serial: null, made: '196X', place: 'Regal A', on: '2001-03-12', price: 8000 },
    ]);
  });

  it('writes the history and the search text of what it loaded', async () => {
    const { report } = await importList('No;Name\nH-1;Zwiebelkiste\n');
    expect(report.rowsLoaded).toBe(1);
    const [change] = await rows(
      `SELECT change.action AS "action" FROM change JOIN item ON item.id = change.record_id
       WHERE item.inventory_number = 'H-1'`,
    );
    expect(change).toEqual({ action: 'importList' });
    const [text] = await rows(
      `SELECT body AS "body" FROM item_text JOIN item ON item.id = item_text.item_id
       WHERE item.inventory_number = 'H-1'`,
    );
    expect(text?.['body']).toContain('zwiebelkiste');
  });

  it('reports every problem of a dry run by line and column, and changes nothing', async () => {
    const before = await countOf('item');
    const csv = [
      'No,Maker,Model,Acquired on,Price,Currency,Made',
      'D-1,,M-1,03/04/1971,10.00,EUR,',
      'D-2,Lanternworks,,31.2.1999,10.005,EUR,1965',
      '"D-3',
      'x",Lanternworks,L 1,1.1.2000,1.234,EUR,soon',
      ',Lanternworks,L 1,1999,5,XXZ,',
      'D-1,Lanternworks,L 1,1.1.2000,-5,EUR,',
      'D-6,Lanternworks',
    ].join('\n');
    const { report } = await importList(csv, { isDryRun: true });
    expect(report.rowsRead).toBe(6);
    expect(report.rowsLoaded).toBe(0);
    const places = report.problems.map((problem: any) => [problem.line, problem.column]);
    expect(places).toEqual([
      [2, 'Acquired on'],
      [2, 'Model'],
      [3, 'Acquired on'],
      [3, 'Price'],
      [3, 'Maker'],
      [4, 'Price'],
      [4, 'Made'],
      [6, 'No'],
      [6, 'Acquired on'],
      [6, 'Currency'],
      [7, 'Price'],
      [8, null],
    ]);
    expect(report.problems[0].message).toBe(
      '“03/04/1971” may be 1971-04-03 (day first) or 1971-03-04 (month first). Say for the whole list which order it has (date order: day first or month first), or write the year first.',
    );
    expect(await countOf('item')).toBe(before);
  });

  it('loads nothing when one row of many has to be mended', async () => {
    const good = Array.from({ length: 600 }, (_, index) => `N-${index},Room ${index}`);
    const counts = async () =>
      Promise.all(['item', 'place', 'change', 'item_text'].map((table) => countOf(table)));
    const before = await counts();
    const { report, problems } = await importList(['No,Place', ...good, 'N-5,Attic'].join('\n'));
    expect(report).toMatchObject({ rowsLoaded: 0, problemCount: 1 });
    expect(report.problems).toEqual([
      { line: 602, column: 'No', message: '“N-5” stands in line 7 too.' },
    ]);
    expect(problems[0]).toMatchObject({ code: 'INVALID', path: ['csv'] });
    expect(await counts()).toEqual(before);
  });

  it('takes a date as the person says the list writes it', async () => {
    const csv = 'No,Date,Price\nO-1,03/04/1971,5\n';
    await importList(csv, { dateOrder: 'MONTH_FIRST', currency: 'USD' });
    const [lot] = await rows(
      `SELECT acquired_on AS "on", currency AS "currency" FROM acquisition ORDER BY id DESC LIMIT 1`,
    );
    expect(lot).toEqual({ on: '1971-03-04', currency: 'USD' });
  });

  it('asks for the day of a price, or takes the first day when told to', async () => {
    const csv = 'No,Date,Price,Currency\nF-1,1998,5,EUR\n';
    expect(await problemsOf(csv)).toMatchObject([{ line: 2, column: 'Date' }]);
    await importList(csv, { takesFirstDay: true });
    const [lot] = await rows(
      `SELECT acquired_on AS "on", note AS "note" FROM acquisition ORDER BY id DESC LIMIT 1`,
    );
    expect(lot).toEqual({ on: '1998-01-01', note: 'Day not known; the list says “1998”.' });
  });

  it('keeps what is known of a purchase without a price in the note, and says so', async () => {
    const { report } = await importList('No,Date,Seller\nP-1,1998,A. Imagined\n');
    expect(report.newParties).toEqual([]);
    expect(report.remarks).toHaveLength(1);
    const [item] = await rows(`SELECT note AS "note" FROM item WHERE inventory_number = 'P-1'`);
    expect(item?.['note']).toBe('Date: 1998\nSeller: A. Imagined');
  });

  it('maps and ignores columns as told, and refuses two for one field', async () => {
    const csv = 'Tag,Pet name,Serial,S/N,Secret\nG-1,Old Faithful,1,2,x\n';
    const mapping = [
      { column: 'tag', field: 'INVENTORY_NUMBER' },
      { column: 'Pet name', field: 'NAME' },
    ];
    expect(await problemsOf(csv, { mapping })).toMatchObject([{ line: 1, column: 'S/N' }]);
    expect(await problemsOf(csv)).toHaveLength(2);
    expect(await problemsOf(csv, { mapping, ignore: ['S/N', 'Nowhere'] })).toMatchObject([
      { message: expect.stringContaining('There is no column “Nowhere”') },
    ]);
    const twice = [...mapping, { column: 'S/N', field: 'NOTE' }];
    await importList(csv, { mapping: twice, ignore: ['Secret'] });
    const [item] = await rows(
      `SELECT name AS "name", note AS "note" FROM item WHERE inventory_number = 'G-1'`,
    );
    expect(item).toEqual({ name: 'Old Faithful', note: '2' });
  });

  it('needs a role for each accessory, in English or German', async () => {
    const csv = 'No,Rolle\nA-1,Netzteil\nA-2,power supply\nA-3,\nA-4,toaster\n';
    const found = await problemsOf(csv, { kind: 'ACCESSORY' });
    expect(found.map(({ line, column }) => [line, column])).toEqual([
      [4, 'Rolle'],
      [5, 'Rolle'],
    ]);
    const usual = await problemsOf('No\nA-5\n', { kind: 'ACCESSORY', role: 'SPEAKER' });
    expect(usual).toEqual([]);
  });

  it('refuses a model of the other kind, a place that could be either, and a number it has', async () => {
    await importList('No,Maker,Model,Place\nK-1,Gale,G1,House > Shelf\nK-2,Gale,G1,Barn > Shelf\n');
    const found = await problemsOf('No,Maker,Model,Place,Role\nK-1,gale,g1,Shelf,key\n', {
      kind: 'ACCESSORY',
    });
    expect(found.map(({ column, message }) => [column, message])).toEqual([
      ['No', 'The collection has “K-1” already.'],
      ['Model', 'The model gale g1 is a rig; this list is of accessories.'],
      [
        'Place',
        'There are several places called “Shelf”: write the whole way, as in “Workshop > Shelf A”.',
      ],
    ]);
    expect(await problemsOf('No,Place\nK-3,barn > shelf\n')).toEqual([]);
  });

  it.each([
    ['an empty list', '', null, 'The list is empty.'],
    ['blank lines', '\uFEFF\n\n', null, 'The list is empty.'],
    ['a header alone', 'No,Name\n\n', null, 'The list has a header and no rows below it.'],
    ['an open quote', 'No,Name\nE-1,"never closed\nE-2,x\n', 2, 'never closed'],
    ['a quote in a cell', 'No,Name\nE-1,6" x\nE-2,ok\n', 2, 'mark stands inside a cell'],
    ['text after a quote', 'No,Name\nE-1,"6" x"\nE-2,ok\n', 2, 'Text follows a closing'],
    ['a NUL in the header', 'No,\0\nE-1,a\n', null, 'NUL'],
    ['a huge row', `No,Name\nE-1,${'x'.repeat(300_000)}\n`, 2, 'longer than 200000 bytes'],
    ['a long cell', `No,Name\nE-1,${'x'.repeat(201)}\n`, 2, '201 characters long; 200 is'],
    ['a ragged row', 'No,Name\nE-1,a,b\n', 2, 'This row has 3 cells; the header has 2.'],
    ['a NUL in a cell', `No,Name\n${'A-1,x\n'.padStart(1100, '\n')}E-1,a\0b\n`, 1097, 'NUL'],
  ])('says what is wrong with %s', async (_name, csv, line, message) => {
    const found = await problemsOf(csv);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ line, message: expect.stringContaining(message) });
  });

  it('goes on after a stray quotation mark, and tolerates empty cells at the end', async () => {
    const found = await problemsOf('No,Name\nE-1,6" x\nE-2,ok,,\n,nameless\nE-3,5" y\n');
    expect(found.map(({ line }) => line).sort()).toEqual([2, 4, 5]);
  });

  it('loads one list or the other, whole, when two name the same things at once', async () => {
    const list = Array.from({ length: 40 }, (_, index) => `Z-${index}`).join('\n');
    const both = await Promise.all([importList(`No\n${list}\n`), importList(`No\n${list}\n`)]);
    expect(both.map(({ report }) => report.rowsLoaded).sort()).toEqual([0, 40]);
    const [count] = await rows(
      `SELECT COUNT(*) AS "n" FROM item WHERE inventory_number LIKE 'Z-%'`,
    );
    expect(Number(count?.['n'])).toBe(40);
  });
});
