import { headerAliases } from './headerAliases.js';
import { headerKey } from './headerKey.js';
import type { ImportOptions } from './importOptions.js';
import type { TakenColumn } from './importReport.js';
import type { ListField } from './listField.js';
import type { ListProblems } from './listProblems.js';

const fieldByAlias = new Map<string, ListField>(
  Object.entries(headerAliases).flatMap(([field, aliases]) =>
    aliases.map((alias): [string, ListField] => [alias, field as ListField]),
  ),
);

/** What each column of a list is taken for; what is unclear goes to `problems`. */
export function mapColumns(
  headings: readonly string[],
  line: number,
  { kind, mapping, ignore }: Pick<ImportOptions, 'kind' | 'mapping' | 'ignore'>,
  problems: ListProblems,
): TakenColumn[] {
  const stated = new Map(mapping.map(({ column, field }) => [headerKey(column), field]));
  const ignored = new Set(ignore.map(headerKey));
  const keys = new Set(headings.map(headerKey));
  for (const named of [...mapping.map(({ column }) => column), ...ignore]) {
    if (!keys.has(headerKey(named))) {
      problems.add(line, null, `There is no column “${named}”. There are: ${headings.join(', ')}.`);
    }
  }
  const columns = headings.map((heading, index): TakenColumn => {
    const key = headerKey(heading);
    const isIgnored = ignored.has(key);
    const named = stated.get(key) ?? fieldByAlias.get(key) ?? null;
    // A rig has no role: such a column is kept as a remark.
    const field = isIgnored || (kind === 'RIG' && named === 'ROLE') ? null : named;
    return { column: heading.trim() || `Column ${index + 1}`, field, isIgnored };
  });
  refuseTwins(columns, line, problems);
  if (!columns.some(({ field }) => field === 'INVENTORY_NUMBER')) {
    const found = columns.map(({ column }) => column).join(', ');
    problems.add(
      line,
      null,
      `No column is taken for the inventory number. Say which one is; there are: ${found}.`,
    );
  }
  return columns;
}

/** One field, one column; only remarks may come from several. */
function refuseTwins(columns: readonly TakenColumn[], line: number, problems: ListProblems): void {
  const first = new Map<ListField, string>();
  for (const { column, field } of columns) {
    if (field === null || field === 'NOTE') continue;
    const twin = first.get(field);
    if (twin === undefined) first.set(field, column);
    else {
      problems.add(
        line,
        column,
        `“${twin}” and “${column}” are both taken for ${field}. Map one of them to another field or to NOTE, or ignore it.`,
      );
    }
  }
}
