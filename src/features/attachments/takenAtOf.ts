import exifr from 'exifr';

interface Times {
  DateTimeOriginal?: unknown;
  OffsetTimeOriginal?: unknown;
}

/**
 * When a picture was taken by the camera's own clock (EXIF `DateTimeOriginal`, as ISO 8601), with
 * the camera's offset from UTC where it wrote one; null where it says nothing that is a date.
 * Source: CIPA DC-008 (Exif 2.32), tags 36867 and 36881.
 */
export async function takenAtOf(path: string): Promise<string | null> {
  const times = await exifr
    .parse(path, { pick: ['DateTimeOriginal', 'OffsetTimeOriginal'], reviveValues: false })
    .then((found: Times | undefined) => found ?? {})
    .catch((): Times => ({}));
  const [, year, month, day, time] =
    /^(\d{4}):(\d{2}):(\d{2}) (\d{2}:\d{2}:\d{2})/.exec(String(times.DateTimeOriginal)) ?? [];
  if (year === undefined || month === undefined || day === undefined || time === undefined) {
    return null;
  }
  const local = `${year}-${month}-${day}T${time}`;
  const read = new Date(`${local}Z`);
  // A camera without a clock writes zeros; a date that rolls over was none.
  if (Number.isNaN(read.getTime()) || !read.toISOString().startsWith(local)) return null;
  const [offset = ''] = /^[+-]\d{2}:\d{2}$/.exec(String(times.OffsetTimeOriginal)) ?? [];
  return `${local}${offset}`;
}
