import type { ShownProblem } from '../api/useSend.js';
import styles from './ProblemsAt.module.css';
import { fromApi } from '../texts/fromApi.js';

/** What is wrong with one field, beside it: the problems whose path begins so. */
export function ProblemsAt({
  problems,
  path,
}: {
  problems: readonly ShownProblem[];
  path: readonly string[];
}) {
  return <Said problems={problems.filter((problem) => beginsWith(problem, path))} />;
}

/** The problems that no field on the page shows. */
export function ProblemsElsewhere({
  problems,
  shown,
}: {
  problems: readonly ShownProblem[];
  shown: readonly (readonly string[])[];
}) {
  const rest = problems.filter((problem) => !shown.some((path) => beginsWith(problem, path)));
  return <Said problems={rest} />;
}

function Said({ problems }: { problems: readonly ShownProblem[] }) {
  if (problems.length === 0) return null;
  return (
    <div role="alert" className={styles['problems']}>
      {problems.map(({ message, path, isOfPage }) => (
        <p key={path.join('.') + message} {...(isOfPage ? {} : fromApi)}>
          {message}
        </p>
      ))}
    </div>
  );
}

const beginsWith = (problem: ShownProblem, path: readonly string[]): boolean =>
  path.every((part, index) => problem.path[index] === part);
