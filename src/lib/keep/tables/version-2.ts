import type { Table } from './table';

/**
 * Version 2: steps with air below them apart from steps on the ground, bars measured, what the
 * maker's data sheet asks for, and the edge that meets something upright.
 */
export const version2 = [
  {
    id: 'element',
    scope: 'site',
    kind: 'one',
    choices: ['slab', 'steps', 'suspended-steps', 'suspended-slab', 'wall', 'soffit'],
  },
  { id: 'setting', scope: 'site', kind: 'one', choices: ['indoors', 'sheltered', 'open'] },
  { id: 'salts', scope: 'site', kind: 'one', choices: ['none', 'de-icing', 'sea-or-pool'] },
  { id: 'freezeThaw', scope: 'site', kind: 'one', choices: ['rare', 'some', 'often'] },
  { id: 'thickness', scope: 'site', kind: 'number', unit: 'mm' },
  {
    id: 'warnings',
    scope: 'site',
    kind: 'many',
    choices: [
      'settled-or-rocking',
      'holds-something-up',
      'tendons-possible',
      'fire-or-chemical',
      'map-cracking',
      'old-coating-or-adhesive',
      'buried-services',
    ],
  },
  {
    id: 'depth',
    scope: 'zone',
    kind: 'depth',
    unit: 'mm',
    choices: ['film', 'under-3', '3-to-6', '6-to-20', '20-to-50', 'over-50', 'through'],
  },
  {
    id: 'looseness',
    scope: 'zone',
    kind: 'one',
    choices: ['tight', 'powdery', 'flaking', 'fractured', 'hollow', 'rotten'],
  },
  {
    id: 'contamination',
    scope: 'zone',
    kind: 'many',
    choices: ['oil', 'thin-coating', 'thick-coating', 'rubbery-coating', 'salt-bloom', 'growth'],
  },
  { id: 'texture', scope: 'zone', kind: 'one', choices: ['smooth', 'sandy', 'pitted'] },
  {
    id: 'cracks',
    scope: 'zone',
    kind: 'one',
    choices: ['none', 'hairline', 'open', 'crumbling', 'moving'],
  },
  { id: 'crackLength', scope: 'zone', kind: 'number', unit: 'm' },
  {
    id: 'steel',
    scope: 'zone',
    kind: 'one',
    choices: ['none-seen', 'rust-stain', 'exposed', 'corroded'],
  },
  { id: 'barLoss', scope: 'zone', kind: 'one', choices: ['within-limit', 'one-bar', 'neighbours'] },
  { id: 'barCover', scope: 'zone', kind: 'number', unit: 'mm' },
  { id: 'barDiameter', scope: 'zone', kind: 'number', unit: 'mm' },
  { id: 'barSpacing', scope: 'zone', kind: 'number', unit: 'mm' },
  { id: 'barLength', scope: 'zone', kind: 'number', unit: 'm' },
  {
    id: 'finish',
    scope: 'zone',
    kind: 'one',
    choices: [
      'sealer',
      'thin-film',
      'build-coat',
      'self-levelling',
      'thin-overlay',
      'overlay',
      'rebuild',
      'undecided',
    ],
  },
  // The least grade of the concrete surface profile (CSP) that the sheet takes, or no sheet.
  { id: 'makerProfile', scope: 'zone', kind: 'depth', unit: 'CSP', choices: ['no-sheet'] },
  { id: 'makerMoisture', scope: 'zone', kind: 'one', choices: ['damp', 'dry', 'no-sheet'] },
  { id: 'area', scope: 'zone', kind: 'number', unit: 'm2' },
  { id: 'borderLength', scope: 'zone', kind: 'number', unit: 'm' },
] as const satisfies Table;
