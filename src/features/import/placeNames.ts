import { v7 as uuidv7 } from 'uuid';
import type { NewRow } from '../../db/insertRow.js';
import type { RowSource } from '../../db/rowSource.js';
import type { PlaceEntity } from '../places/place.entity.js';
import type { FoundName } from './foundName.js';
import { nameKey } from './nameKey.js';

/** Between a place and one in it: "Workshop > Shelf A". */
export const placeDivider = ' > ';
const longestName = 200;

/** The places by name and by way; those that a list names first are to be added. */
export class PlaceNames {
  /** Still to be written, outer places first; whoever writes them empties the list. */
  pending: NewRow<PlaceEntity>[] = [];
  readonly added: string[] = [];
  private readonly anywhere = new Map<string, string[]>();
  private readonly within = new Map<string, string[]>();

  static async load(query: RowSource['rows']): Promise<PlaceNames> {
    const names = new PlaceNames();
    const rows = await query<{ id: string; name: string; withinId: string | null }>(
      'SELECT id AS "id", name AS "name", within_id AS "withinId" FROM place ORDER BY id',
    );
    for (const { id, name, withinId } of rows) names.know(name, withinId, id);
    return names;
  }

  find(way: string): FoundName {
    const [first = '', ...inner] = way.split(placeDivider).map((name) => name.trim());
    let found = this.step(way, first, null);
    for (const name of inner) {
      if ('why' in found) return found;
      found = this.step(way, name, found.id);
    }
    return found;
  }

  /** One name of a way; the first may be any place that alone has the name. */
  private step(way: string, name: string, withinId: string | null): FoundName {
    if (name === '' || name.length > longestName) {
      return {
        why: `Each name in “${way.slice(0, 80)}” must have 1 to ${longestName} characters.`,
      };
    }
    const placed = this.within.get(keyOf(name, withinId)) ?? [];
    const found =
      withinId === null && placed.length === 0 ? this.anywhere.get(nameKey(name)) : placed;
    const [id, twin] = found ?? [];
    if (twin !== undefined) {
      return {
        why: `There are several places called “${name}”: write the whole way, as in “Workshop${placeDivider}Shelf A”.`,
      };
    }
    return { id: id ?? this.add(name, withinId) };
  }

  private add(name: string, withinId: string | null): string {
    const id = uuidv7();
    this.know(name, withinId, id);
    this.pending.push({ id, name, withinId, note: null, retiredAt: null });
    this.added.push(name);
    return id;
  }

  private know(name: string, withinId: string | null, id: string): void {
    append(this.anywhere, nameKey(name), id);
    append(this.within, keyOf(name, withinId), id);
  }
}

const keyOf = (name: string, withinId: string | null): string =>
  `${withinId ?? ''}\n${nameKey(name)}`;

function append(map: Map<string, string[]>, key: string, id: string): void {
  map.set(key, [...(map.get(key) ?? []), id]);
}
