import type { Table } from './table';

/** Version 1, frozen: links and files made with it are in the world. Nothing here ever changes. */
export const version1 = [
  {
    id: 'element',
    scope: 'site',
    kind: 'one',
    choices: ['slab', 'steps', 'suspended-slab', 'wall', 'soffit'],
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
  { id: 'area', scope: 'zone', kind: 'number', unit: 'm2' },
] as const satisfies Table;
