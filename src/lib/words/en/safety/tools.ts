import type { ToolId } from '$shared/tools';

/** What a tool is called in a list, and what it is for those who do not know it. */
export interface ToolWords {
  readonly name: string;
  readonly hint: string;
}

/** The tools, in English. */
export const toolWords: Readonly<Record<ToolId, ToolWords>> = {
  jackhammer: {
    name: 'breaker',
    hint: 'A jackhammer: you stand over it and hold it with two hands.',
  },
  'chipping-hammer': {
    name: 'chipping hammer',
    hint: 'A light hammer with a chisel, for edges, bars and cracks.',
  },
  'hand-grinder': { name: 'hand grinder', hint: 'A disc or cup wheel held in two hands.' },
  'hand-saw': { name: 'hand-held concrete saw', hint: 'A cut-off saw with a diamond blade.' },
  'walk-behind-saw': { name: 'walk-behind saw', hint: 'A floor saw that you push.' },
  'floor-grinder': { name: 'floor grinder', hint: 'A grinder on wheels that you walk behind.' },
  scarifier: { name: 'scarifier', hint: 'A drum of cutters on wheels that mills the surface.' },
  shotblaster: {
    name: 'shotblaster',
    hint: 'A machine on wheels that throws steel shot and picks it up again.',
  },
  scabbler: { name: 'scabbler', hint: 'A hand-held hammer with several blunt heads.' },
  'needle-scaler': { name: 'needle scaler', hint: 'A bundle of steel needles driven by air.' },
  'blast-nozzle': { name: 'abrasive-blast nozzle', hint: 'A hose that throws grit with air.' },
  'pressure-washer': { name: 'pressure washer', hint: 'A water lance with a pump.' },
  'jetting-lance': {
    name: 'water-jetting lance',
    hint: 'Water under a pressure that cuts concrete; for specialists only.',
  },
  'power-scraper': { name: 'power scraper', hint: 'A motor-driven blade that lifts coatings.' },
  vacuum: { name: 'vacuum', hint: 'A dust extractor with a fine-dust filter.' },
  compressor: { name: 'compressor', hint: 'The engine that feeds air tools.' },
  'hand-tools': { name: 'hand tools', hint: 'Brush, scraper, hammer: nothing with a motor.' },
};
