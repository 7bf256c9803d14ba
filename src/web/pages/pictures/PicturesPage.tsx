import { Link, useParams } from '@tanstack/react-router';
import { useConnection } from '../../api/useConnection.js';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import {
  PicturesHeadDocument,
  SetPicturesDocument,
  type SetPicturesQuery,
  type ShownPictureFragment,
} from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { AddPictures } from './AddPictures.js';
import { PicturePairs } from './PicturePairs.js';
import { PictureWall } from './PictureWall.js';
import styles from './PicturesPage.module.css';

const none = {
  nodes: [] as ShownPictureFragment[],
  pageInfo: { hasNextPage: false, endCursor: null },
};
const pageOf = (data: SetPicturesQuery) => data.item?.attachments ?? none;
const picturesAtOnce = 48;

/** Every photograph of a set: pairs from before and after the work, then the rest in their order. */
export function PicturesPage() {
  const { number } = useParams({ from: '/sets/$number/pictures' });
  const { frame, pictures } = useTexts();
  useTitle(pictures.titleOf(number));
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: PicturesHeadDocument,
    variables: { number },
  });
  const files = useConnection(SetPicturesDocument, { number }, pageOf, picturesAtOnce);
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const { item } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
  const shown = files.rows.filter(({ file }) => file.smaller !== null);
  const coverId = item.coverPicture?.id ?? null;
  return (
    <>
      <p>
        <Link to="/sets/$number" params={{ number }}>
          {[item.inventoryNumber, item.name].filter(Boolean).join(' ')}
        </Link>
      </p>
      <h1 className={styles['title']}>{pictures.title}</h1>
      <AddPictures itemId={item.id} onKept={files.fetchAgain} />
      {files.error && <Failed error={files.error} retry={files.fetchAgain} />}
      {!files.isHere && !files.error && <Loading />}
      {files.isHere && shown.length === 0 && (
        <Notice title={pictures.noneTitle} help={pictures.noneHelp} />
      )}
      <PicturePairs pictures={shown} />
      <PictureWall pictures={shown} coverId={coverId} fetchAgain={files.fetchAgain} />
      {files.hasMore && (
        <div>
          <Button onClick={files.fetchMore} disabled={files.isFetching}>
            {frame.more}
          </Button>
        </div>
      )}
    </>
  );
}
