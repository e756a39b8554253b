/**
 * Tensile stress from the force that pulled a disc off.
 * @param force kN
 * @param disc diameter of the disc (or of the core under it, where that is smaller), mm
 * @returns MPa: newtons over square millimetres
 * Source: ASTM C1583, force over area.
 */
export function stressFrom(force: number, disc: number): number {
  return (force * 1000) / ((Math.PI * disc * disc) / 4);
}
