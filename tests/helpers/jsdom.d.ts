/** The one part of jsdom that the tests of finished pages use. */
declare module 'jsdom' {
  export class JSDOM {
    constructor(html: string);
    readonly window: { readonly document: Document };
  }
}
