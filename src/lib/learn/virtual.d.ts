declare module 'virtual:explainers' {
  /** `kind:id` to slug. */
  export const covered: Readonly<Record<string, string>>;
  /** Slug to title. */
  export const titles: Readonly<Record<string, string>>;
}
