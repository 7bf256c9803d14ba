import type { HazardKind, IntakeSetQuery } from '../../gql/graphql.js';
import { Field } from '../../parts/Field.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './HazardTicks.module.css';

type Notes = Readonly<Partial<Record<HazardKind, string>>>;

/** The catalogue of what can hurt: how each is recognised, its cautions, and a tick to raise it. */
export function HazardTicks({
  guides,
  known,
  notes,
  onChange,
}: {
  guides: IntakeSetQuery['hazardKinds'];
  /** Those that the set has already. */
  known: ReadonlySet<HazardKind>;
  notes: Notes;
  onChange: (notes: Notes) => void;
}) {
  const { intake, set, words } = useTexts();
  return (
    <>
      <p>{intake.hazardHelp}</p>
      <ul className={styles['hazards']}>
        {guides.map(({ kind, recognisedBy, cautions, protection, advice, source }) => {
          const note = notes[kind];
          return (
            <li key={kind}>
              <label className={styles['tick']}>
                <input
                  type="checkbox"
                  checked={note !== undefined}
                  onChange={(event) => {
                    const { [kind]: _gone, ...rest } = notes;
                    onChange(event.target.checked ? { ...notes, [kind]: '' } : rest);
                  }}
                />
                <strong>{words.hazard[kind]}</strong>
                {known.has(kind) && <span>({intake.already})</span>}
              </label>
              <p className={styles['recognised']}>
                <span className="only-heard">{intake.recognised}: </span>
                <span {...fromApi}>{recognisedBy}</span>
              </p>
              {note !== undefined && (
                <Field label={intake.hazardNote}>
                  <input
                    value={note}
                    onChange={(event) => {
                      onChange({ ...notes, [kind]: event.target.value });
                    }}
                  />
                </Field>
              )}
              <details open={note !== undefined}>
                <summary>{set.protection}</summary>
                <ul className={styles['cautions']}>
                  {[...cautions, ...protection, advice].map((said) => (
                    <li key={said} {...fromApi}>
                      {said}
                    </li>
                  ))}
                </ul>
                <p className={styles['recognised']}>
                  {set.source}: <span {...fromApi}>{source}</span>
                </p>
              </details>
            </li>
          );
        })}
      </ul>
    </>
  );
}
