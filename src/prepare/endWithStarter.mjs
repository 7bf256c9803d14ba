const POLL_MILLISECONDS = 500;

/**
 * Under npm a shell stands between npm and us, and a signal sent to npm alone ends npm and that
 * shell but never reaches us: a server nobody sees would keep its port and its database. So the end
 * of the shell is taken as the request to end that it was.
 */
export function endWithStarter() {
  if (process.env['npm_lifecycle_event'] === undefined) return;
  const starter = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === starter) return;
    clearInterval(watch);
    process.kill(process.pid, 'SIGTERM');
  }, POLL_MILLISECONDS);
  watch.unref();
}
