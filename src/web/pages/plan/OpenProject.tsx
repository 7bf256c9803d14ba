import { useState } from 'react';
import { useDraft } from '../../drafts/useDraft.js';
import { OpenProjectDocument } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { ProjectFieldset, projectPaths } from './ProjectFieldset.js';
import { isTarget, newProject, readProject } from './projectFields.js';
import { useReadAndSend } from './useReadAndSend.js';
import styles from './PlanPage.module.css';

/** A restoration is opened: what is to come of the set, and up to which ceiling. */
export function OpenProject({
  itemId,
  homeCurrency,
  isFirst,
}: {
  itemId: string;
  homeCurrency: string;
  isFirst: boolean;
}) {
  const texts = useTexts();
  const { plan, frame } = texts;
  const { draft, change, clear, isKept } = useDraft(
    `plan.open.${itemId}`,
    newProject(homeCurrency),
  );
  const { send, problems, isSending } = useReadAndSend(
    OpenProjectDocument,
    (data) => data.openProject,
  );
  const [opened, setOpened] = useState<string | null>(null);
  const open = async () => {
    const { title, targetStandard } = draft;
    if (!isTarget(targetStandard)) return;
    const read = readProject(draft, draft, texts);
    const asked =
      'unread' in read ? read : { input: { ...read.input, itemId, title, targetStandard } };
    if (!(await send(asked))) return;
    setOpened(title);
    clear();
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void open();
      }}
    >
      <ProjectFieldset
        valueOf={(name) => draft[name]}
        type={(name, value) => {
          setOpened(null);
          change({ [name]: value });
        }}
        problems={problems}
      />
      <ProblemsElsewhere problems={problems} shown={projectPaths} />
      {!isKept && <p>{frame.draftNotKept}</p>}
      <Button weight={isFirst ? 'main' : 'plain'} type="submit" disabled={isSending}>
        {plan.openIt}
      </Button>
      <p role="status" className={styles['kept']}>
        {opened !== null && plan.isOpened(opened)}
      </p>
    </form>
  );
}
