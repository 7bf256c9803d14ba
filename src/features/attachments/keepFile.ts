import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { DescribedFile } from './describeFile.js';
import { StoredFileEntity } from './storedFile.entity.js';

/** Writes a received file down, unless the same content is there already. @returns its id. */
export async function keepFile(work: UnitOfWork, file: DescribedFile): Promise<string> {
  const known = () => work.manager.findOneBy(StoredFileEntity, { digest: file.digest });
  const found = await known();
  if (found) return found.id;
  await oneAtATime(work, `file ${file.digest}`);
  const meanwhile = await known();
  if (meanwhile) return meanwhile.id;
  const { id } = await insertRow(work, StoredFileEntity, { ...file, keptAt: work.now });
  return id;
}
