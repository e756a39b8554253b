import type { Asked, Found, Question, Thought } from './thoughts';

interface Task {
  readonly question: Question;
  readonly told: (found: unknown) => void;
  dropped: boolean;
}

/**
 * Asks the worker one thing at a time. Where the answers have changed meanwhile the thought is cut
 * off, since a worker cannot be asked to stop. Without workers the page thinks itself, after what
 * it has to show.
 */
class Thinker {
  #worker: Worker | undefined;
  #waiting: Task[] = [];
  #current: Task | undefined;

  ask(task: Task): void {
    this.#waiting.push(task);
    this.#next();
  }

  #next(): void {
    if (this.#current?.dropped && this.#waiting.some(({ dropped }) => !dropped)) this.#cut();
    if (this.#current) return;
    this.#waiting = this.#waiting.filter(({ dropped }) => !dropped);
    const task = (this.#current = this.#waiting.shift());
    if (!task) return;
    try {
      this.#worker ??= this.#start();
      this.#worker.postMessage(task.question);
    } catch {
      this.#here(task);
    }
  }

  #start(): Worker {
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<unknown>) => this.#done(data);
    // It has not arrived, or cannot be run here.
    worker.onerror = (event) => {
      event.preventDefault();
      const task = this.#current;
      worker.terminate();
      this.#worker = undefined;
      if (task) this.#here(task);
    };
    return worker;
  }

  #cut(): void {
    this.#worker?.terminate();
    this.#worker = this.#current = undefined;
  }

  #here(task: Task): void {
    void import('./thoughts').then(
      ({ thinkOf }) =>
        setTimeout(() => {
          if (this.#current === task) this.#done(task.dropped ? null : thinkOf(task.question));
        }),
      () => {
        this.#current = undefined;
      },
    );
  }

  #done(found: unknown): void {
    const task = this.#current;
    this.#current = undefined;
    if (task && !task.dropped) task.told(found);
    this.#next();
  }
}

const thinker = new Thinker();

/**
 * Works something out while the page goes on. What is given must be plain data.
 * @returns a stop, for when the answers have changed: nothing is told after it
 */
export function think<T extends Thought>(
  thought: T,
  asked: Asked<T>,
  told: (found: Found<T>) => void,
): () => void {
  const task: Task = {
    question: { thought, asked } as Question,
    told: told as (found: unknown) => void,
    dropped: false,
  };
  thinker.ask(task);
  return () => {
    task.dropped = true;
  };
}

/** The same, once the browser has painted. */
export function thinkLater<T extends Thought>(...of: Parameters<typeof think<T>>): () => void {
  let stop: (() => void) | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(() => (stop = think(...of)));
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
    stop?.();
  };
}
