import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './look/tokens.css';
import './look/base.css';
import './look/print.css';
import { App } from './app/App.js';
import { followChanges } from './api/followChanges.js';
import { keepForOffline } from './app/keepForOffline.js';
import { chosenLight, showLight } from './app/light.js';
import { chosenLanguage, spoken } from './texts/language.js';

showLight(chosenLight());
void followChanges();
keepForOffline();

const root = document.getElementById('root');
if (root) {
  const first = await spoken(chosenLanguage());
  createRoot(root).render(
    <StrictMode>
      <App first={first} />
    </StrictMode>,
  );
}
