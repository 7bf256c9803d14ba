import { v7 as uuidv7 } from 'uuid';
import type { NewRow } from '../../db/insertRow.js';
import type { RowSource } from '../../db/rowSource.js';
import type { PartyEntity } from '../parties/party.entity.js';
import type { FoundName } from './foundName.js';
import { nameKey } from './nameKey.js';

/** The parties by name; those that a list names first are to be added, as persons. */
export class PartyNames {
  /** Still to be written; whoever writes them empties the list. */
  pending: NewRow<PartyEntity>[] = [];
  readonly added: string[] = [];
  private readonly known = new Map<string, string[]>();

  static async load(query: RowSource['rows']): Promise<PartyNames> {
    const names = new PartyNames();
    const rows = await query<{ id: string; name: string }>(
      'SELECT id AS "id", name AS "name" FROM party ORDER BY id',
    );
    for (const { id, name } of rows) names.know(name, id);
    return names;
  }

  find(name: string): FoundName {
    const [id, twin] = this.known.get(nameKey(name)) ?? [];
    if (twin !== undefined) {
      return { why: `There are several parties called “${name}”: rename one of them first.` };
    }
    if (id !== undefined) return { id };
    const fresh = uuidv7();
    this.know(name, fresh);
    this.pending.push({
      id: fresh,
      kind: 'PERSON',
      name,
      contact: null,
      note: null,
      retiredAt: null,
    });
    this.added.push(name);
    return { id: fresh };
  }

  private know(name: string, id: string): void {
    const key = nameKey(name);
    this.known.set(key, [...(this.known.get(key) ?? []), id]);
  }
}
