import { Arg, FieldResolver, Resolver, Root } from 'type-graphql';
import type { PictureSize } from './derivedPicture.js';
import { PictureSizeWord } from './pictureSize.js';
import { StoredFile } from './storedFile.type.js';

@Resolver(() => StoredFile)
export class StoredFileResolver {
  @FieldResolver(() => String, {
    description: 'Path on this server at which the original is downloaded, byte for byte.',
  })
  path(@Root() file: StoredFile): string {
    return `/attachments/${file.digest}`;
  }

  @FieldResolver(() => String, {
    nullable: true,
    description:
      'Path on this server of a smaller copy (WebP), without position or camera data; null for what is no picture.',
  })
  picturePath(
    @Root() file: StoredFile,
    @Arg('size', () => PictureSizeWord, {
      defaultValue: 'MEDIUM',
      description: 'How large it is wanted.',
    })
    size: PictureSize,
  ): string | null {
    return file.widthPixels === null
      ? null
      : `/attachments/${file.digest}/picture?size=${size.toLowerCase()}`;
  }
}
