import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';

/** What sort of thing it is, in the person's words, before the sentence about this one. */
export function Remark({ code, message }: { code: string; message: string }) {
  const { words } = useTexts();
  const sorts: Readonly<Partial<Record<string, string>>> = words.remark;
  return (
    <>
      {sorts[code] !== undefined && <strong>{sorts[code]}:</strong>}{' '}
      <span {...fromApi}>{message}</span>
    </>
  );
}
