import type { Plugin } from 'vite';

export function numbersOnly(): Plugin;
