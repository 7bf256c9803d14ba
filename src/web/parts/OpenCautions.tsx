import type { ShownHazardFragment } from '../gql/graphql.js';
import { useTexts } from '../texts/textsContext.js';
import form from './Form.module.css';

/** What can still hurt in a set, with the gravest caution of each, beside a step that goes into it. */
export function OpenCautions({ hazards }: { hazards: readonly ShownHazardFragment[] }) {
  const { bench, prove, words } = useTexts();
  const standing = hazards.filter(({ clearedAt, guide }) => !clearedAt || guide.belongsToDesign);
  return (
    <div className={form['caution']}>
      <p>{standing.length === 0 ? bench.noHazards : prove.stillHurts}</p>
      {standing.length > 0 && (
        <ul>
          {standing.map(({ id, kind, cautions }) => (
            <li key={id}>
              <strong>{words.hazard[kind]}</strong>: {cautions[0]}
            </li>
          ))}
        </ul>
      )}
      <p>{prove.localFirst}</p>
    </div>
  );
}
