import { describe, expect, it } from 'vitest';
import { flowThrough, jetSpeed, lostInHose, pressureLeft, recoil } from '$lib/trial/water';

/** US gallons a minute, pounds a square inch, inches and feet. Source: NIST SP 811, Appendix B. */
const gpm = 3.785412;
const psi = 0.006894757;
const newtons = 4.448222;

describe('water at the lance', () => {
  it('pushes back with 51.3 N at 4 gpm and 3,000 psi', () => {
    // By hand: 2.5236e-4 m3/s x sqrt(2 x 20.684e6 x 1000) = 2.5236e-4 x 203,392 = 51.3 N.
    expect(recoil(4 * gpm, 3000 * psi)).toBeCloseTo(51.3, 1);
  });

  // Source: the rule of the water-jetting trade, lbf = 0.0526 x gpm x sqrt(psi), from memory.
  it.each([
    [4, 3000],
    [10, 10000],
    [2, 1500],
    [20, 40000],
  ])('agrees with the rule of the trade at %i gpm and %i psi', (flow, pressure) => {
    const rule = 0.0526 * flow * Math.sqrt(pressure) * newtons;
    expect(recoil(flow * gpm, pressure * psi) / rule).toBeCloseTo(1, 2);
  });

  it('leaves a nozzle at the speed its pressure gives', () => {
    // By hand: sqrt(2 x 20.684e6 / 1000) = 203.4 m/s.
    expect(jetSpeed(3000 * psi)).toBeCloseTo(203.4, 1);
  });

  it('loses a third of its pressure in a nozzle a tenth wider', () => {
    // By hand: 1 / 1.1^4 = 0.683.
    expect(pressureLeft(1.1)).toBeCloseTo(0.683, 3);
    expect(pressureLeft(1)).toBe(1);
  });

  // Source: Surface Finishing Guidebook 2011-12: 97, 152, 220 scfm at 90 psi for 1/4, 5/16, 3/8 in.
  it.each([
    [5 / 16, 152],
    [3 / 8, 220],
  ])('flows by the area: a nozzle of %f in', (inches, scfm) => {
    expect((97 * flowThrough(inches / 0.25)) / scfm).toBeCloseTo(1, 1);
  });

  // Source: Hazen and Williams in US units, psi a foot = 4.52 Q^1.85 / (C^1.85 d^4.87), C 150 for
  // smooth hose (as printed in fire-sprinkler handbooks, from memory): another law than the code's.
  it.each([
    [4, 0.375, 50],
    [3, 0.375, 100],
    [4, 0.25, 50],
    [8, 0.5, 100],
  ])('loses in the hose what another law gives: %f gpm, %f in, %i ft', (flow, bore, feet) => {
    const other = (4.52 * flow ** 1.85 * feet) / (150 ** 1.85 * bore ** 4.87);
    const here = lostInHose(flow * gpm, bore * 25.4, feet * 0.3048) / psi;
    expect(here / other).toBeGreaterThan(0.9);
    expect(here / other).toBeLessThan(1.12);
  });

  it('loses by the length, nothing at rest, and by 64 / Re where it creeps', () => {
    expect(lostInHose(15, 9.5, 30)).toBeCloseTo(2 * lostInHose(15, 9.5, 15), 9);
    expect(lostInHose(0, 9.5, 15)).toBe(0);
    // By hand (Hagen-Poiseuille, 128 mu L Q / pi d^4): 0.1 L/min, 9.5 mm, 15 m: 125 Pa.
    expect(lostInHose(0.1, 9.5, 15) * 1e6).toBeCloseTo(
      (128 * 1e-3 * 15 * (1e-4 / 60)) / (Math.PI * 0.0095 ** 4),
      3,
    );
  });
});
