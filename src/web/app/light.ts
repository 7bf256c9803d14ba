export type Light = 'system' | 'day' | 'night';

const place = 'reglow.light';

/** The light chosen on this device; as the system has it until one is. */
export function chosenLight(): Light {
  const kept = localStorage.getItem(place);
  return kept === 'day' || kept === 'night' ? kept : 'system';
}

/** Keeps the choice and shows it. */
export function chooseLight(light: Light): void {
  localStorage.setItem(place, light);
  showLight(light);
}

/** `look/tokens.css` reads it from the root element. */
export function showLight(light: Light): void {
  if (light === 'system') delete document.documentElement.dataset['light'];
  else document.documentElement.dataset['light'] = light;
}
