import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readValue } from './readValue.js';
import { ValueNoteEntity } from './valueNote.entity.js';
import type { NoteValueInput } from './worth.inputs.js';

export async function noteValue(work: UnitOfWork, input: NoteValueInput): Promise<string> {
  const check = new Checklist(work);
  const value = await readValue(check, input, work.now);
  check.done();
  return (await insertRow(work, ValueNoteEntity, { ...value, struckAt: null })).id;
}
