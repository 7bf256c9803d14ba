import type { VerdictWord } from '../../gql/graphql.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './BenchEntry.module.css';

/** A verdict in words; its tone only repeats them. */
export function VerdictWords({ word }: { word: VerdictWord }) {
  const { words } = useTexts();
  return <span className={styles[word]}>{words.verdict[word]}</span>;
}
