/** Dust, noise and vibration of a crew's day, in English: one file for each. */
export { toolWords, type ToolWords } from './safety/tools';
export {
  airflowSentence,
  columnSentence,
  dutyWords,
  protectionSentence,
  silicaControlWords,
  silicaSentence,
} from './safety/silica';
export {
  boundsWords,
  hoursLeftSentence,
  noiseLimitWords,
  noiseSentence,
  protectorCautions,
  protectorSentence,
  standingWords,
  unknownNoiseSentence,
} from './safety/noise';
export {
  minutesSentence,
  sharingSentence,
  unknownVibrationSentence,
  vibrationLimitWords,
  vibrationSentence,
} from './safety/vibration';
export { briefingLine } from './safety/briefing';
export { earsLines, keepOffLine } from './safety/ears';
export { handsLines, hoursInShort, minutesInShort } from './safety/hands';
export { helpSentence, hoursBetween, minuteHours } from './safety/help';
export { shiftProblemSentence } from './safety/problems';
export { briefingWords, controlInShort } from './safety/sheet';
export { cardWords, crewPageWords, settingWords } from './safety/page';
