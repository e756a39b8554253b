import 'jsts/org/locationtech/jts/monkey.js';
import WKTReader from 'jsts/org/locationtech/jts/io/WKTReader.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';

/** The part of the geometry library the checks use. */
export interface Shape {
  getArea(): number;
  getLength(): number;
  isEmpty(): boolean;
  isValid(): boolean;
  intersection(other: Shape): Shape;
  difference(other: Shape): Shape;
  union(other: Shape): Shape;
  buffer(by: number): Shape;
  getBoundary(): Shape;
  getNumGeometries(): number;
  getGeometryN(index: number): Shape;
}

type Places = readonly (readonly [number, number])[];

const reader = new (WKTReader as unknown as new () => { read(text: string): Shape })();
const text = (places: Places) => places.map(([x, y]) => `${x} ${y}`).join(',');

export const polygonOf = (ring: Places): Shape =>
  reader.read(`POLYGON((${text([...ring, ring[0] as Places[number]])}))`);
export const lineOf = (line: Places): Shape => reader.read(`LINESTRING(${text(line)})`);
export const nothing = (): Shape => reader.read('POLYGON EMPTY');
export const unionOf = (shapes: readonly Shape[]): Shape =>
  shapes.reduce((all, shape) => all.union(shape), nothing());

/** Everything within a distance of a shape, corners kept square (mitred), as a margin on the slab is. */
export function past(shape: Shape, by: number): Shape {
  type Parameters = { setJoinStyle(style: number): void; setMitreLimit(limit: number): void };
  const parameters = new (BufferParameters as unknown as new () => Parameters)();
  return (BufferOp as unknown as { bufferOp(s: Shape, by: number, p: Parameters): Shape }).bufferOp(
    shape,
    by,
    parameters,
  );
}
