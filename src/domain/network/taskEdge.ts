/** One task must be out of the way before another can begin. */
export interface TaskEdge {
  readonly beforeId: string;
  readonly afterId: string;
}
