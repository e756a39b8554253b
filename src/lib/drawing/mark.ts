/**
 * What a stroke or a tone of the pen is for. Every colour of a drawing follows from this and
 * from nothing else, so dark mode, print and forced colours are settled in one place.
 */
type Ink =
  /** The sheet behind: air. */
  | 'air'
  /** Concrete, unhatched. */
  | 'body'
  /** A thing in front of others: filled with the sheet, outlined in ink. */
  | 'form'
  /** Solid ink. */
  | 'solid'
  /** Darkness whatever the scheme: an open gap, oil. Outlined in ink. */
  | 'dark'
  /** A quiet tone. */
  | 'tone'
  /** Concrete that will not hold. Always drawn together with `hatch`. */
  | 'wash'
  | 'hatch'
  /** An outline. */
  | 'ink'
  /** A finer line: detail. */
  | 'fine'
  /** The face the work is done on. */
  | 'heavy'
  /** Hidden, not there any more, or not known. */
  | 'dashed'
  | 'stone'
  | 'sand'
  /** Larger grains in ink: dust, droplets, shot. */
  | 'grain'
  /** The lumber crayon: "down to here", "do this". Means nothing else. */
  | 'crayon'
  /** The crayon where it is not certain yet. */
  | 'crayon-open';

/** One path of a drawing, with an SVG transform where a motif is moved or turned. */
export type Mark = readonly [ink: Ink, path: string, transform?: string];
/** Marks from back to front. */
export type Drawing = readonly Mark[];

/** A drawing moved, and turned by `degrees` round its own origin. */
export const placed = (drawing: Drawing, x: number, y: number, degrees = 0, scale = 1): Drawing =>
  drawing.map(([ink, path, inner = '']): Mark => [
    ink,
    path,
    `translate(${x} ${y})${degrees ? `rotate(${degrees})` : ''}${scale === 1 ? '' : `scale(${scale})`}${inner}`,
  ]);
