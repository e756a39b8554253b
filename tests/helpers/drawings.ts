import type { Job, Zone } from '$lib/answers/job';
import type { Mark, Place, SlabOutline, Survey } from '$lib/answers/survey';
import { outlineOf } from '$lib/survey/outline';
import { boxOf, inside } from '$lib/survey/geometry';
import type { Dice } from '$lib/practice/dice';

/** A job with a drawing and these zones. */
export const drawn = (
  survey: Survey,
  zones: readonly string[] = ['a'],
  site: Job['site'] = {},
): Job => ({
  name: '',
  site,
  zones: zones.map((id): Zone => ({ id, name: '', answers: {} })),
  survey,
});

/** The outline of a rectangle. */
export const rectangle = (x: number, y: number, length: number, width: number): Place[] => [
  [x, y],
  [x + length, y],
  [x + length, y + width],
  [x, y + width],
];

/** Rectangles, angles, notches and quadrilaterals with no right angle. */
export function anySlab(dice: Dice): SlabOutline {
  const [length, width] = [dice.between(2000, 12_000), dice.between(2000, 9000)];
  const kind = dice.between(0, 3);
  if (kind === 0) return { length, width };
  const [x, y] = [dice.between(500, length - 500), dice.between(500, width - 500)];
  if (kind === 1)
    return {
      corners: [
        [0, 0],
        [length, 0],
        [length, y],
        [x, y],
        [x, width],
        [0, width],
      ],
    };
  if (kind === 2) {
    const deep = dice.between(300, width - 300);
    const [left, right] = [x / 3, x / 2];
    return {
      corners: [
        [0, 0],
        [length, 0],
        [length, width],
        [right, width],
        [right, deep],
        [left, deep],
        [left, width],
        [0, width],
      ],
    };
  }
  const off = () => dice.between(0, 700);
  return {
    corners: [
      [off(), off()],
      [length - off(), off()],
      [length - off(), width - off()],
      [off(), width - off()],
    ],
  };
}

/** Joints across, along, askew, and ones that end short. */
export function anyJoints(slab: SlabOutline, dice: Dice): Place[][] {
  const { x1, y1 } = boxOf(outlineOf(slab));
  return Array.from({ length: dice.between(0, 4) }, (): Place[] => {
    const [x, y] = [dice.between(300, x1 - 300), dice.between(300, y1 - 300)];
    const kind = dice.between(0, 3);
    if (kind === 0)
      return [
        [x, -100],
        [x, y1 + 100],
      ];
    if (kind === 1)
      return [
        [-100, y],
        [x1 + 100, y],
      ];
    if (kind === 2)
      return [
        [x, -100],
        [dice.between(300, x1 - 300), y1 + 100],
      ];
    return [
      [x, -100],
      [x, y],
    ];
  }).filter((joint) => joint.some((place) => inside(place, outlineOf(slab))) || joint.length === 2);
}

/** Outlines of damage: rectangles, and stars with many or few corners, some of them re-entrant. */
export function anySpot(slab: SlabOutline, dice: Dice): Place[] {
  const ring = outlineOf(slab);
  const { x0, y0, x1, y1 } = boxOf(ring);
  for (;;) {
    const [x, y] = [dice.between(x0, x1), dice.between(y0, y1)];
    if (!inside([x, y], ring, 0)) continue;
    if (dice.chance(0.4))
      return rectangle(x - 50, y - 50, dice.between(60, 900), dice.between(60, 700));
    const corners = dice.between(3, 9);
    return Array.from({ length: corners }, (_, index): Place => {
      const far = dice.between(60, 600);
      const angle = (2 * Math.PI * (index + dice.between(0, 80) / 100)) / corners;
      return [x + far * Math.cos(angle), y + far * Math.sin(angle)];
    });
  }
}

/** A drawing of a surface with joints and damaged spots of some zones. */
export function anyDrawing(dice: Dice, most = 14, zones: readonly string[] = ['a', 'b']): Survey {
  const slab = anySlab(dice);
  return {
    slab,
    joints: anyJoints(slab, dice),
    marks: Array.from({ length: dice.between(0, most) }, (): Mark => ({
      kind: 'spot',
      corners: anySpot(slab, dice),
      ...(dice.chance(0.7) && { zone: dice.pick(zones) }),
      ...(dice.chance(0.7) && { depth: dice.between(10, 80) }),
    })),
  };
}
