/** Repeatable numbers from 0 to 1, so that a drawing is the same in every build. */
export function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

const at = (x: number, y: number) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** Points of a rough line from x0 to x1 about height y, `amp` up and down. */
export function roughPoints(
  x0: number,
  x1: number,
  y: number,
  amp: number,
  step: number,
  seed: number,
): string[] {
  const roll = dice(seed);
  const count = Math.max(1, Math.round((x1 - x0) / step));
  return Array.from({ length: count + 1 }, (_, i) =>
    at(x0 + ((x1 - x0) * i) / count, y + (roll() - 0.5) * 2 * amp),
  );
}

/** A rough line as a path. */
export const roughLine = (...line: Parameters<typeof roughPoints>): string =>
  `M${roughPoints(...line).join('L')}`;

/** One stone of the mix: an uneven closed shape about (x, y). */
export function stone(x: number, y: number, size: number, seed: number): string {
  const roll = dice(seed);
  const corners = 6 + Math.floor(roll() * 3);
  const points = Array.from({ length: corners }, (_, i) => {
    const turn = (i / corners) * 2 * Math.PI + roll() * 0.4;
    const reach = size * (0.8 + roll() * 0.3);
    return at(x + Math.cos(turn) * reach * 1.2, y + Math.sin(turn) * reach * 0.85);
  });
  return `M${points.join('L')}Z`;
}

/** Stones scattered over a box so that none overlap. */
export function stones(
  box: { x: number; y: number; width: number; height: number },
  size: number,
  count: number,
  seed: number,
): string[] {
  const roll = dice(seed);
  const placed: { x: number; y: number; r: number }[] = [];
  for (let tries = 0; placed.length < count && tries < count * 30; tries++) {
    const r = size * (0.5 + roll() * 0.6);
    const x = box.x + 1.4 * r + roll() * Math.max(0, box.width - 2.8 * r);
    const y = box.y + 1.1 * r + roll() * Math.max(0, box.height - 2.2 * r);
    if (placed.every((other) => Math.hypot(other.x - x, other.y - y) > (other.r + r) * 1.35))
      placed.push({ x, y, r });
  }
  return placed.map(({ x, y, r }, i) => stone(x, y, r, seed + i * 97));
}
