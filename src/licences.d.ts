import type { Plugin } from 'vite';

/** One library in the built site: its licence by name, and the text its makers send with it. */
export interface Licence {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}
export declare const licencesFile: string;
export declare function licences(): Plugin;
