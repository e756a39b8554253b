/** A part of a document to take along. */
export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly numbered?: boolean }
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

/** Plain text under headings, before it becomes a file. */
export interface TextDocument {
  readonly title: string;
  readonly sections: readonly { readonly title?: string; readonly blocks: readonly Block[] }[];
}
