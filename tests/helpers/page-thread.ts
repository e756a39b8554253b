import type { Browser, Page } from '@playwright/test';

/** How much slower the phone is that budgets are set for: a usual one of the slower half. */
const slower = 4;

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds: when it began, and the processor's time it took. */
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args: { readonly name?: string; readonly data?: { readonly type?: string } };
}

/** What the page's own thread did at a load or after a tap, in ms of a processor 4 times slower. */
export interface Worked {
  /** The longest task: so long a tap has to wait. */
  readonly longest: number;
  /** All work from the tap to the next frame that was handed over to be painted; 0 at a load. */
  readonly toPaint: number;
}

/**
 * Records the tasks of the page while something happens. Time of the processor, so that other
 * programs do not add to it; slowed down by reckoning, since a browser that is slowed down counts
 * the time for which others have the processor four times too.
 * @param act what happens; a tap in it is one with the mouse
 */
export async function workedAt(
  browser: Browser,
  page: Page,
  act: () => Promise<unknown>,
): Promise<Worked> {
  await browser.startTracing(page, {
    categories: ['devtools.timeline', 'disabled-by-default-devtools.timeline'],
  });
  await act();
  const { traceEvents: events } = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: readonly TraceEvent[];
  };
  const mains = new Set(
    events
      .filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const here = events.filter(({ pid, tid }) => mains.has(`${pid} ${tid}`));
  const isA = (type: string) => (each: TraceEvent) =>
    each.name === 'EventDispatch' && each.args.data?.type === type;
  const down = here.find(isA('pointerdown'));
  const click = here.find(isA('click'));
  const painted = click && here.find(({ name, ts }) => name === 'Commit' && ts > click.ts);
  const ms = (each: TraceEvent) => ((each.tdur ?? 0) / 1000) * slower;
  const ends = ({ ts, dur = 0 }: TraceEvent) => ts + dur;
  const tasks = here.filter((each) => each.name === 'RunTask' && ends(each) >= (down?.ts ?? 0));
  return {
    longest: Math.max(0, ...tasks.map(ms)),
    toPaint: painted
      ? tasks.filter(({ ts }) => ts <= painted.ts).reduce((sum, each) => sum + ms(each), 0)
      : 0,
  };
}
