// cspell:words programid sweatersize shoesize submode
import { describe, expect, it } from 'vitest';
import { loggedContact } from '../../src/domain/contactLog/loggedContact.js';
import { readAdi, type AdiRecord } from '../../src/domain/contactLog/readAdi.js';

/**
 * "Sample ADI File" of the Amateur Data Interchange Format, version 3.0.5, adif.org.uk, as it was
 * published. The length of USERDEF1 is wrong in it: 14 for three characters.
 */
const sample = `Generated on 2011-11-22 at 02:15:23Z for WN4AZY

<adif_ver:5>3.0.5
<programid:7>monolog
<USERDEF1:14:N>EPC
<USERDEF2:19:E>SweaterSize,{S,M,L}
<USERDEF3:15:N>ShoeSize,{5:20}

<EOH>

<qso_date:8>19900620
<time_on:4>1523
<call:5>VK9NS
<band:3>20M
<mode:4>RTTY
<sweatersize:1>M
<shoesize:2>11
<app_monolog_compression:3>off
<eor>

<qso_date:8>20101022
<time_on:4>0111
<call:5>ON4UN
<band:3>40M
<mode:3>PSK
<submode:5>PSK63
<epc:5>32123
<app_monolog_compression:3>off
<eor>
`;

/** The example of version 1.0 (1996, adif.org.uk/100/adif10.htm): a header in words alone. */
const firstVersion = `this data was exported using WF1B RTTY version 9, conforming to ADIF standard specification version 9.99
<eoh>

<call:6>WN4AZY<band:3>20M<mode:4>RTTY
<qso_date:8>19960513<time_on:4>1305<eor>

<call:5>N6MRQ<band:2>2M<mode:2>FM
<qso_date:8>19961231<time_on:6>235959<eor>
`;

const valuesOf = ({ fields }: AdiRecord) =>
  Object.fromEntries([...fields].map(([name, { value }]) => [name, value]));

describe('contact logs, against the examples of ADIF', () => {
  it('reads the sample of version 3.0.5, field by field', () => {
    const log = readAdi(sample);
    expect(log.problems).toEqual([]);
    expect(log.records.map(valuesOf)).toEqual([
      {
        QSO_DATE: '19900620',
        TIME_ON: '1523',
        CALL: 'VK9NS',
        BAND: '20M',
        MODE: 'RTTY',
        SWEATERSIZE: 'M',
        SHOESIZE: '11',
        APP_MONOLOG_COMPRESSION: 'off',
      },
      {
        QSO_DATE: '20101022',
        TIME_ON: '0111',
        CALL: 'ON4UN',
        BAND: '40M',
        MODE: 'PSK',
        SUBMODE: 'PSK63',
        EPC: '32123',
        APP_MONOLOG_COMPRESSION: 'off',
      },
    ]);
    const header = [...log.header].map(([name, { value }]) => [name, value]);
    expect(header).toEqual([
      ['ADIF_VER', '3.0.5'],
      ['PROGRAMID', 'monolog'],
      ['USERDEF1', 'EPC'],
      ['USERDEF2', 'SweaterSize,{S,M,L}'],
      ['USERDEF3', 'ShoeSize,{5:20}'],
    ]);
  });

  it('finds the wrong length in its header, and says where', () => {
    const { remarks } = readAdi(sample);
    expect(remarks.map(({ offset }) => sample.slice(offset, offset + 15))).toEqual([
      '<USERDEF1:14:N>',
    ]);
    expect(remarks[0]?.message).toContain('14 characters');
    expect(remarks[0]?.message).toContain('“EPC” has 3');
  });

  it('takes dates and times as UTC, with seconds and without (version 3, data types Date and Time)', () => {
    const contacts = [sample, firstVersion].flatMap((text) =>
      readAdi(text).records.map((record) => loggedContact(record)),
    );
    expect(contacts).toMatchObject(
      [
        { call: 'VK9NS', band: '20m', mode: 'RTTY', at: '1990-06-20T15:23:00Z' },
        { call: 'ON4UN', band: '40m', mode: 'PSK', at: '2010-10-22T01:11:00Z' },
        { call: 'WN4AZY', band: '20m', mode: 'RTTY', at: '1996-05-13T13:05:00Z' },
        { call: 'N6MRQ', band: '2m', mode: 'FM', at: '1996-12-31T23:59:59Z' },
      ].map(({ at, ...contact }) => ({ ...contact, startedAtMs: Date.parse(at) })),
    );
  });

  it('refuses dates before 1930 and what is no day or time (version 3, data types Date and Time)', () => {
    const [record] = readAdi('<call:5>ON4UN<qso_date:8>19291231<time_on:4>2400<eor>').records as [
      AdiRecord,
    ];
    expect(loggedContact(record)).toMatchObject([{ offset: 13 }, { offset: 33 }]);
    const leap = (day: string) =>
      readAdi(`<call:5>ON4UN<qso_date:8>${day}<time_on:4>0000<eor>`).records.map(loggedContact);
    expect(leap('20240229')).toMatchObject([{ call: 'ON4UN' }]);
    expect(leap('20230229')).toMatchObject([[{ offset: 13 }]]);
  });
});
