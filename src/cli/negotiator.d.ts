/** What is used here of the library; the types others publish for it are of an older version. */
declare module 'negotiator' {
  import type { IncomingMessage } from 'node:http';

  export default class Negotiator {
    constructor(request: Pick<IncomingMessage, 'headers'>);
    /** What the reader takes of these, best first; among equals in the order preferred. */
    encodings(available: string[], options: { preferred: string[] }): string[];
  }
}
