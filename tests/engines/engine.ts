/** A browser of another make than the one the browser tests drive. */
export interface Engine {
  readonly name: string;
  /** What to install where it is not there. */
  readonly get: string;
  /** Whether it is on this machine. */
  found(): boolean;
  open(): Promise<Tab>;
}

/** One tab of it, with an empty store of its own. */
export interface Tab {
  /** Name and version, as the browser tells them. */
  readonly version: string;
  goto(address: string): Promise<void>;
  reload(): Promise<void>;
  /** Presses what the selector finds first, as a finger would: what lies under something else is not hit. */
  press(selector: string): Promise<void>;
  /**
   * What the body of an async function comes to in the page. It is handed over as text, since what
   * compiles these files puts names into functions that a page does not know.
   */
  run<T>(body: string): Promise<T>;
  /** Sets how wide and high the page is, in CSS pixels; gives the width it really came to. */
  size(width: number, height: number): Promise<number>;
  close(): Promise<void>;
}
