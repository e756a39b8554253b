/**
 * The modules of the tests and of what they test, as a mutation run needs them: fetched and compiled
 * once, evaluated anew for each change where the change may be in them.
 *
 * Plain JavaScript: the tool loads it in a process that reads nothing else.
 */
import { createServer, createServerModuleRunner } from 'vite';
import {
  ESModulesEvaluator,
  ssrDynamicImportKey,
  ssrExportAllKey,
  ssrExportNameKey,
  ssrImportKey,
  ssrImportMetaKey,
  ssrModuleExportsKey,
} from 'vite/module-runner';

const AsyncFunction = (async () => {}).constructor;
const names = [
  ssrModuleExportsKey,
  ssrImportMetaKey,
  ssrImportKey,
  ssrDynamicImportKey,
  ssrExportAllKey,
  ssrExportNameKey,
];

/** Evaluates modules, each compiled once; tells when one begins, and what that gives when it has ended. */
class Compiled extends ESModulesEvaluator {
  known = new Map();

  constructor(begins) {
    super();
    this.begins = begins;
  }

  async runInlinedModule(context, code, { id }) {
    let run = this.known.get(id);
    if (!run) {
      run = new AsyncFunction(...names, `"use strict";${code}`);
      this.known.set(id, run);
    }
    const ended = this.begins();
    try {
      await run(...names.map((name) => context[name]));
    } finally {
      ended();
    }
    Object.seal(context[ssrModuleExportsKey]);
  }
}

/**
 * @param {string} room the folder whose rules are changed
 * @param {() => () => void} begins called when a module is evaluated; what it gives, when that is done
 */
export async function modulesOf(room, begins) {
  const server = await createServer({
    logLevel: 'error',
    server: { middlewareMode: true, ws: false, hmr: false, watch: null },
    optimizeDeps: { noDiscovery: true },
  });
  const modules = createServerModuleRunner(server.environments.ssr, {
    ...{ hmr: false, sourcemapInterceptor: false, evaluator: new Compiled(begins) },
  });
  // What is fetched once is not asked for again: no file changes meanwhile.
  const fetch = modules.cachedModule.bind(modules);
  modules.cachedModule = async (url, importer) => {
    const known = modules.evaluatedModules.getModuleByUrl(url);
    return known?.meta ? known : fetch(url, importer);
  };

  return {
    import: (path) => modules.import(path),

    /** Forgets what the tests, the modules of the room and all that import them came to. */
    forget() {
      const { idToModuleMap } = modules.evaluatedModules;
      const stale = new Set(
        [...idToModuleMap.values()].filter(
          ({ id }) => id.includes(`/${room}/`) || id.endsWith('.test.ts'),
        ),
      );
      // A set hands out what is added on the way, too.
      for (const { importers } of stale)
        for (const id of importers) {
          const importer = idToModuleMap.get(id);
          if (importer) stale.add(importer);
        }
      for (const node of stale) {
        Object.assign(node, { evaluated: false, promise: undefined, exports: undefined });
        node.imports.clear();
      }
    },

    async close() {
      await modules.close();
      await server.close();
    },
  };
}
