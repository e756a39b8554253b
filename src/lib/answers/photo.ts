/**
 * A photo of a zone as it is kept on the device, beside the job and never in it: a link cannot
 * carry it, and whoever merges answers does not merge pictures: they are copied beside it (`ui/photos/shelf.ts`).
 */

/** A spot of the picture: shares of its width from the left and of its height from the top. */
export type Spot = readonly [x: number, y: number];

/** What was drawn on a photo. A ring is the ellipse within its two corners. */
export type PhotoMark =
  | { readonly kind: 'arrow' | 'ring'; readonly from: Spot; readonly to: Spot }
  | { readonly kind: 'label'; readonly at: Spot; readonly text: string };

export const stages = ['before', 'after', 'other'] as const;
export type Stage = (typeof stages)[number];

/** What is said of a photo. Its picture, a JPEG, lies beside it. */
export interface Photo {
  readonly id: string;
  /** Ids of the job and of the zone in it. */
  readonly job: string;
  readonly zone: string;
  /** Where it stands among those of its zone; only the order counts. */
  readonly place: number;
  readonly stage: Stage;
  readonly caption: string;
  readonly marks: readonly PhotoMark[];
  /** Chosen for the job page and printed sheets, and for the owner's sheet. */
  readonly sheet: boolean;
  readonly owner: boolean;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** When it was added, ms since 1970. When and where it was taken is not kept. */
  readonly addedAt: number;
}

/** A photo with its picture. */
export interface WholePhoto {
  readonly photo: Photo;
  readonly picture: Blob;
}

export const inOrder = (photos: readonly Photo[]): readonly Photo[] =>
  [...photos].sort((one, other) => one.place - other.place || one.addedAt - other.addedAt);

/** Photos in rows: the first before with the first after and so on, then what stands alone. */
export function inPairs(photos: readonly Photo[]): readonly (readonly Photo[])[] {
  const of = (stage: Stage) => photos.filter((photo) => photo.stage === stage);
  const [before, after] = [of('before'), of('after')];
  const rows = Array.from({ length: Math.max(before.length, after.length) }, (_, index) =>
    [before[index], after[index]].filter((photo) => photo !== undefined),
  );
  return [...rows, ...of('other').map((photo) => [photo])];
}
