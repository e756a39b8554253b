import type { Contaminant } from '$lib/answers/questions';
import type { Drawing, Mark } from '$lib/drawing/mark';
import { dropPath } from '$lib/drawing/motif/small';
import { valueOf } from '$shared/figures';
import { drop } from './body';
import { isStepped, type Frame } from './frame';

/** A skin on the face: `thick` sheet units, torn off at its end; rubber curls back there. */
function skin(frame: Frame, end: number, thick: number, curls: boolean): Mark[] {
  const upper = frame.path([
    [-6, -thick],
    [end, -thick],
  ]);
  const field = frame.path(
    [
      [-6, 0],
      [-6, -thick],
      [end, -thick],
      [end - 4, -thick * 0.5],
      [end - 1, 0],
    ],
    true,
  );
  if (!curls)
    return [
      ['tone', field],
      [
        'ink',
        upper +
          frame.path([
            [end, -thick],
            [end - 4, -thick * 0.5],
            [end - 1, 0],
          ]),
      ],
    ];
  const curl: Drawing = [
    [
      'tone',
      `M0 0C16 0 24-8 20-18C16-26 4-24 6-15C7-11 12-12 12-15L9-15C9-13 8-13 8.5-16C10-21 15-20 17-15C19-8 12-${thick} 0-${thick}z`,
    ],
    ['heavy', 'M0 0C16 0 24-8 20-18C16-26 4-24 6-15C7-11 12-12 12-15'],
  ];
  return [['tone', field], ['ink', upper], ...frame.stand(curl, end - 2)];
}

const oil: Drawing = [
  ['dark', 'M-24 0C-14-4 16-4 24 0C20 7 14 5 10 13C6 6 2 9-2 20C-6 8-10 10-13 6C-17 4-21 5-24 0z'],
  ['dark', dropPath([0, -14], 1.1)],
];

const bloom: Drawing = [
  [
    'ink',
    [-24, -13, 0, 12, 23]
      .map((x, index) => {
        const r = index % 2 ? 9 : 6;
        return `M${x} 0l${-r * 0.7} ${-r}M${x} 0v${-r * 1.4}M${x} 0l${r * 0.7} ${-r}`;
      })
      .join(''),
  ],
];

const moss: Drawing = [
  ['tone', 'M-20 0C-20-8-14-9-12-7C-10-13-2-13 0-8C4-13 12-12 13-7C17-9 20-6 20 0z'],
  [
    'ink',
    'M-20 0C-20-8-14-9-12-7C-10-13-2-13 0-8C4-13 12-12 13-7C17-9 20-6 20 0M-8-10C-9-15-11-17-13-18M4-11C5-17 4-19 5-21',
  ],
  ['fine', 'M-12-1v-4M-5-1v-6M3-1v-5M11-1v-5M-6 0c2 5-2 6 0 11M8 0c-2 5 2 7-1 13'],
];

/**
 * What lies on the face, or in it.
 * @param clear how far along the face a skin may lie before an empty hollow begins
 * @param floor depth of that hollow, sheet units; 0 where there is none
 */
export function topMarks(
  frame: Frame,
  contaminants: readonly Contaminant[],
  clear: number,
  floor: number,
): Drawing {
  const has = (which: Contaminant) => contaminants.includes(which);
  const thick = Math.max(5, valueOf('draw.thick-coating') * frame.scale);
  const { length } = frame;
  // On steps they keep to the lower tread, clear of the zone.
  const stepped = isStepped(frame) ? drop : 0;
  const end = Math.min(length * 0.24, clear);
  return [
    ...(has('thick-coating') ? skin(frame, end, thick, false) : []),
    ...(has('rubbery-coating') ? skin(frame, end, Math.min(thick, 6), true) : []),
    ...(has('thin-coating') ? skin(frame, end + 4, 2.4, false) : []),
    ...(has('oil') ? frame.stand(oil, length * 0.47, floor) : []),
    ...(has('salt-bloom')
      ? frame.stand(bloom, length * (stepped ? 0.8 : 0.72), stepped || floor)
      : []),
    ...(has('growth') ? frame.stand(moss, length * 0.91, stepped) : []),
  ];
}
