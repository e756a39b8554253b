/** What is worn on the eyes, said where flying pieces are warned of and where the crew is briefed. */
export const eyesWorn =
  'Wear goggles that close all round, with a face shield over them for chipping, breaking, grinding, sawing and wire brushing. For abrasive blasting wear the blasting hood.';
