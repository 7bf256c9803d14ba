import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Of a printed page, in points, 1/72 inch. */
export const margin = 54;
/** Below what is written, for title and number of the page. */
export const footerRoom = 30;

const fonts = join(
  dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')),
  'ttf',
);
// Named by their files: the library opens a font again at each use of a registered name.
export const plain = join(fonts, 'DejaVuSans.ttf');
export const strong = join(fonts, 'DejaVuSans-Bold.ttf');
