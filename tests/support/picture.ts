import sharp from 'sharp';

export interface PictureOptions {
  width?: number;
  height?: number;
  /** Makes two pictures differ. */
  shade?: number;
  /** EXIF orientation, 1 to 8. */
  orientation?: number;
}

/** A JPEG as a camera writes it: with its time, its serial number and the position. */
export const cameraPicture = ({
  width = 120,
  height = 80,
  shade = 100,
  orientation = 1,
}: PictureOptions = {}): Promise<Buffer> =>
  sharp({ create: { width, height, channels: 3, background: { r: shade, g: 90, b: 60 } } })
    .withMetadata({ orientation })
    .withExif({
      IFD0: { Make: 'Quarrendale', Orientation: String(orientation) },
      IFD2: {
        DateTimeOriginal: '2026:03:01 18:30:05',
        OffsetTimeOriginal: '+01:00',
        BodySerialNumber: 'SN-4471',
      },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '51/1 30/1 0/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '0/1 7/1 0/1',
      },
    })
    .jpeg()
    .toBuffer();
