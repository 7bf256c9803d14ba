const toSnake = (name: string): string => name.replace(/([a-z0-9])([A-Z])/g, '$1_$2').toLowerCase();

/** `place.within_id AS "withinId", …`: plain rows with the names that the API uses. */
export const selectColumns = (table: string, names: readonly string[]): string =>
  names.map((name) => `${table}.${toSnake(name)} AS "${name}"`).join(', ');
