import type { ShownProblem } from '../api/useSend.js';
import { useTexts } from '../texts/textsContext.js';
import { Field } from './Field.js';
import { ProblemsAt } from './ProblemsAt.js';

/** When something was done, if not just now. */
export function WhenField({
  typed,
  onType,
  problems,
  path,
}: {
  typed: string;
  onType: (typed: string) => void;
  problems: readonly ShownProblem[];
  path: readonly string[];
}) {
  const { prove } = useTexts();
  return (
    <div>
      <Field label={prove.when}>
        <input
          type="datetime-local"
          value={typed}
          onChange={({ target }) => {
            onType(target.value);
          }}
        />
      </Field>
      <ProblemsAt problems={problems} path={path} />
    </div>
  );
}
