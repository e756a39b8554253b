import type { Plugin } from 'vite';

/** Serves `virtual:explainers` and keeps the text of explainers out of what browsers load. */
export function explainers(): Plugin;
