import { useSend } from '../../api/useSend.js';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import {
  ChangePictureDocument,
  type ChangeAttachmentInput,
  type ShownPictureFragment,
} from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { SettleFields } from '../../parts/SettleFields.js';
import { useTexts } from '../../texts/textsContext.js';
import { isPictureRole, pictureFields, pictureRoles } from './pictureFields.js';
import styles from './PicturesPage.module.css';

/** What is said of a picture: its caption, what it shows, what it is compared with; cover or not. */
export function PictureWords({
  picture,
  before,
  ordinalOfCover,
  fetchAgain,
}: {
  picture: ShownPictureFragment;
  /** What it may be compared with. */
  before: readonly ShownPictureFragment[];
  /** The place that makes it the cover; null when it is. */
  ordinalOfCover: number | null;
  fetchAgain: () => void;
}) {
  const { bench, pictures, words } = useTexts();
  const fields = useFieldDraft(`picture.${picture.id}`, pictureFields(picture), picture.version);
  const { send, problems, isSending } = useSend(
    ChangePictureDocument,
    (data) => data.changeAttachment,
  );
  const { theirChanges } = fields;
  const isStale = problems.some(({ code }) => code === 'OUT_OF_DATE');
  const put = async (changes: Omit<ChangeAttachmentInput, 'id' | 'version'>) => {
    const input = { id: picture.id, version: fields.version, ...changes };
    const kept = await send({ input });
    if (kept) fields.clear();
    fetchAgain();
  };
  const keep = async () => {
    const { caption, role, beforeId } = fields.changes;
    const isAfter = fields.valueOf('role') === 'AFTER';
    await put({
      ...(caption !== undefined && { caption: caption.trim() || null }),
      ...(role !== undefined && isPictureRole(role) && { role }),
      ...((beforeId !== undefined || !isAfter) && {
        beforeId: isAfter && beforeId ? beforeId : null,
      }),
    });
  };
  const bound = (name: 'caption' | 'role' | 'beforeId') => ({
    value: fields.valueOf(name),
    onChange: (event: { target: { value: string } }) => {
      fields.type(name, event.target.value);
    },
  });
  const captionOf = (id: string): string | undefined =>
    before.find((each) => each.id === id)?.caption ?? undefined;
  return (
    <form
      className={styles['words']}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <Field label={bench.caption}>
        <input {...bound('caption')} />
      </Field>
      <Field label={pictures.role}>
        <select {...bound('role')}>
          {pictureRoles.map((role) => (
            <option key={role} value={role}>
              {words.attachmentRole[role]}
            </option>
          ))}
        </select>
      </Field>
      {fields.valueOf('role') === 'AFTER' && (
        <Field label={pictures.comparedWith}>
          <select {...bound('beforeId')}>
            <option value="">{pictures.noPair}</option>
            {before.map(({ id, caption, file }) => (
              <option key={id} value={id}>
                {caption ?? file.originalName}
              </option>
            ))}
          </select>
        </Field>
      )}
      {theirChanges.length > 0 && !isSending && (
        <SettleFields
          changes={theirChanges}
          nameOf={(name) => pictures.fields[name]}
          writtenOf={(_name, value) =>
            isPictureRole(value) ? words.attachmentRole[value] : (captionOf(value) ?? value)
          }
          settle={fields.settle}
        />
      )}
      {!isStale && <ProblemsElsewhere problems={problems} shown={[]} />}
      <div className={styles['ways']}>
        <Button
          type="submit"
          disabled={
            isSending || theirChanges.length > 0 || Object.keys(fields.changes).length === 0
          }
        >
          {bench.writeDown}
        </Button>
        {ordinalOfCover !== null && (
          <Button
            disabled={isSending}
            onClick={() => void put({ role: 'OVERALL', beforeId: null, ordinal: ordinalOfCover })}
          >
            {pictures.makeCover}
          </Button>
        )}
        <Button weight="quiet" disabled={isSending} onClick={() => void put({ isDetached: true })}>
          {pictures.takeOff}
        </Button>
      </div>
    </form>
  );
}
