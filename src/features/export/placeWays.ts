import type { Reader } from '../../db/reader.js';
import { placeDivider } from '../import/placeNames.js';

/** Each place by id with the whole way to it: "Workshop > Shelf A". */
export async function placeWays(reader: Reader): Promise<(id: unknown) => string | null> {
  const rows = await reader.rows<{ id: string; name: string; withinId: string | null }>(
    'SELECT id AS "id", name AS "name", within_id AS "withinId" FROM place',
  );
  const places = new Map(rows.map((row) => [row.id, row]));
  return (id) => {
    const names: string[] = [];
    for (let place = places.get(String(id)); place; place = places.get(place.withinId ?? '')) {
      names.unshift(place.name);
    }
    return names.length > 0 ? names.join(placeDivider) : null;
  };
}
