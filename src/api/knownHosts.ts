const loopbackNames = ['localhost', '127.0.0.1', '[::1]'];

/** Tells whether a `Host` header names this server: the loopback, or a name that was allowed. */
export function knownHosts(allowedHosts: readonly string[]): (host: string | undefined) => boolean {
  const known = new Set([...loopbackNames, ...allowedHosts.map((host) => host.toLowerCase())]);
  return (host) => known.has((host ?? '').toLowerCase().replace(/:\d+$/, ''));
}
