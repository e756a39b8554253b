import { Desk, type ToDesk } from './desk';

/** Reads weather files away from the page, so that the page never stands still. */
const desk = new Desk((answer) => self.postMessage(answer));
self.onmessage = ({ data }: MessageEvent<ToDesk>) => desk.take(data);
