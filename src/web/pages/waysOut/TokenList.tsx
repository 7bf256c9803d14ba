import { useConnection } from '../../api/useConnection.js';
import { ReadTokensDocument, type ReadTokensQuery } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { useTexts } from '../../texts/textsContext.js';
import { TokenLine } from './TokenLine.js';
import styles from './WaysOutPage.module.css';

const pageOf = (data: ReadTokensQuery) => data.readTokens;
const everyToken = {};

/** Every token that was made, those taken back too. */
export function TokenList() {
  const { waysOut, frame } = useTexts();
  const tokens = useConnection(ReadTokensDocument, everyToken, pageOf, 20);
  if (tokens.error && !tokens.isHere) {
    return <Failed error={tokens.error} retry={tokens.fetchAgain} />;
  }
  if (!tokens.isHere) return <Loading />;
  if (tokens.rows.length === 0) return <p>{waysOut.noTokens}</p>;
  return (
    <>
      <ul className={styles['tokens']}>
        {tokens.rows.map((token) => (
          <TokenLine key={token.id} token={token} />
        ))}
      </ul>
      {tokens.hasMore && (
        <Button onClick={tokens.fetchMore} disabled={tokens.isFetching}>
          {frame.more}
        </Button>
      )}
    </>
  );
}
