import type { Say } from '$lib/words/types';
import type { Setting, SettingId, SettingWord } from '$shared/ladders';
import { figures } from '$shared/figures';

/** What is set, as the head of a row. */
export const settingNames: Readonly<Record<SettingId, string>> = {
  pressure: 'Pressure at the gauge',
  fan: 'Fan of the nozzle',
  distance: 'Distance',
  grit: 'Grit of the diamonds',
  segments: 'Segments on a head',
  'nozzle-pressure': 'Pressure at the nozzle',
  angle: 'Angle to the face',
  cutters: 'Cutters',
  'pass-depth': 'Depth of a pass',
  shot: 'Steel shot',
  travel: 'Travel',
  needles: 'Needles',
  hammer: 'Hammer',
  chisel: 'Chisel to the face',
};

const said: Readonly<Record<SettingWord, string>> = {
  star: 'star-shaped, steel',
  tipped: 'with hard-metal tips',
  walking: 'a slow walk',
  slow: 'half a slow walk',
};

/** The value of a setting, in the reader's units. */
export function settingValue(setting: Setting, say: Say): string {
  const { figure, end, word } = setting;
  if (!figure) return word ? said[word] : '';
  const value = end ? say.end(figure, end) : say.figure(figure);
  if (setting.setting === 'shot') return `S${value}`;
  return figures[figure].unit === 'kg' ? `${value} class` : value;
}

/** The settings of a notch in one line. */
export const notchLine = (notch: readonly Setting[], say: Say): string =>
  notch
    .map((setting) => {
      const value = settingValue(setting, say);
      const short = shortNames[setting.setting];
      return short ? `${short} ${value}` : value;
    })
    .join(', ');

const shortNames: Readonly<Partial<Record<SettingId, string>>> = {
  grit: 'grit',
  segments: 'segments',
  distance: 'from',
  cutters: 'cutters',
  'pass-depth': 'to',
  travel: 'at',
  needles: 'needles',
};
