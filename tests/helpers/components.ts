import '@testing-library/jest-dom/vitest';
import { configure } from '@testing-library/svelte';
import { readerHere } from '$lib/ui/reader-here';

// In these tests somebody goes on with every page from the start.
configure({ asyncUtilTimeout: 60_000 });
void readerHere();
dispatchEvent(new Event('scroll'));

// Metric, unless a test says otherwise: jsdom speaks American English, whose readers are met in feet.
Object.defineProperty(navigator, 'language', { value: 'en-GB', configurable: true });
