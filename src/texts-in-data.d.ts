import type { Plugin } from 'vite';

export function textsInData(): Plugin;
