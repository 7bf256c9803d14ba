import type { ShownProblem } from '../../api/useSend.js';
import { Button } from '../../parts/Button.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { TypedPart } from './neededParts.js';
import styles from './StepRows.module.css';

/** The parts that a task needs, with how many of each. */
export function PartRows({
  parts,
  problems,
  onChange,
}: {
  parts: readonly TypedPart[];
  problems: readonly ShownProblem[];
  onChange: (parts: TypedPart[]) => void;
}) {
  const { plan } = useTexts();
  if (parts.length === 0) return <p>{plan.noParts}</p>;
  return (
    <div className={styles['steps']}>
      {parts.map(({ id, name, quantity }, place) => (
        <div key={id} className={styles['row']}>
          <span>{name}</span>
          <input
            aria-label={plan.howMany(name)}
            inputMode="numeric"
            value={quantity}
            onChange={({ target }) => {
              onChange(
                parts.map((part) => (part.id === id ? { ...part, quantity: target.value } : part)),
              );
            }}
          />
          <Button
            weight="quiet"
            aria-label={plan.takeOutPart(name)}
            onClick={() => {
              onChange(parts.filter((part) => part.id !== id));
            }}
          >
            <span aria-hidden="true">×</span>
          </Button>
          <div className={styles['wrong']}>
            <ProblemsAt problems={problems} path={['parts', String(place)]} />
          </div>
        </div>
      ))}
    </div>
  );
}
