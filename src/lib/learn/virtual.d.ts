declare module 'virtual:explainers' {
  /** `kind:id` to slug. */
  export const covered: Readonly<Record<string, string>>;
  /** Terms an owner's sheet may use. */
  export const ownerTerms: readonly {
    readonly id: string;
    readonly term: string;
    readonly forms: readonly string[];
    readonly says: string;
  }[];
  /** Slug to title, of pages that cover something. */
  export const titles: Readonly<Record<string, string>>;
}
declare module 'virtual:terms' {
  export const terms: readonly import('$lib/learn/markdown/terms').Term[];
}
