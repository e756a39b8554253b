import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Engine, Tab } from './engine';

/** WebKit as Debian packs it, driven by WebDriver (W3C) over HTTP: a handful of requests. */
const driver = '/usr/bin/WebKitWebDriver';
const screen = '/usr/bin/Xvfb';
const libraries = '/usr/lib';

/** The small browser that comes with the library, wherever the machine's kind puts it. */
function browser(): string | undefined {
  for (const kind of readdirSync(libraries))
    for (const version of ['webkit2gtk-4.1', 'webkitgtk-6.0', 'webkit2gtk-4.0']) {
      const path = join(libraries, kind, version, 'MiniBrowser');
      if (existsSync(path)) return path;
    }
  return undefined;
}

const freePort = () =>
  new Promise<number>((found) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => found(port));
    });
  });

/** A screen without glass, on the first number that is free; it tells which once it stands. */
async function startScreen(): Promise<{ child: ChildProcess; display: string }> {
  const child = spawn(
    screen,
    ['-displayfd', '3', '-screen', '0', '1600x1200x24', '-nolisten', 'tcp'],
    {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    },
  );
  const display = await new Promise<string>((told, failed) => {
    child.stdio[3]?.once('data', (number: Buffer) => told(`:${number.toString().trim()}`));
    child.once('exit', () => failed(new Error('Xvfb ended by itself')));
  });
  return { child, display };
}

async function open(): Promise<Tab> {
  const { child: glass, display } = await startScreen();
  const port = await freePort();
  const child = spawn(driver, [`--port=${port}`], {
    stdio: 'ignore',
    env: {
      ...process.env,
      DISPLAY: display,
      WEBKIT_DISABLE_COMPOSITING_MODE: '1',
      NO_AT_BRIDGE: '1',
    },
  });
  const end = () => {
    child.kill();
    glass.kill();
  };
  const ask = async (method: string, path: string, body?: unknown): Promise<unknown> => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body !== undefined && { body: JSON.stringify(body) }),
    });
    const { value } = (await answer.json()) as { value: unknown };
    if (!answer.ok) {
      const { error, message } = value as { error: string; message: string };
      throw new Error(`${path}: ${error}: ${message}`);
    }
    return value;
  };
  /** The driver takes a moment to listen. */
  const ready = async (left = 100): Promise<void> => {
    try {
      await ask('GET', '/status');
    } catch (problem) {
      if (!left) throw problem;
      await new Promise((turn) => setTimeout(turn, 200));
      await ready(left - 1);
    }
  };
  try {
    await ready();
    const { sessionId, capabilities } = (await ask('POST', '/session', {
      capabilities: {
        alwaysMatch: {
          'webkitgtk:browserOptions': { binary: browser(), args: ['--automation'] },
          timeouts: { script: 120_000, pageLoad: 120_000, implicit: 0 },
        },
      },
    })) as { sessionId: string; capabilities: { browserName: string; browserVersion: string } };
    const here = (method: string, path: string, body?: unknown) =>
      ask(method, `/session/${sessionId}${path}`, body);
    const run = async <T>(text: string): Promise<T> => {
      const script = `const done = arguments[arguments.length - 1];
        (async () => { ${text} })().then(
          (value) => done({ value }),
          (problem) => done({ problem: String(problem) }),
        );`;
      const told = (await here('POST', '/execute/async', { script, args: [] })) as {
        value?: T;
        problem?: string;
      };
      if (told.problem) throw new Error(told.problem);
      return told.value as T;
    };
    return {
      version: `${capabilities.browserName} ${capabilities.browserVersion}`,
      run,
      goto: async (url) => void (await here('POST', '/url', { url })),
      reload: async () => void (await here('POST', '/refresh', {})),
      async press(selector) {
        const element = (await here('POST', '/element', {
          using: 'css selector',
          value: selector,
        })) as Record<string, string>;
        await here('POST', `/element/${Object.values(element)[0]}/click`, {});
      },
      async size(width, height) {
        // The window has edges and a bar: as much more as they take.
        for (let turn = 0, [w, h] = [width, height]; turn < 3; turn += 1) {
          await here('POST', '/window/rect', { width: w, height: h });
          const [x, y] = await run<[number, number]>('return [innerWidth, innerHeight];');
          [w, h] = [w + width - x, h + height - y];
        }
        return run<number>('return innerWidth;');
      },
      async close() {
        await here('DELETE', '').catch(() => undefined);
        end();
      },
    };
  } catch (problem) {
    end();
    throw problem;
  }
}

export const webkit: Engine = {
  name: 'WebKit',
  get: 'apt-get install webkit2gtk-driver xvfb (on other systems: WebKitWebDriver and Xvfb)',
  found: () => existsSync(driver) && existsSync(screen) && browser() !== undefined,
  open,
};
