/**
 * Whether a process of this number runs on this machine.
 * @param {number} pid
 */
export function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it runs, but belongs to someone else.
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'EPERM';
  }
}
