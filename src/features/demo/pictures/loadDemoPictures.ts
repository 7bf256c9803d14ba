import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { DateTime } from 'luxon';
import sharp from 'sharp';
import { parse } from 'yaml';
import { z } from 'zod';
import { globalId } from '../../../api/kit/globalId.js';
import type { Reads } from '../../../api/kit/typeReads.js';
import type { Database } from '../../../db/database.js';
import { attachFile } from '../../attachments/attachFile.js';
import type { AttachmentStore } from '../../attachments/attachmentStore.js';
import { takeInFile } from '../../attachments/takeInFile.js';
import { readDemoFiles } from '../demoFiles.js';
import { DemoProblem } from '../demoProblem.js';
import { storyClock } from '../storyClock.js';
import { demoLook, type DemoLook } from './demoLook.js';
import { drawThing } from './drawThing.js';

const fileName = join('pictures', 'looks.yml');
const looksShape = z.record(z.string(), z.array(demoLook).min(1));

/**
 * Draws a picture of every thing that the demo describes, and shows it with the thing. The one
 * AFTER the work is shown beside the one from BEFORE.
 * @returns how many there are
 */
export async function loadDemoPictures(
  database: Database,
  store: AttachmentStore,
  folder: string,
  { now, reads }: { now: Date; reads: Reads },
): Promise<number> {
  const looks = looksShape.safeParse(parse(readFileSync(join(folder, fileName), 'utf8')));
  if (!looks.success) throw new DemoProblem(fileName, z.prettifyError(looks.error));
  const { clock, zone } = storyClock(readDemoFiles(folder), folder, now);
  const items = await database.reader.rows<{ id: string; kind: string; inventoryNumber: string }>(
    'SELECT id AS "id", kind AS "kind", inventory_number AS "inventoryNumber" FROM item',
  );
  const idOf = new Map(
    items.map(({ id, kind, inventoryNumber }) => [
      inventoryNumber,
      globalId(kind === 'RIG' ? 'Rig' : 'Accessory', id),
    ]),
  );
  const act = { action: 'loadDemo', actorId: null, now: now.toISOString() };
  let count = 0;
  for (const [inventoryNumber, ofItem] of Object.entries(looks.data)) {
    const toId = idOf.get(inventoryNumber);
    if (toId === undefined) throw new DemoProblem(fileName, `There is no ${inventoryNumber}.`);
    let beforeId: string | null = null;
    for (const look of ofItem) {
      const { takenAt } = look;
      const picture =
        takenAt === undefined
          ? await drawn(look).webp({ quality: 80 }).toBuffer()
          : await photographed(look, DateTime.fromJSDate(clock.instant(takenAt), { zone }));
      const bytes = Readable.from([picture]);
      const ending = takenAt === undefined ? 'webp' : 'jpg';
      const name = `${inventoryNumber}-${look.role.toLowerCase()}.${ending}`;
      const { role, caption } = look;
      const link = { toId, role, caption, beforeId: role === 'AFTER' ? beforeId : null };
      const { result } = await takeInFile(database, store, act, { bytes, name }, (work, id) =>
        attachFile(work, { ...link, fileId: globalId('StoredFile', id) }, reads),
      );
      if (role === 'BEFORE') beforeId = globalId('Attachment', result);
      count++;
    }
  }
  return count;
}

const drawn = (look: DemoLook) => sharp(Buffer.from(drawThing(look)));

/** With the time that a camera writes: Exif 2.32, tag 36867. */
const photographed = (look: DemoLook, takenAt: DateTime): Promise<Buffer> =>
  drawn(look)
    .jpeg({ quality: 80 })
    .withExif({ IFD2: { DateTimeOriginal: takenAt.toFormat('yyyy:MM:dd HH:mm:ss') } })
    .toBuffer();
