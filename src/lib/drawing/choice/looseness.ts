import type { Choice } from '$lib/answers/questions';
import { roughLine, shifted } from '$lib/drawing/lines';
import { placed, type Drawing } from '$lib/drawing/mark';
import { dotsPath, pathOf, polygonsPath, type Point, type Polygon } from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import { evenSurface, roughSurface, section, sheet, unsound } from '$lib/drawing/motif/concrete';
import { brush, hammer, ringing, scraper } from '$lib/drawing/motif/tools';

const between = (top: readonly Point[], floor: readonly Point[]): Polygon => [
  ...top,
  ...[...floor].reverse(),
];
const floorAt = (y: number, seed: number) => roughLine([0, y], [sheet.width, y], 2, 9, seed);

function tight(): Drawing {
  const surface = evenSurface(40);
  return [
    ...section(surface, 21),
    ['heavy', pathOf(surface)],
    ...placed(ringing, 50, 36),
    ...placed(ringing, 78, 36, 180),
    ...placed(hammer, 62, 38.5),
  ];
}

function powdery(): Drawing {
  const surface = roughSurface(1.2, 4, 6, 40);
  const floor = floorAt(45, 8);
  const cloud: Polygon = [
    [4, 39],
    [8, 18],
    [30, 8],
    [52, 20],
    [56, 39],
  ];
  return [
    ...section(floor, 22),
    ...unsound(between(surface, floor), 4),
    ['ink', pathOf(surface)],
    ['crayon', pathOf(floor)],
    ['grain', dotsPath(strewSand(cloud, [], 31, 46))],
    ...placed(brush, 74, 40),
  ];
}

function flaking(): Drawing {
  const floor = floorAt(46, 5);
  return [
    ...section(floor, 23),
    ['crayon', pathOf(floor)],
    ['form', 'M-2 42C10 43 18 41 30 33L33 35.5C22 43 14 46 -2 45.5z'],
    ['form', 'M36 44.5C46 45 52 40 62 34L65 36C56 42.5 50 46.5 38 46.5z'],
    ['form', 'M96 44C104 43.5 112 42 122 41V45C112 45.5 104 46 97 46z'],
    ['form', 'M12 22C20 18 28 17 36 19L35 22C28 20.5 21 21 14 25z'],
    ...placed(scraper, 68, 45, 4, 1.15),
  ];
}

function fractured(): Drawing {
  const floor = roughLine([0, 52], [sheet.width, 52], 5, 9, 12);
  const surface = roughSurface(5, 7, 15, 36);
  const field = between(surface, floor);
  const broken = packStones(field, { seed: 44, radii: [6, 2.6], gap: 0.8, tries: 140 });
  return [
    ...section(floor, 24),
    ...unsound(field, 4),
    ['form', polygonsPath(broken.map(({ corners }) => corners))],
    ['ink', pathOf(surface)],
    ['crayon', pathOf(shifted(floor, 0, 1))],
    ['form', 'M24 22l7-4 7 3-1 6-8 2zM60 14l6-5 7 4-2 6-7 1zM90 21l5-3 5 3-3 5-6-1z'],
    ['fine', 'M20 30l-3-4M43 27l3-4M58 24l-2-4M75 23l3-3M86 29l-3-3M103 28l3-3'],
  ];
}

function hollow(): Drawing {
  const surface: Point[] = [
    [0, 40],
    [22, 39.5],
    [40, 37],
    [62, 35.5],
    [84, 37],
    [102, 39.5],
    [120, 40],
  ];
  const lid = 'M14 52C40 43 82 43 108 52';
  const edge: Point[] = [
    [14, 52],
    [34, 47.4],
    [61, 45.3],
    [88, 47.4],
    [108, 52],
  ];
  return [
    ...section(surface, 25),
    ...unsound([...surface.slice(1, -1), ...[...edge].reverse()], 4),
    ['air', `${lid}C84 59 40 59 14 52z`],
    ['ink', `${lid}M14 52C40 59 84 59 108 52`],
    ['heavy', pathOf(surface)],
    ['crayon', 'M12 54C40 62.5 84 62.5 110 54'],
    ['fine', 'M46 27c-4-2-3-5-7-6M44 31c-6-1-5-4-11-4M78 30c4 0 4-3 8-2M76 34c5 1 7-1 11 1'],
    ...placed(hammer, 60, 34),
  ];
}

function rotten(): Drawing {
  const surface = roughSurface(7, 6, 19, 32);
  const field: Polygon = [...surface, [sheet.width, sheet.height], [0, sheet.height]];
  const broken = packStones(field, { seed: 47, radii: [5.5, 1.8], gap: 1.6, tries: 150 });
  return [
    ...section(surface, 26),
    ...unsound(field, 5),
    ['form', polygonsPath(broken.map(({ corners }) => corners))],
    ['grain', dotsPath(strewSand(field, broken, 9, 50))],
    ['ink', pathOf(surface)],
    // A spike pushed in by hand finds no bottom.
    ['form', 'M57 2h10v18l-2.6 3V58L62 66l-2.4-8V23L57 20z'],
    ['fine', 'M60 5v13M64 5v13'],
  ];
}

/** How the surface lets go, each with the tool that finds it. Rotten concrete has no bottom to mark. */
export const looseness: Record<Choice<'looseness'>, () => Drawing> = {
  tight,
  powdery,
  flaking,
  fractured,
  hollow,
  rotten,
};
