import type { ShownProblem } from '../api/useSend.js';
import type { FindingSeverity, Zone } from '../gql/graphql.js';
import { useTexts } from '../texts/textsContext.js';
import { Choice } from './Choice.js';
import { Field } from './Field.js';
import { ProblemsAt } from './ProblemsAt.js';

interface TypedFinding {
  zone: Zone;
  severity: FindingSeverity;
  note: string;
}

const severities = ['COSMETIC', 'MINOR', 'MAJOR', 'BLOCKING'] as const;

/** Where, how bad, and what is seen. */
export function FindingFields({
  name,
  finding,
  onChange,
  problems,
  path,
  isZoneFixed = false,
}: {
  /** Keeps the choices of two findings on one page apart. */
  name: string;
  finding: TypedFinding;
  onChange: (changes: Partial<TypedFinding>) => void;
  problems: readonly ShownProblem[];
  /** Where the API finds this finding in what is sent. */
  path: readonly string[];
  isZoneFixed?: boolean;
}) {
  const { bench, words } = useTexts();
  return (
    <>
      {!isZoneFixed && (
        <Field label={bench.zone}>
          <select
            value={finding.zone}
            onChange={(event) => {
              onChange({ zone: event.target.value as Zone });
            }}
          >
            {Object.entries(words.zone).map(([zone, said]) => (
              <option key={zone} value={zone}>
                {said}
              </option>
            ))}
          </select>
        </Field>
      )}
      <Choice
        legend={bench.severity}
        name={`severity-${name}`}
        value={finding.severity}
        options={severities.map((value) => ({ value, words: words.severity[value] }))}
        onChange={(severity) => {
          onChange({ severity });
        }}
      />
      <Field label={bench.seen}>
        <textarea
          rows={3}
          value={finding.note}
          onChange={(event) => {
            onChange({ note: event.target.value });
          }}
        />
      </Field>
      <ProblemsAt problems={problems} path={[...path, 'note']} />
    </>
  );
}
