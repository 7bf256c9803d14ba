import { daysInMonth } from '../dates/daysInMonth.js';
import type { AdiProblem, AdiRecord } from './readAdi.js';

/** A contact of a log, as far as it tells of the use of a rig. */
export interface LoggedContact {
  readonly offset: number;
  /** Of the other station. It tells one contact from another and is kept nowhere. */
  readonly call: string;
  readonly startedAtMs: number;
  readonly endedAtMs: number;
  /** Wavelength name in small letters: 40m. */
  readonly band: string | null;
  readonly mode: string | null;
  /** The station's equipment as the log describes it; null where it says nothing. */
  readonly rigText: string | null;
}

/** Fields of ADIF that are read; all others are named, and left in the log. */
export const fieldsRead = [
  'CALL',
  'QSO_DATE',
  'TIME_ON',
  'QSO_DATE_OFF',
  'TIME_OFF',
  'BAND',
  'MODE',
  'MY_RIG',
] as const;

const DAY_MS = 86_400_000;
/** The least year of a date, by the data types of ADIF. */
const firstYear = 1930;

/**
 * A record as a contact. Dates and times are UTC: `YYYYMMDD`, and `HHMM` or `HHMMSS`. An end before
 * the start is of the next day, unless the record says of which day it is.
 * @returns the contact, or everything that is wrong with the record
 */
export function loggedContact(record: AdiRecord): LoggedContact | AdiProblem[] {
  const problems: AdiProblem[] = [];
  const said = (name: (typeof fieldsRead)[number]): string | null => {
    const text = record.fields.get(name)?.value.trim() ?? '';
    return text === '' ? null : text;
  };
  const refuse = (name: string, message: string): null => {
    problems.push({ offset: record.fields.get(name)?.offset ?? record.offset, message });
    return null;
  };
  const read = (
    name: 'QSO_DATE' | 'TIME_ON' | 'QSO_DATE_OFF' | 'TIME_OFF',
    isWanted: boolean,
    how: (text: string) => number | null,
  ): number | null => {
    const text = said(name);
    if (text === null) return isWanted ? refuse(name, `A contact without ${name}.`) : null;
    const wanted = name.startsWith('TIME') ? 'HHMM or HHMMSS in UTC' : 'YYYYMMDD, from 1930 on';
    return how(text) ?? refuse(name, `“${text.slice(0, 40)}” is no ${name}: ${wanted}.`);
  };
  const call = said('CALL') ?? refuse('CALL', 'A contact without CALL cannot be told from others.');
  const onDay = read('QSO_DATE', true, dayMs);
  const onTime = read('TIME_ON', true, timeMs);
  const offTime = read('TIME_OFF', false, timeMs);
  const offDay = read('QSO_DATE_OFF', false, dayMs);
  if (problems.length > 0 || call === null || onDay === null || onTime === null) return problems;
  const startedAtMs = onDay + onTime;
  const endedAtMs = endOf(startedAtMs, onDay, offDay, offTime);
  if (endedAtMs < startedAtMs) {
    refuse('QSO_DATE_OFF', 'It ends before it begins: look at QSO_DATE_OFF and TIME_OFF.');
    return problems;
  }
  return {
    offset: record.offset,
    call: call.toUpperCase(),
    startedAtMs,
    endedAtMs,
    band: said('BAND')?.toLowerCase() ?? null,
    mode: said('MODE')?.toUpperCase() ?? null,
    rigText: said('MY_RIG'),
  };
}

function endOf(
  startedAtMs: number,
  onDay: number,
  offDay: number | null,
  offTime: number | null,
): number {
  if (offTime === null) return startedAtMs;
  if (offDay !== null) return offDay + offTime;
  const sameDay = onDay + offTime;
  return sameDay < startedAtMs ? sameDay + DAY_MS : sameDay;
}

function dayMs(text: string): number | null {
  const [, year, month, day] = (/^(\d{4})(\d{2})(\d{2})$/.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return null;
  if (year < firstYear || month < 1 || month > 12) return null;
  if (day < 1 || day > daysInMonth(year, month)) return null;
  return Date.UTC(year, month - 1, day);
}

function timeMs(text: string): number | null {
  const [, hours, minutes, seconds = '00'] =
    /^([01]\d|2[0-3])([0-5]\d)([0-5]\d)?$/.exec(text) ?? [];
  if (hours === undefined || minutes === undefined) return null;
  return (Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) * 1000;
}
