import { useState } from 'react';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import { ChangeProjectDocument, type PlannedProjectFragment } from '../../gql/graphql.js';
import { RecordForm } from '../../parts/RecordForm.js';
import { useTexts } from '../../texts/textsContext.js';
import { ProjectFieldset, projectPaths } from './ProjectFieldset.js';
import { isTarget, projectFields, readProject } from './projectFields.js';
import { useReadAndSend } from './useReadAndSend.js';
import styles from './PlanPage.module.css';

/** Changes what a restoration aims at; what another wrote meanwhile is settled first. */
export function ChangeProject({
  project,
  homeCurrency,
  fetchAgain,
}: {
  project: PlannedProjectFragment;
  homeCurrency: string;
  fetchAgain: () => void;
}) {
  const texts = useTexts();
  const { bench, plan, words } = texts;
  const now = projectFields(project, homeCurrency);
  const fields = useFieldDraft(`plan.project.${project.id}`, now, project.version);
  const { send, problems, isSending } = useReadAndSend(
    ChangeProjectDocument,
    (data) => data.changeProject,
  );
  const [isDone, setIsDone] = useState(false);
  const { changes, version } = fields;
  const keep = async () => {
    const read = readProject(changes, { ...now, ...changes }, texts);
    const known = { id: project.id, version };
    if (await send('unread' in read ? read : { input: { ...read.input, ...known } })) {
      fields.clear();
      setIsDone(true);
    }
    fetchAgain();
  };
  return (
    <RecordForm
      className={styles['form']}
      fields={fields}
      nameOf={(name) => plan.fields[name]}
      writtenOf={(_name, value) => (isTarget(value) ? words.standard[value] : value)}
      problems={problems}
      shown={projectPaths}
      isSending={isSending}
      outcome={isDone && bench.kept}
      keep={keep}
    >
      <ProjectFieldset
        valueOf={fields.valueOf}
        type={(name, value) => {
          setIsDone(false);
          fields.type(name, value);
        }}
        problems={problems}
      />
    </RecordForm>
  );
}
