import { useLiveQuery } from '../../api/useLiveQuery.js';
import { ProjectOutlookDocument } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { BurnUp } from './BurnUp.js';
import { FinishChances } from './FinishChances.js';

/** Earned and spent over time, and for a restoration under way, when it may be done. */
export function ProjectOutlook({
  id,
  title,
  isOpen,
}: {
  id: string;
  title: string;
  isOpen: boolean;
}) {
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: ProjectOutlookDocument,
    variables: { id, isOpen },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  const project = data?.node && 'earnedValue' in data.node ? data.node : null;
  if (!project) return null;
  return (
    <>
      <BurnUp of={project} title={title} />
      {project.forecast && <FinishChances forecast={project.forecast} title={title} />}
    </>
  );
}
