import { useEffect } from 'react';
import type { Draft } from '../../drafts/useDraft.js';
import type { InspectionOfOthersFragment } from '../../gql/graphql.js';
import type { IntakeDraft } from './intakeDraft.js';

/**
 * The inspections recorded since this one was begun, by somebody else or in another window; and the
 * way to say that they are taken note of. The page's own is not among them, though its answer got lost.
 */
export function useOthersInspections(
  inspections: readonly InspectionOfOthersFragment[],
  { draft, change }: Draft<IntakeDraft>,
) {
  const { known, inspectedAt } = draft;
  const isBegun =
    draft.findings.length > 0 ||
    draft.note !== '' ||
    Object.keys(draft.checks).length > 0 ||
    Object.keys(draft.hazards).length > 0;
  const note = () => {
    change({ known: inspections.map(({ id }) => id) });
  };
  useEffect(() => {
    if (isBegun && known === null) note();
  });
  const own = inspectedAt === null ? null : Date.parse(inspectedAt);
  const others =
    known === null
      ? []
      : inspections.filter(
          (each) => !known.includes(each.id) && Date.parse(each.inspectedAt) !== own,
        );
  return { others, note };
}
