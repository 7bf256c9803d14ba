import type { ShownProblem } from './useSend.js';

interface UploadAnswer {
  file: { id: string } | null;
  problems: readonly ShownProblem[];
}

/**
 * Sends a file as it is. With `toId` it is attached there at once; without it is only kept, to be
 * attached later by its id.
 * @throws when the program does not answer
 */
export async function uploadFile(
  file: File,
  { toId, caption }: { toId?: string; caption?: string } = {},
): Promise<UploadAnswer> {
  const asked = new URLSearchParams({ name: file.name || 'photograph.jpg' });
  if (toId !== undefined) asked.set('to', toId);
  if (toId !== undefined && caption) asked.set('caption', caption);
  const answer = await fetch(`/attachments?${asked.toString()}`, {
    method: 'POST',
    headers: { 'Apollo-Require-Preflight': 'true', 'Content-Type': 'application/octet-stream' },
    body: file,
  });
  const said = (await answer.json()) as UploadAnswer;
  return { file: said.file, problems: said.problems };
}
