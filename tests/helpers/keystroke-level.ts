import type { Page } from '@playwright/test';

/**
 * Times of the keystroke-level model, s. Source: Card, Moran and Newell, The keystroke-level model
 * for user performance time with interactive systems, Communications of the ACM 23 (1980), 396-410,
 * as a university's page on the model prints them: a key by somebody typing random letters; pointing
 * and the press that follows; thinking once before each thing that is decided. A finger on glass
 * stands for the mouse, which the page allows for other ways of pointing.
 */
const seconds = { key: 0.5, point: 1.1, press: 0.2, think: 1.35 } as const;

/** What somebody does to a page, counted while it is done. */
export class Counted {
  readonly #page: Page;
  #keys = 0;
  #taps = 0;
  #thoughts = 0;

  constructor(page: Page) {
    this.#page = page;
  }
  /** Thinks, and taps on something; where it is out of sight, flicks to it first. */
  async tap(selector: string): Promise<void> {
    const at = this.#page.locator(selector).first();
    const seen = await at.evaluate((element) => {
      const { top, bottom } = element.getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight;
    });
    if (!seen) this.#taps += 1;
    await at.scrollIntoViewIfNeeded();
    await at.click();
    this.#taps += 1;
    this.#thoughts += 1;
  }
  /** Types into what has the focus, and goes on with Enter; a number is one thing to think of. */
  async type(text: string): Promise<void> {
    await this.#page.keyboard.type(text);
    await this.#page.keyboard.press('Enter');
    this.#keys += text.length + 1;
    this.#thoughts += 1;
  }
  /** Picks from a list that opens over the page: a tap to open, one to pick. */
  async pick(selector: string, option: { readonly index: number }): Promise<void> {
    await this.#page.locator(selector).selectOption(option);
    this.#taps += 2;
    this.#thoughts += 1;
  }
  get counts(): { readonly keys: number; readonly taps: number; readonly thoughts: number } {
    return { keys: this.#keys, taps: this.#taps, thoughts: this.#thoughts };
  }
  get time(): number {
    const { key, point, press, think } = seconds;
    return this.#keys * key + this.#taps * (point + press) + this.#thoughts * think;
  }
}
