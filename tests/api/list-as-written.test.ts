// cspell:words Gerät größe Kopfhörer Netzgerät
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { decodeList } from '../../src/features/import/decodeList.js';
import { detectEncoding } from '../../src/features/import/detectEncoding.js';
import type { ListSource } from '../../src/features/import/listSource.js';
import { readListAmount } from '../../src/features/import/readListAmount.js';
import { readMade } from '../../src/features/import/readMade.js';
import { readRecords, type ListRecord } from '../../src/features/import/readRecords.js';
import { readRole } from '../../src/features/import/readRole.js';
import { sniffDelimiter } from '../../src/features/import/sniffDelimiter.js';

/** Bytes that arrive one at a time, so that letters and line endings are cut in two. */
const drop = (bytes: Buffer): ListSource => ({
  byteLength: bytes.length,
  bytes: () => Readable.from([...bytes].map((byte) => Buffer.from([byte]))),
});

async function textOf(source: ListSource): Promise<string> {
  let text = '';
  for await (const piece of decodeList(source, await detectEncoding(source))) text += piece;
  return text;
}

async function recordsOf(text: string, mark = ',') {
  const records: ListRecord[] = [];
  const problems: number[] = [];
  for await (const record of readRecords(Readable.from([text]), mark, (line) =>
    problems.push(line),
  )) {
    records.push(record);
  }
  return { records, problems };
}

describe('the bytes of a list', () => {
  const text = 'Gerät;größe\r\n“Öl”;5 €\r';
  const read = 'Gerät;größe\n“Öl”;5 €\n';

  it('are UTF-8 when all of them are valid in it', async () => {
    const source = drop(Buffer.from(text));
    expect(await detectEncoding(source)).toBe('utf-8');
    expect(await textOf(source)).toBe(read);
  });

  it('lose the byte order mark', async () => {
    expect(await textOf(drop(Buffer.from(`\uFEFF${text}`)))).toBe(read);
  });

  // The code page's own bytes: ä E4, ö F6, ß DF, quotation marks 93 and 94, Ö D6, euro 80.
  it('are Windows-1252 when they are not valid UTF-8', async () => {
    const bytes = Buffer.from([
      ...[0x47, 0x65, 0x72, 0xe4, 0x74, 0x3b, 0x67, 0x72, 0xf6, 0xdf, 0x65, 0x0d, 0x0a],
      ...[0x93, 0xd6, 0x6c, 0x94, 0x3b, 0x35, 0x20, 0x80, 0x0d],
    ]);
    expect(await detectEncoding(drop(bytes))).toBe('windows-1252');
    expect(await textOf(drop(bytes))).toBe(read);
  });

  it('are UTF-16 when they begin with its mark', async () => {
    const little = Buffer.from(`\uFEFF${text}`, 'utf16le');
    expect(await textOf(drop(little))).toBe(read);
    expect(await textOf(drop(Buffer.from(little).swap16()))).toBe(read);
  });
});

describe('the rows of a list', () => {
  it('keep the line in which they begin, across quoted line endings and blank lines', async () => {
    const { records } = await recordsOf('a,b\n"x\ny",1\n\n\n"p",2\nq,"\n\n"\nr,3');
    expect(records.map(({ line, cells }) => [line, cells[0]])).toEqual([
      [1, 'a'],
      [2, 'x\ny'],
      [6, 'p'],
      [7, 'q'],
      [10, 'r'],
    ]);
  });

  // RFC 4180, section 2, rules 5 to 7 and their examples.
  it('are read as RFC 4180 has them', async () => {
    const { records } = await recordsOf('"aaa","b\nbb","ccc"\nzzz,yyy,xxx\n"aaa","b""bb","ccc"\n');
    expect(records.map(({ cells }) => cells)).toEqual([
      ['aaa', 'b\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
      ['aaa', 'b"bb', 'ccc'],
    ]);
  });

  it('end at a fault that leaves the rest unclear, and not before', async () => {
    const many = Array.from({ length: 3000 }, (_, index) => `${index},x`).join('\n');
    const { records, problems } = await recordsOf(`${many}\n1,"never closed\n2,x\n`);
    expect(records).toHaveLength(3000);
    expect(problems).toEqual([3001]);
  });
});

it.each([
  ['a;b,c;d\n1,2,3,4,5,6', 'SEMICOLON'],
  ['"a,b,c,d";e\n', 'SEMICOLON'],
  ['\n\na\tb\n', 'TAB'],
  ['a,b', 'COMMA'],
  ['alone\n1;2', 'COMMA'],
])('takes the divider from the headings of %j', (text, delimiter) => {
  expect(sniffDelimiter(text)).toBe(delimiter);
});

describe('a price in a list', () => {
  it.each([
    ['12.50', 2, null, 1250],
    ['12,5', 2, null, 1250],
    ['1.234,50', 2, null, 123450],
    ['1,234.50', 2, null, 123450],
    ["1'234.50", 2, null, 123450],
    ['1 234 567', 2, null, 123456700],
    ['1.234.567', 2, null, 123456700],
    ['1234,567', 3, null, 1234567],
    ['1.234', 2, ',', 123400],
    ['1.234', 3, '.', 1234],
    ['1,234', 0, '.', 1234],
    ['80', 0, null, 80],
  ] as const)('%s with %i decimals and the mark %s is %i', (text, exponent, mark, minorUnits) => {
    expect(readListAmount(text, exponent, mark)).toEqual({ kind: 'amount', minorUnits });
  });

  it.each([
    ['1.234', 2, null],
    ['1,234', 3, null],
    ['1.234', 0, null],
    ['12.345', 2, '.'],
    ['12.5', 2, ','],
    ['1.23.4', 2, null],
    ['1,234,50', 2, null],
    ['1.234.567', 2, '.'],
    ['€ 5', 2, null],
    ['0.123', 2, ','],
    ['', 2, null],
  ] as const)('%s with %i decimals and the mark %s is asked about', (text, exponent, mark) => {
    expect(readListAmount(text, exponent, mark).kind).toBe('refused');
  });
});

it.each([
  ['1965', '1965'],
  ['ca. 1965', '1965~'],
  ['~1965', '1965~'],
  ['1960s', '196X'],
  ['1960er', '196X'],
  ['3/1965', '1965-03'],
  ['3.4.1965', '1965-04-03'],
  ['1964/1966', '1964/1966'],
  ['196X', '196X'],
  ['1965?', '1965?'],
])('knows when a thing made "%s" was made', (text, edtf) => {
  expect(readMade(text, null, '2026-06-01')).toEqual({ edtf });
});

it.each(['soon', '03/04/1965', 'ca. soon', '31.2.1965'])('asks when "%s" was', (text) => {
  expect(readMade(text, null, '2026-06-01')).toHaveProperty('why');
});

it('knows roles in English and German', () => {
  expect(readRole('Power-Supply')).toBe('POWER_SUPPLY');
  expect(readRole('Kopfhörer')).toBe('HEADPHONES');
  expect(readRole('Netzgerät')).toBe('POWER_SUPPLY');
  expect(readRole('toaster')).toBeNull();
});
