import { useEffect, useRef, useState } from 'react';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';

const typingMilliseconds = 300;

/** The least power in watts; asked once the typing rests. */
export function WattsField({
  watts,
  onWatts,
  most,
  isOff,
}: {
  watts: number | undefined;
  onWatts: (watts: number | undefined) => void;
  most: number;
  isOff: boolean;
}) {
  const { tonight } = useTexts();
  const [typed, setTyped] = useState(watts === undefined ? '' : String(watts));
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(
    () => () => {
      clearTimeout(waiting.current);
    },
    [],
  );
  return (
    <Field label={tonight.atLeast}>
      <input
        type="number"
        inputMode="decimal"
        min={0}
        max={most}
        step="any"
        value={typed}
        disabled={isOff}
        onChange={({ target }) => {
          setTyped(target.value);
          clearTimeout(waiting.current);
          const asked = Number(target.value);
          waiting.current = setTimeout(() => {
            onWatts(asked > 0 && asked <= most ? asked : undefined);
          }, typingMilliseconds);
        }}
      />
    </Field>
  );
}
