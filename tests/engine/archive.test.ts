// cspell:words Ünal
import { Readable } from 'node:stream';
import { mkdtemp, readFile, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { insertRow } from '../../src/db/insertRow.js';
import type { Database } from '../../src/db/database.js';
import { archiveVersion } from '../../src/features/export/archiveFormat.js';
import { exportArchive } from '../../src/features/export/exportArchive.js';
import { exportFolder } from '../../src/features/export/exportFolder.js';
import { loadArchive } from '../../src/features/export/loadArchive.js';
import { writeArchive } from '../../src/features/export/writeArchive.js';
import { importList } from '../../src/features/import/importList.js';
import { listInFile, listInText } from '../../src/features/import/listSource.js';
import { ItemEntity } from '../../src/features/items/item.entity.js';
import { PartTypeEntity } from '../../src/features/parts/partType.entity.js';
import { PlaceEntity } from '../../src/features/places/place.entity.js';
import { importOptions } from '../support/importOptions.js';
import { emptyCollection, type OpenedCollection } from '../support/openedCollection.js';

const act = { action: 'fillShelf', actorId: null, now: '2026-03-01T10:00:00.000Z' };
const writtenAt = '2026-06-01T00:00:00.000Z';
const engines = ['sqlite', 'postgres'] as const;
const opened: OpenedCollection[] = [];

async function emptyDatabase(engine: (typeof engines)[number]): Promise<Database> {
  const collection = await emptyCollection(engine);
  opened.push(collection);
  return collection.database;
}

async function textOf(database: Database): Promise<string> {
  const pieces: string[] = [];
  await database.snapshot(async (reader) => {
    for await (const piece of writeArchive(database.dataSource, reader, writtenAt)) {
      pieces.push(piece);
    }
  });
  return pieces.join('');
}

const load = (database: Database, text: string) =>
  loadArchive(database, { ...act, action: 'loadArchive' }, () =>
    Readable.from(inSmallPieces(Buffer.from(text))),
  );

/** So small that words, numbers and letters of several bytes are cut in two. */
function* inSmallPieces(bytes: Buffer): Generator<Buffer> {
  for (let at = 0; at < bytes.length; at += 97) yield bytes.subarray(at, at + 97);
}

/** Places within places, a thing housed in a later one, structured values, odd texts. */
async function fill(database: Database): Promise<void> {
  await importList(
    database,
    act,
    listInText(
      'No,Maker,Model,Place,Date,Price,Currency,Seller,Made,Note,Role\n' +
        'S-1,Gale & Sons,"G ""1""",House > Attic,1.2.2003,12.50,EUR,"Öl, ""Ünal""",1965~,"two\nlines",speaker\n' +
        'S-2,,,Barn,,,,,,"=1+1",key\n',
    ),
    { ...importOptions, kind: 'ACCESSORY' },
  );
  await database.write(act, async (work) => {
    const outer = '01900000-0000-7000-8000-00000000000b';
    await insertRow(work, PlaceEntity, { id: outer, ...place, name: 'Yard', withinId: null });
    const inner = '01900000-0000-7000-8000-00000000000a';
    await insertRow(work, PlaceEntity, { id: inner, ...place, name: 'Shed', withinId: outer });
    await insertRow(work, PartTypeEntity, {
      kind: 'TUBE',
      designation: '6146B',
      description: null,
      ratings: [{ name: 'heater', value: '6.3', unit: 'V', source: null }],
      retiredAt: null,
    });
    const [first, second] = [
      '01900000-0000-7000-8000-00000000000c',
      '01900000-0000-7000-8000-00000000000d',
    ];
    await insertRow(work, ItemEntity, {
      ...item,
      id: second,
      inventoryNumber: 'S-4',
      housedInId: null,
    });
    await insertRow(work, ItemEntity, {
      ...item,
      id: first,
      inventoryNumber: 'S-3',
      housedInId: second,
    });
  });
}

const place = { note: null, retiredAt: null };
const item = {
  kind: 'ACCESSORY',
  name: 'x\t"y" \\ ☃ 𝄞',
  modelId: null,
  role: 'SPEAKER',
  serialNumber: null,
  madeEdtf: null,
  placeId: null,
  note: '',
  retiredAt: '2026-02-01T00:00:00.000Z',
  retiredReason: 'sold',
} as const;

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reglow-test-archive-'));
});
afterAll(async () => {
  for (const { database, drop } of opened) {
    await database.close();
    await drop();
  }
  await rm(folder, { recursive: true, force: true });
});

const standings = (database: Database) =>
  database.reader.rows(
    `SELECT item_id AS "id", computed_at AS "at", readiness_rank AS "rank", facts AS "facts"
     FROM item_standing ORDER BY item_id`,
  );
const costs = (database: Database) =>
  database.reader.rows(
    `SELECT item_id AS "id", currency AS "currency", total_minor_units AS "total"
     FROM item_cost ORDER BY item_id`,
  );
const texts = (database: Database) =>
  database.reader.rows('SELECT item_id AS "id", body AS "body" FROM item_text ORDER BY item_id');

it('goes from SQLite to PostgreSQL and back, and is the same archive byte for byte', async () => {
  const first = await emptyDatabase('sqlite');
  await fill(first);
  const archive = await textOf(first);
  const second = await emptyDatabase('postgres');
  await load(second, archive);
  expect(await textOf(second)).toBe(archive);
  const third = await emptyDatabase('sqlite');
  const counts = await load(third, await textOf(second));
  expect(await textOf(third)).toBe(archive);
  expect(counts.get('item')).toBe(4);
  expect(await texts(third)).toEqual(await texts(first));
  expect(await texts(second)).toEqual(await texts(first));
  expect(await costs(third)).toEqual(await costs(first));
  expect((await standings(third)).length).toBe((await standings(first)).length);
});

describe.each(engines)('an archive on %s', (engine) => {
  it('loads back into an empty collection of the same engine, with what is computed', async () => {
    const before = await emptyDatabase(engine);
    await fill(before);
    const archive = await textOf(before);
    const after = await emptyDatabase(engine);
    await load(after, archive);
    expect(await textOf(after)).toBe(archive);
    expect(await costs(after)).toEqual(await costs(before));
    expect(await costs(after)).not.toEqual([]);
    const [housed] = await after.reader.rows(
      `SELECT host.inventory_number AS "host" FROM item
       JOIN item AS host ON host.id = item.housed_in_id WHERE item.inventory_number = 'S-3'`,
    );
    expect(housed).toEqual({ host: 'S-4' });
    await expect(load(after, archive)).rejects.toThrow('into an empty collection only');
  });

  it('refuses what is cut short, garbled, newer, or not sound, and loads nothing of it', async () => {
    const source = await emptyDatabase(engine);
    await fill(source);
    const archive = await textOf(source);
    const target = await emptyDatabase(engine);
    const empty = await textOf(target);
    const spoiled: [string, string][] = [
      [archive.slice(0, -20), 'cut short'],
      [archive.slice(0, archive.length / 2), 'cut short'],
      ['', 'cut short'],
      ['not JSON', 'cut short'],
      ['[]', 'not a Reglow archive'],
      ['{"format":"other","version":1,"tables":{}}', 'not a Reglow archive'],
      [archive.replace(`"version":${archiveVersion}`, `"version":99`), 'newer Reglow'],
      [archive.replace('"item":[', '"things":['), 'where “item” must come'],
      [archive.replace('"serialNumber"', '"serial"'), 'unknown column “serial”'],
      [archive.replace('"serialNumber":null,', ''), '“serialNumber” is missing'],
      [archive.replace('"kind":"ACCESSORY"', '"kind":null'), '“kind” is null'],
      [archive.replace('"kind":"ACCESSORY"', `"kind":"${'x'.repeat(21)}"`), 'longer than 20'],
      [archive.replace('"priceMinorUnits":1250', '"priceMinorUnits":12.5'), 'not a whole number'],
      [
        archive.replace(/"placeId":"[^"]*"/, '"placeId":"01900000-0000-7000-8000-000000000000"'),
        'refers to a record',
      ],
      [
        archive.replace('"inventoryNumber":"S-3"', '"inventoryNumber":"S-4"'),
        'same inventory number',
      ],
      [`${archive}{}`, 'cut short'],
    ];
    for (const [text, message] of spoiled) {
      expect(text, message).not.toBe(archive);
      await expect(load(target, text), message).rejects.toThrow(message);
      expect(await textOf(target)).toBe(empty);
    }
    await load(target, archive);
    expect(await textOf(target)).toBe(archive);
  });

  it('of an earlier version loads without the tables and columns that came later', async () => {
    const source = await emptyDatabase(engine);
    await fill(source);
    const archive = await textOf(source);
    const { version, tables, ...head } = JSON.parse(archive) as {
      version: number;
      tables: Record<string, Record<string, unknown>[]>;
    };
    const laterTables = new Set(['away', 'baseline']);
    const earlier = Object.fromEntries(
      Object.entries(tables).filter(([name]) => !laterTables.has(name)),
    );
    const items = (earlier['item'] ?? []).map(({ note: _note, ...item }) => item);
    const older = JSON.stringify({
      ...head,
      version: version - 1,
      tables: { ...earlier, item: items },
    });
    const target = await emptyDatabase(engine);
    await load(target, older);
    const [unsaid] = await target.reader.rows<{ unsaid: number }>(
      'SELECT COUNT(*) AS "unsaid" FROM item WHERE note IS NULL',
    );
    expect(unsaid?.unsaid).toBe(items.length);
    const torn = JSON.stringify({ ...head, version, tables: earlier });
    await expect(load(await emptyDatabase(engine), torn)).rejects.toThrow('must come');
  });

  it('shows one instant, whatever is written while it is read', async () => {
    const database = await emptyDatabase(engine);
    await fill(database);
    const before = await textOf(database);
    const pieces: string[] = [];
    await database.snapshot(async (reader) => {
      for await (const piece of writeArchive(database.dataSource, reader, writtenAt)) {
        pieces.push(piece);
        if (pieces.length === 3) {
          const list = listInText('No,Place\nLATE-1,Annex\n');
          await importList(database, act, list, importOptions);
        }
      }
    });
    expect(pieces.join('')).toBe(before);
    expect(await textOf(database)).toContain('LATE-1');
  });

  it('comes as CSV too, a file a kind, of which the list of items loads back', async () => {
    const database = await emptyDatabase(engine);
    await fill(database);
    const csvFolder = await mkdtemp(join(folder, 'csv-'));
    const files = await exportFolder(database, csvFolder);
    expect((await readdir(csvFolder)).sort()).toEqual([...files].sort());
    const items = await readFile(join(csvFolder, 'item.csv'), 'utf8');
    expect(items).toContain('=1+1');
    expect(items.split('\r\n')[0]).toBe(
      'id,version,recordedAt,changedAt,kind,inventoryNumber,name,modelId,role,serialNumber,madeEdtf,placeId,housedInId,note,retiredAt,retiredReason',
    );
    const again = await emptyDatabase(engine);
    const list = await listInFile(join(csvFolder, 'accessories.csv'));
    const report = await importList(again, act, list, { ...importOptions, kind: 'ACCESSORY' });
    expect(report).toMatchObject({ rowsLoaded: 2, problems: [] });
    const csvAgain = await mkdtemp(join(folder, 'csv-'));
    await exportFolder(again, csvAgain);
    expect(await readFile(join(csvAgain, 'accessories.csv'), 'utf8')).toBe(
      await readFile(join(csvFolder, 'accessories.csv'), 'utf8'),
    );
  });

  it('is written under its name only when it is whole', async () => {
    const database = await emptyDatabase(engine);
    const path = join(folder, `${engine}.json`);
    await exportArchive(database, path, writtenAt);
    expect(JSON.parse(await readFile(path, 'utf8'))).toMatchObject({
      format: 'reglow-archive',
      version: archiveVersion,
      writtenAt,
    });
    database.dataSource.getMetadata = () => {
      throw new Error('interrupted');
    };
    const half = join(folder, `${engine}-half.json`);
    await expect(exportArchive(database, half, writtenAt)).rejects.toThrow('interrupted');
    expect((await readdir(folder)).filter((name) => name.includes('half'))).toEqual([]);
  });
});
