import { thinkOf, type Question } from './thoughts';

/** Thinks away from the page, which goes on answering taps meanwhile. */
self.onmessage = ({ data }: MessageEvent<Question>) => self.postMessage(thinkOf(data));
