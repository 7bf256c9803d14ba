import { itemDates, type ItemDates } from '../../domain/provenance/itemDates.js';
import { serialDate, type SerialDate } from '../../domain/provenance/serialDate.js';
import { readDateCode } from '../../domain/values/readDateCode.js';
import { dateCodeFormats } from '../reference/valueTables.js';
import { edtfRange } from './edtfRange.js';
import type { FactCode, ProvenanceFacts } from './provenanceFacts.reads.js';

export interface DatesOfItem extends ItemDates {
  /** Null when the item has no serial number or no model. */
  serial: SerialDate | null;
  parts: readonly (FactCode & { readingCount: number })[];
}

/** Everything that bears on the dates of an item, as one network. */
export function datesOf(facts: ProvenanceFacts, today: string): DatesOfItem {
  const { item, events, confidences, codes, serials } = facts;
  const { serialNumber, modelId } = item;
  const serial =
    serialNumber === null || modelId === null ? null : serialDate(serialNumber, serials);
  const parts = codes.map((code) => ({
    ...code,
    readings: readDateCode(code.dateCode, dateCodeFormats),
  }));
  const dated = events
    .filter(({ id }) => confidences.get(id)?.level !== 'CONTRADICTED')
    .filter(({ earliestOn, latestOn }) => earliestOn !== null || latestOn !== null)
    .map((event) => ({
      id: event.id,
      isMaking: event.kind === 'MADE',
      words: `An event (${event.kind.toLowerCase()}) is dated ${event.dateEdtf ?? ''}.`,
      earliest: event.earliestOn,
      latest: event.latestOn,
    }));
  const acquired = facts.acquisitions.map(({ id, on }) => ({
    id,
    words: `It was acquired on ${on}.`,
    earliest: on,
    latest: on,
  }));
  const found = itemDates({
    today,
    making: [
      ...aboutTheMaking(facts),
      ...aboutTheSerial(serial),
      ...dated.filter((one) => one.isMaking),
    ],
    events: [...dated.filter((one) => !one.isMaking), ...acquired],
    codes: parts.map((code) => ({
      id: idOf(code),
      words: `The date code ${code.dateCode} on the part in ${code.designator}.`,
      origin: code.origin,
      readings: code.readings,
      fittedBy: code.fittedAt.slice(0, 10),
    })),
  });
  return {
    ...found,
    serial,
    parts: parts.map(({ readings, ...code }) => ({ ...code, readingCount: readings.length })),
  };
}

/** A part that sat in two places, or came back, counts by each fitting. */
export const idOf = ({ componentId, designator, fittedAt }: FactCode): string =>
  `${componentId}/${designator}/${fittedAt}`;

function aboutTheMaking({ item }: ProvenanceFacts) {
  const { firstYearMade, lastYearMade, madeEdtf } = item;
  const written = madeEdtf === null ? null : edtfRange(madeEdtf);
  return [
    ...(firstYearMade === null
      ? []
      : [
          {
            id: 'model began',
            words: `The model was first made in ${firstYearMade}.`,
            earliest: `${firstYearMade}-01-01`,
            latest: null,
          },
        ]),
    ...(lastYearMade === null
      ? []
      : [
          {
            id: 'model ended',
            words: `The model was last made in ${lastYearMade}.`,
            earliest: null,
            latest: `${lastYearMade}-12-31`,
          },
        ]),
    ...(written?.kind === 'range'
      ? [
          {
            id: 'record',
            words: `Its own record says that it was made ${madeEdtf ?? ''}.`,
            earliest: written.earliestOn,
            latest: written.latestOn,
          },
        ]
      : []),
  ];
}

function aboutTheSerial(serial: SerialDate | null) {
  if (serial?.kind !== 'DATED') return [];
  const hasSpread = serial.estimate !== null && serial.spreadDays !== null;
  const { earliest, latest } = hasSpread && serial.estimate ? serial.estimate : serial;
  const words = `Its serial number lies beside ${serial.neighbours.join(' and ')}.`;
  return [{ id: 'serial', words, earliest, latest }];
}
