/** Both servers answer as of one instant, so that their answers can be compared word for word. */
export const benchNowMs = Date.parse('2026-06-01T12:00:00Z');
