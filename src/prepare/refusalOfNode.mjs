// The lines of Node that the libraries support (typeorm's and eslint's "engines"); package.json's
// "engines" says the same, and a test holds the two together.
const OLDEST_BY_MAJOR = { 20: [19, 0], 22: [13, 0], 24: [11, 0] };
const NEWEST_NAMED_MAJOR = 24;

/**
 * Why this Node cannot run Reglow, with what to do; null when it can.
 * @param {string} version as in process.versions.node
 * @returns {string | null}
 */
export function refusalOfNode(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major > NEWEST_NAMED_MAJOR) return null;
  const oldest = OLDEST_BY_MAJOR[/** @type {20 | 22 | 24} */ (major)];
  if (oldest && minor >= /** @type {number} */ (oldest[0])) return null;
  const trouble = oldest || major < 20 ? 'too old' : 'not a long-term-support line';
  return [
    `Reglow needs Node 20.19, 22.13, 24.11 or later; this is Node ${version}, which is ${trouble}.`,
    'Install a current long-term-support Node from https://nodejs.org and run the same command again.',
  ].join('\n');
}
