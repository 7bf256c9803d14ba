import type { WaysOutQuery } from '../../gql/graphql.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './WaysOutPage.module.css';

type ShownDocument = WaysOutQuery['waysOut']['documents'][number];

/** The published documents by name, with the digest that each can be asked for by as well. */
export function PublishedDocuments({ documents }: { documents: readonly ShownDocument[] }) {
  const { waysOut } = useTexts();
  const told: Readonly<Record<string, string>> = waysOut.documents;
  return (
    <>
      <h3>{waysOut.documentsTitle}</h3>
      <ul className={styles['documents']}>
        {documents.map(({ name, documentId, description, needs }) => (
          <li key={name}>
            <strong>{name}</strong>
            <p>{told[name] ?? description}</p>
            {needs.length > 0 && (
              <p className={styles['soft']}>
                {waysOut.needs(needs.map((need) => waysOut.allowance[need]).join(', '))}
              </p>
            )}
            <code>{documentId}</code>
          </li>
        ))}
      </ul>
    </>
  );
}
