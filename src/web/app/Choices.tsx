import { useState } from 'react';
import { languages, type Language } from '../texts/language.js';
import { useLanguage } from '../texts/textsContext.js';
import { chosenLight, chooseLight, type Light } from './light.js';
import styles from './Choices.module.css';

/** Language and light, kept on this device. */
export function Choices() {
  const { language, texts, choose } = useLanguage();
  const { frame } = texts;
  const [light, setLight] = useState<Light>(chosenLight);
  return (
    <div className={styles['choices']}>
      <label>
        <span className="only-heard">{frame.language}</span>
        <select
          value={language}
          onChange={(event) => {
            choose(event.target.value as Language);
          }}
        >
          {Object.entries(languages).map(([tag, { name }]) => (
            <option key={tag} value={tag} lang={tag}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span className="only-heard">{frame.light}</span>
        <select
          value={light}
          onChange={(event) => {
            const next = event.target.value as Light;
            chooseLight(next);
            setLight(next);
          }}
        >
          <option value="system">{frame.lightAsSystem}</option>
          <option value="day">{frame.lightDay}</option>
          <option value="night">{frame.lightNight}</option>
        </select>
      </label>
    </div>
  );
}
