import type { Plugin } from 'vite';

export function factsForPages(): Plugin;
