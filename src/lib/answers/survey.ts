import type { Choice } from './questions';

/**
 * The drawing of a surface as the reader made it: plain data, kept with the job. Millimetres,
 * x along and y across from one corner. Holds what was measured and marked; patches, areas and
 * lengths are worked out from it again.
 */
export type Place = readonly [x: number, y: number];

/** The outline of the surface. A wall is drawn as its face. */
export type SlabOutline =
  | { readonly length: number; readonly width: number }
  | { readonly corners: readonly Place[] }
  /** A flight laid flat, from the bottom: a riser, a tread, and so on up. */
  | {
      readonly steps: {
        readonly count: number;
        readonly tread: number;
        readonly riser: number;
        readonly width: number;
      };
    };

export type CrackKind = Exclude<Choice<'cracks'>, 'none'>;

/** Damage, outlined. */
export interface SpotMark {
  readonly kind: 'spot';
  readonly corners: readonly Place[];
  /** How deep the damage goes, mm; absent while nobody knows. */
  readonly depth?: number;
  /** Id of the zone it belongs to; absent: the zone of its place. */
  readonly zone?: string;
}

/** A part of the surface with one condition. */
export interface ZoneMark {
  readonly kind: 'zone';
  readonly corners: readonly Place[];
  readonly zone: string;
}

export interface CrackMark {
  readonly kind: 'crack';
  readonly line: readonly Place[];
  readonly crack?: CrackKind;
  readonly zone?: string;
}

/** A bar that shows. */
export interface BarMark {
  readonly kind: 'bar';
  readonly line: readonly Place[];
  readonly zone?: string;
}

/** Where something stands upright on the surface or at its edge, and floor machines cannot reach. */
export interface UprightMark {
  readonly kind: 'upright';
  readonly line: readonly Place[];
}

/** One tap with a hammer. */
export interface TapMark {
  readonly kind: 'tap';
  readonly at: Place;
  readonly rings: boolean;
  /** It was tapped a second time and sounded the same. */
  readonly again?: boolean;
}

export type Mark = SpotMark | ZoneMark | CrackMark | BarMark | UprightMark | TapMark;
export type MarkKind = Mark['kind'];

export interface Survey {
  readonly slab: SlabOutline;
  /** Lines the concrete is free to move at. One that ends short of an edge or a joint is taken on to it. */
  readonly joints?: readonly (readonly Place[])[];
  readonly marks?: readonly Mark[];
  /** Spacing of the sounding grid as it was laid out, mm; absent: read from the taps. */
  readonly spacing?: number;
  /** Width of the lanes, side by side, that a chain was dragged along over the whole surface, mm; absent: none was. */
  readonly lanes?: number;
}
