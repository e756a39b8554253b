/** All the tests whole: what `npm test` takes a sample of, every browser test, the other engines. */
process.env.NIGHTLY = '1';
await import('./run');
export {};
