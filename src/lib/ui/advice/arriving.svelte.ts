import { readerHere } from '$lib/ui/reader-here';

/** Milliseconds after which what did not arrive is asked for again. */
const again = 5000;

/** A part of the page that is fetched apart. */
class Arriving<Parts> {
  #parts = $state.raw<Parts>();
  #asked: Promise<void> | undefined;
  readonly #fetch: () => Promise<Parts>;

  constructor(fetch: () => Promise<Parts>) {
    this.#fetch = fetch;
  }
  /** Undefined until they have come. */
  get parts(): Parts | undefined {
    return this.#parts;
  }
  load(): Promise<void> {
    return (this.#asked ??= this.#fetch().then(
      (parts) => void (this.#parts = parts),
      () => {
        // Tried again with the next thing that is opened, or in a moment: the page may wait for it.
        this.#asked = undefined;
        setTimeout(() => void this.load(), again);
      },
    ));
  }
  /** When somebody goes on with the page. */
  loadLater(): void {
    void readerHere().then(() => this.load());
  }
}

/** What is folded. */
export const rest = new Arriving(() => import('./rest'));
/** What only open answers need. */
export const whileOpen = new Arriving(() => import('./while-open'));
