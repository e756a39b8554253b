/** What the formatter needs to know of a language. */
export interface Language {
  /** BCP 47 tag for Intl. */
  readonly locale: string;
  /** Between the ends of a range. */
  readonly to: string;
  /** Ratios that have a word of their own. */
  readonly fractions: readonly { readonly ratio: number; readonly word: string }[];
  /** A factor: "2 times", "2 to 3 times". */
  readonly times: (many: string) => string;
  /** How many times as long as English its texts may run: heads of explainers are measured by it. */
  readonly longer: number;
  readonly units: UnitLabels;
}

/** Units whose label is a word, or is shortened otherwise in another language. */
export interface UnitLabels {
  readonly inch: string;
  readonly foot: string;
  readonly squareFoot: string;
  readonly cubicFoot: string;
  readonly cubicYard: string;
  readonly pound: string;
  readonly usTon: string;
  readonly mile: string;
  readonly gallon: string;
  readonly gallonsPerMinute: string;
  readonly cubicFeetPerMinute: string;
  readonly years: string;
  readonly points: string;
  /** One thing for each of another, in words: "kg CO₂e per kg". */
  readonly per: (one: string, other: string) => string;
  readonly tonneAndKm: string;
  readonly tonAndMile: string;
  /** A height of water, in a unit of length: "mm of water". */
  readonly ofWater: (unit: string) => string;
}
