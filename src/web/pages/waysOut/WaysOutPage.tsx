import { useState } from 'react';
import { useQuery } from 'urql';
import { WaysOutDocument } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { MadeToken, type Made } from './MadeToken.js';
import { MakeToken } from './MakeToken.js';
import { PublishedDocuments } from './PublishedDocuments.js';
import { TokenList } from './TokenList.js';
import { WayOutSheet } from './WayOutSheet.js';
import styles from './WaysOutPage.module.css';

/** How other programs read from the collection: examples to copy, and the tokens that they need. */
export function WaysOutPage() {
  const { waysOut } = useTexts();
  useTitle(waysOut.title);
  // In this component alone: on no device is a token kept.
  const [made, setMade] = useState<Made | null>(null);
  const [{ data, error }, fetchAgain] = useQuery({
    query: WaysOutDocument,
    variables: { address: location.origin },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const { ways, documents } = data.waysOut;
  return (
    <div className={styles['page']}>
      <div className={styles['lead']}>
        <h1>{waysOut.title}</h1>
        <p>{waysOut.what}</p>
      </div>
      <Sheet title={waysOut.makeTitle}>
        {made ? (
          <MadeToken
            made={made}
            ways={ways}
            put={() => {
              setMade(null);
            }}
          />
        ) : (
          <MakeToken onMade={setMade} />
        )}
      </Sheet>
      <Sheet title={waysOut.tokensTitle}>
        <TokenList />
      </Sheet>
      {ways.map((way) => (
        <WayOutSheet key={way.scope} way={way}>
          {way.scope === 'DOCUMENTS' && <PublishedDocuments documents={documents} />}
        </WayOutSheet>
      ))}
    </div>
  );
}
