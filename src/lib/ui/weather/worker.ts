import { FileReading, type ToFileReader } from './file-reader';

/** Reads weather files away from the page, so that the page never stands still. */
const reader = new FileReading((answer) => self.postMessage(answer));
self.onmessage = ({ data }: MessageEvent<ToFileReader>) => reader.take(data);
