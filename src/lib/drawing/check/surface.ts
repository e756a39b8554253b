import { placed, type Drawing } from '$lib/drawing/mark';
import { air, concrete, roughSurface, section } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { hammer, ringing } from '$lib/drawing/motif/tools';
import { soundFace } from '$lib/drawing/motif/work';
import { circlePath, pathOf, rectangle } from '$lib/drawing/points';

/** A hammer, and the clear ring of what is sound. */
export const sounding = (): Drawing => [
  ...soundFace(61),
  ...placed(ringing, 52, 40, 0, 0.9),
  ...placed(ringing, 66, 40, 180, 0.9),
  ...placed(hammer, 59, 44.5),
];

/** A cut edge, straight down, with a square held against it. */
export const edges = (): Drawing => [
  ...air,
  ...concrete(rectangle(0, 26, 52, 72), 62),
  ...concrete(rectangle(52, 58, 120, 72), 63),
  ['heavy', 'M0 26H52V58H120'],
  ['form', 'M55 12H62V50H100V57H55z'],
  ['fine', 'M55 20h3M55 28h3M55 36h3M55 44h3M70 57v-3M78 57v-3M86 57v-3M94 57v-3'],
  ['crayon', 'M52 29V56'],
];

/** A rough face and a comparison chip held beside it, under one glass. */
export const profile = (): Drawing => {
  const face = roughSurface(6, 6, 64, 50);
  const chip = roughSurface(6, 6, 65, 22).filter(([x]) => x >= 14 && x <= 62);
  return [
    ...section(face, 64),
    ['heavy', pathOf(face)],
    ['form', `M12 36V22${pathOf(chip).replace(/^M/, 'L')}L64 22V36z`],
    ['form', circlePath([88, 36], 17)],
    ['fine', 'M76 44 81 36 86 43 91 34 96 42 100 37'],
    ['ink', circlePath([88, 36], 17)],
    ['heavy', 'M100 48 112 62'],
  ];
};

/** A disc glued on a core drilled free, and the pull. */
export const pullOff = (): Drawing => [
  ...soundFace(66),
  ['air', 'M40 45H44V60H40zM76 45H80V60H76z'],
  ['ink', 'M40 46V60H44V46M76 46V60H80V46'],
  ['form', 'M44 38H76V45H44z'],
  ['form', 'M22 20H98V26H22zM26 26H32V46H26zM88 26H94V46H88z'],
  ['heavy', 'M60 38V8'],
  ['ink', 'M54 14 60 7 66 14'],
  ['dashed', 'M44 58H76'],
];

/** A strip of indicator paper laid on wet concrete, and the scale it is held to. */
export const ph = (): Drawing => [
  ...soundFace(67),
  ['tone', 'M6 43C18 40 46 40 58 43V46H6z'],
  ['form', 'M22 42 26 40 52 16 57 21 30 44z'],
  ['dark', 'M22 42 26 40 31 35.5 35 39.5 30 44z'],
  ['form', 'M70 12H114V22H70z'],
  ['tone', 'M78 12H86V22H78z'],
  ['hatch', 'M86 22l8-10M88 22l6-8M92 22l2-3M86 18l5-6M86 14l2-2'],
  ['solid', 'M94 12H102V22H94z'],
  ['ink', 'M70 12H114V22H70zM78 12V22M86 12V22M94 12V22M102 12V22M98 34V26M95 29 98 25.5 101 29'],
];

/** Clear tape pressed down and lifted, with what it took up. */
export const dustTape = (): Drawing => [
  ...soundFace(68),
  ['form', 'M10 43H54C66 43 72 36 76 24L81 26C77 40 69 46 54 46H10z'],
  ['form', circlePath([88, 18], 13)],
  ['ink', circlePath([88, 18], 6)],
  ['grain', 'M60 40h0M65 37h0M70 32h0M74 27h0M67 40h0M72 36h0'],
  ['heavy', 'M14 38H40'],
  ['ink', 'M20 30V36M27 30V36M34 30V36'],
];

/** One drop that spreads, one that stays round. */
export const waterDrop = (): Drawing => [
  ...soundFace(69),
  ['form', dropPath([30, 20], 1.6)],
  ['form', 'M10 46C16 41 44 41 50 46z'],
  ['form', 'M80 46C74 40 78 32 88 32S102 40 96 46z'],
  ['heavy', 'M17 59l4 4 8-10'],
  ['heavy', 'M83 54l10 10M93 54 83 64'],
];

/** A drop that sinks in, and a watch on it. */
export const absorption = (): Drawing => [
  ...soundFace(70),
  ['form', dropPath([34, 24], 1.9)],
  ['tone', 'M14 46C16 58 52 58 54 46z'],
  ['ink', 'M14 46C16 58 52 58 54 46M34 36V52M30 48l4 5 4-5'],
  ['form', circlePath([90, 24], 16)],
  ['form', 'M86 3H94V8H86z'],
  ['ink', 'M90 24V13M90 24 97 28'],
  ['fine', 'M90 10v3M90 35v3M76 24h3M101 24h3'],
];

/** A clock, and the face that waits under it. */
export const openTime = (): Drawing => [
  ...soundFace(71),
  ['form', circlePath([60, 23], 19)],
  ['fine', 'M60 6v4M60 36v4M43 23h4M73 23h4'],
  ['heavy', 'M60 23V11M60 23 69 28'],
  ['grain', 'M14 40h0M22 42h0M98 41h0M106 39h0M112 42h0'],
];

/** A filled hollow, the hammer that sounds it, and a clock of its own. */
export const fillCured = (): Drawing => [
  ...soundFace(72),
  ['form', 'M30 46H84L76 60H38z'],
  ['grain', 'M40 50h0M48 54h0M57 50h0M66 55h0M74 50h0M52 57h0M62 58h0'],
  ['heavy', 'M30 46 38 60H76L84 46'],
  ...placed(ringing, 50, 40, 0, 0.8),
  ...placed(ringing, 64, 40, 180, 0.8),
  ...placed(hammer, 57, 44.5),
  ['form', circlePath([100, 20], 13)],
  ['heavy', 'M100 20V11M100 20 107 23'],
  ['fine', 'M100 8.5v2M100 29.5v2M88.5 20h2M109.5 20h2'],
];

/** Two thermometers, one in the air and one on the slab, and drops where the slab is the colder. */
export const dewPoint = (): Drawing => [
  ...soundFace(73),
  ['form', 'M26 4H34V24A8 8 0 1 1 26 24z'],
  ['solid', circlePath([30, 30], 4)],
  ['ink', 'M30 30V12M37 8h4M37 14h4M37 20h4'],
  ['form', 'M82 14H90V32A8 8 0 1 1 82 32z'],
  ['solid', circlePath([86, 38], 4)],
  ['ink', 'M86 38V30M93 18h4M93 24h4M93 30h4'],
  ['form', dropPath([52, 43], 0.5) + dropPath([60, 43], 0.5) + dropPath([68, 43], 0.5)],
  ['form', dropPath([104, 43], 0.5) + dropPath([112, 43], 0.5) + dropPath([12, 43], 0.5)],
];
