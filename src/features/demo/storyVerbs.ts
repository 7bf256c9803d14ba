import { bringUpVerbs } from './bringUpVerbs.js';
import { intakeVerbs } from './intakeVerbs.js';
import { moneyVerbs } from './moneyVerbs.js';
import { partVerbs } from './partVerbs.js';
import { partingVerbs } from './partingVerbs.js';
import { planVerbs } from './planVerbs.js';
import { projectVerbs } from './projectVerbs.js';
import { shelfVerbs } from './shelfVerbs.js';
import { standingVerbs } from './standingVerbs.js';
import type { StoryVerb } from './storyEvent.js';
import { treatVerbs } from './treatVerbs.js';
import { useVerbs } from './useVerbs.js';
import { workVerbs } from './workVerbs.js';
import { worthVerbs } from './worthVerbs.js';

const verbs: Record<string, StoryVerb> = {
  ...bringUpVerbs,
  ...intakeVerbs,
  ...moneyVerbs,
  ...partVerbs,
  ...partingVerbs,
  ...planVerbs,
  ...projectVerbs,
  ...shelfVerbs,
  ...standingVerbs,
  ...treatVerbs,
  ...useVerbs,
  ...workVerbs,
  ...worthVerbs,
};

/** Every verb that a story may use; what each records is in the file of its kind. */
export const storyVerbs: ReadonlyMap<string, StoryVerb> = new Map(Object.entries(verbs));
