import type { ShownProblem } from '../../../api/useSend.js';
import { Field } from '../../../parts/Field.js';
import { ProblemsAt } from '../../../parts/ProblemsAt.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';
import type { KnownPart } from './knownParts.js';
import type { PartDraft } from './partDraft.js';

/** A part that is written down already, found by the set that it sits in or came out of. */
export function KnownPartFields({
  draft,
  number,
  parts,
  change,
  problems,
}: {
  draft: PartDraft;
  number: string;
  parts: readonly KnownPart[];
  change: (changes: Partial<PartDraft>) => void;
  problems: readonly ShownProblem[];
}) {
  const { prove } = useTexts();
  const chosen = parts.find(({ componentId }) => componentId === draft.componentId);
  return (
    <>
      <div className={form['fields']}>
        <Field label={prove.fromSet}>
          <input
            value={draft.fromNumber || number}
            spellCheck={false}
            onChange={({ target }) => {
              change({ fromNumber: target.value, componentId: '' });
            }}
          />
        </Field>
        <div>
          <Field label={prove.part}>
            <select
              value={draft.componentId}
              onChange={({ target }) => {
                change({ componentId: target.value });
              }}
            >
              <option value="">{parts.length === 0 ? prove.noParts : prove.choosePart}</option>
              {parts.map(({ componentId, designator, name, isSitting }) => (
                <option key={componentId} value={componentId}>
                  {isSitting ? prove.sitsIn(name, designator) : prove.cameOutOf(name, designator)}
                </option>
              ))}
            </select>
          </Field>
          <ProblemsAt problems={problems} path={['componentId']} />
        </div>
      </div>
      {chosen?.isSitting && draft.takenOut !== chosen.componentId && (
        <p>{prove.comesOutFirst(chosen.designator, draft.fromNumber || number)}</p>
      )}
    </>
  );
}
