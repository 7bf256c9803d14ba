/**
 * Tells what is going on. On standard error, so that `reglow export > file` stays clean.
 * @param {string} sentence
 */
export function say(sentence) {
  process.stderr.write(`${sentence}\n`);
}
