import { describedEnum } from '../../api/kit/describedEnum.js';

export const ResistorColour = describedEnum('ResistorColour', 'A colour of a band or body.', {
  BLACK: 'Black.',
  BROWN: 'Brown.',
  RED: 'Red.',
  ORANGE: 'Orange.',
  YELLOW: 'Yellow.',
  GREEN: 'Green.',
  BLUE: 'Blue.',
  VIOLET: 'Violet or purple.',
  GREY: 'Grey, or slate.',
  WHITE: 'White.',
  GOLD: 'Gold.',
  SILVER: 'Silver.',
  PINK: 'Pink.',
  NONE: 'No band where one could be.',
});
export type ResistorColour = keyof typeof ResistorColour;
