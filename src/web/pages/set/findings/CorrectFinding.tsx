import { useSend } from '../../../api/useSend.js';
import { hasDraft } from '../../../drafts/keptDrafts.js';
import { useFieldDraft } from '../../../drafts/useFieldDraft.js';
import {
  ChangeFindingDocument,
  type FindingSeverity,
  type ShownFindingFragment,
  type Zone,
} from '../../../gql/graphql.js';
import { Button } from '../../../parts/Button.js';
import { FindingFields } from '../../../parts/FindingFields.js';
import { Opener } from '../../../parts/Opener.js';
import { ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { SettleFields } from '../../../parts/SettleFields.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';

type Name = 'zone' | 'severity' | 'note';

/** Zone, weight and words of a finding put right; who else changed it meanwhile is not overwritten. */
export function CorrectFinding({
  finding,
  onDone,
}: {
  finding: ShownFindingFragment;
  onDone: (words: string) => void;
}) {
  const { bench, prove, words } = useTexts();
  const place = `finding.correct.${finding.id}`;
  const { zone, severity, note } = finding;
  const now: Record<Name, string> = { zone, severity, note };
  const fields = useFieldDraft(place, now, finding.version);
  const { send, problems, isSending } = useSend(
    ChangeFindingDocument,
    (data) => data.changeFinding,
  );
  const { changes, theirChanges } = fields;
  const typed = {
    zone: fields.valueOf('zone') as Zone,
    severity: fields.valueOf('severity') as FindingSeverity,
    note: fields.valueOf('note'),
  };
  const correct = async (close: () => void) => {
    const isChanged = (name: Name) => changes[name] !== undefined;
    const kept = await send({
      input: {
        id: finding.id,
        version: fields.version,
        ...(isChanged('zone') && { zone: typed.zone }),
        ...(isChanged('severity') && { severity: typed.severity }),
        ...(isChanged('note') && { note: typed.note }),
      },
    });
    if (!kept) return;
    fields.clear();
    close();
    onDone(bench.kept);
  };
  const names: Record<Name, string> = {
    zone: bench.zone,
    severity: bench.severity,
    note: bench.seen,
  };
  const written = (name: Name, value: string) =>
    name === 'zone'
      ? words.zone[value as Zone]
      : name === 'severity'
        ? words.severity[value as FindingSeverity]
        : value;
  return (
    <Opener label={prove.correct} isOpenAtFirst={hasDraft(place)}>
      {(close) => (
        <form
          className={form['form']}
          onSubmit={(event) => {
            event.preventDefault();
            void correct(close);
          }}
        >
          <FindingFields
            name={finding.id}
            finding={typed}
            problems={problems}
            path={[]}
            onChange={(each) => {
              for (const [name, value] of Object.entries(each)) fields.type(name as Name, value);
            }}
          />
          {theirChanges.length > 0 && !isSending && (
            <SettleFields
              changes={theirChanges}
              nameOf={(name) => names[name]}
              writtenOf={written}
              settle={fields.settle}
            />
          )}
          {problems.some(({ code }) => code === 'OUT_OF_DATE') ? (
            <p role="alert">{prove.changedMeanwhile}</p>
          ) : (
            <ProblemsElsewhere problems={problems} shown={[['note']]} />
          )}
          <Button
            type="submit"
            disabled={isSending || theirChanges.length > 0 || Object.keys(changes).length === 0}
          >
            {bench.writeDown}
          </Button>
        </form>
      )}
    </Opener>
  );
}
