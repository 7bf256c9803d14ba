declare module '@frogcat/ttl2jsonld' {
  /** Turtle to JSON-LD, by a grammar of its own: it shares no code with `n3`. */
  export function parse(turtle: string): object;
}
