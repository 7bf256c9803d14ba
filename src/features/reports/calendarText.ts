import ical, { ICalCalendarMethod, type ICalEventData } from 'ical-generator';

/** What XML and most readers of calendars do not take, but for tab and line feed. */
const controlCharacters = /[\u0000-\u0008\u000b-\u001f\u007f]/g;

export const calendarWords = (text: string): string =>
  text.replaceAll('\r\n', '\n').replace(controlCharacters, '');

/** Events as an iCalendar object (RFC 5545), times in UTC, folded and escaped by the library. */
export function calendarText(name: string, events: readonly ICalEventData[]): string {
  const calendar = ical({
    name: calendarWords(name),
    prodId: { company: 'Reglow', product: 'Reglow', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
  });
  for (const event of events) calendar.createEvent(event);
  return calendar.toString();
}
