import { useSend } from '../../../api/useSend.js';
import { SettleFindingDocument, type ShownFindingFragment } from '../../../gql/graphql.js';
import { Button } from '../../../parts/Button.js';
import { ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { useTexts } from '../../../texts/textsContext.js';

/** What was settled is open again: what was said of it is set aside, and the history keeps it. */
export function OpenFindingAgain({
  finding,
  onDone,
}: {
  finding: ShownFindingFragment;
  onDone: (words: string) => void;
}) {
  const { prove } = useTexts();
  const { send, problems, isSending } = useSend(
    SettleFindingDocument,
    (data) => data.settleFinding,
  );
  if (finding.status === 'OPEN') return null;
  const openAgain = async () => {
    const { id, version } = finding;
    if (await send({ input: { id, version, status: 'OPEN' } })) onDone(prove.findingOpen);
  };
  return (
    <>
      <Button disabled={isSending} onClick={() => void openAgain()}>
        {prove.openFinding}
      </Button>
      <ProblemsElsewhere problems={problems} shown={[]} />
    </>
  );
}
