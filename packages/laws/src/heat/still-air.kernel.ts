/**
 * Still air on plain numbers, without range checks: for the laws beside this file, and for those that solve for a
 * temperature and would otherwise check the same ranges at every step. Sources stand with the laws.
 */
import { GAS_CONSTANT, GRAVITY, STEFAN_BOLTZMANN } from '../constants.ts';

/** Standard atmosphere [Pa], exact by definition. */
export const ATMOSPHERE = 101325;
/** Molar mass of dry air [kg/mol], U.S. Standard Atmosphere 1976. */
const MOLAR_MASS = 0.0289644;
/** Specific heat of air at constant pressure [J/(kg·K)], heat-transfer tables at 300 K. */
const SPECIFIC_HEAT = 1007;
/** Sutherland constants of air: viscosity [Pa·s], conductivity [W/(m·K)], their temperatures [K]; White, Viscous Fluid Flow, from memory. */
const REFERENCE = 273;
const VISCOSITY = 1.716e-5;
const VISCOSITY_S = 110.4;
const CONDUCTIVITY = 0.0241;
const CONDUCTIVITY_S = 194;
/** Rayleigh numbers at which the flow along a vertical plate, and over a hot plate facing up, becomes turbulent. */
const TURBULENT_SIDE = 1e9;
const TURBULENT_TOP = 1e7;

/** (T / T0)^1.5 · (T0 + S) / (T + S). */
function sutherland(t: number, s: number): number {
  const ratio = t / REFERENCE;
  return (ratio * Math.sqrt(ratio) * (REFERENCE + s)) / (t + s);
}

/** μ(T) [Pa·s]. */
export const viscosity = (t: number): number => VISCOSITY * sutherland(t, VISCOSITY_S);
/** k(T) [W/(m·K)]. */
export const conductivity = (t: number): number => CONDUCTIVITY * sutherland(t, CONDUCTIVITY_S);
/** ν(T, p) [m²/s]. */
export const kinematicViscosity = (t: number, pressure: number): number =>
  (viscosity(t) * GAS_CONSTANT * t) / (pressure * MOLAR_MASS);
/** Pr(T) [1]. */
export const prandtl = (t: number): number => (viscosity(t) * SPECIFIC_HEAT) / conductivity(t);

/** 1 + (c / Pr)^(9/16), with the sixteenth root taken as four square roots: `**` takes several times as long. */
function prandtlTerm(c: number, pr: number): number {
  const root = Math.sqrt(c / pr);
  return 1 + root * Math.sqrt(Math.sqrt(Math.sqrt(root)));
}

/** x^p of a positive number, in half the time of `**`. */
const power = (x: number, p: number): number => Math.exp(p * Math.log(x));

/** Nu of a vertical plate, laminar. */
export const verticalLaminar = (rayleigh: number, pr: number): number =>
  0.68 + (0.67 * Math.sqrt(Math.sqrt(rayleigh))) / power(prandtlTerm(0.492, pr), 4 / 9);
/** Nu of a vertical plate, every flow. */
export const vertical = (rayleigh: number, pr: number): number =>
  (0.825 + (0.387 * Math.cbrt(Math.sqrt(rayleigh))) / power(prandtlTerm(0.492, pr), 8 / 27)) ** 2;
/** Nu of a horizontal cylinder. */
export const cylinder = (rayleigh: number, pr: number): number =>
  (0.6 + (0.387 * Math.cbrt(Math.sqrt(rayleigh))) / power(prandtlTerm(0.559, pr), 8 / 27)) ** 2;
/** Nu of a hot plate facing up. */
export const plateUp = (rayleigh: number): number =>
  rayleigh <= TURBULENT_TOP ? 0.54 * Math.sqrt(Math.sqrt(rayleigh)) : 0.15 * Math.cbrt(rayleigh);
/** Nu of a hot plate facing down. */
export const plateDown = (rayleigh: number): number => 0.27 * Math.sqrt(Math.sqrt(rayleigh));

/** What the air between a surface and the room brings to a Nusselt number. */
export interface Film {
  readonly conductivity: number;
  readonly prandtl: number;
  /** Rayleigh number of a length of one metre. */
  readonly rayleigh: number;
}

/** The film between a surface and air of these temperatures, at 1 atm. */
export function filmBetween(surface: number, ambient: number): Film {
  const t = (surface + ambient) / 2;
  const nu = kinematicViscosity(t, ATMOSPHERE);
  const pr = prandtl(t);
  const rayleigh = (GRAVITY * Math.abs(surface - ambient) * pr) / (t * nu * nu);
  return { conductivity: conductivity(t), prandtl: pr, rayleigh };
}

/** Heat-transfer coefficient [W/(m²·K)] of a side of this height. */
export function sideCoefficient(film: Film, height: number): number {
  const rayleigh = film.rayleigh * height * height * height;
  const nusselt =
    rayleigh <= TURBULENT_SIDE ? verticalLaminar(rayleigh, film.prandtl) : vertical(rayleigh, film.prandtl);
  return (nusselt * film.conductivity) / height;
}

/** Heat-transfer coefficient of a top; the length is area over perimeter. */
export const topCoefficient = (film: Film, length: number): number =>
  (plateUp(film.rayleigh * length * length * length) * film.conductivity) / length;
/** Heat-transfer coefficient of a bottom; the length is area over perimeter. */
export const bottomCoefficient = (film: Film, length: number): number =>
  (plateDown(film.rayleigh * length * length * length) * film.conductivity) / length;
/** Heat-transfer coefficient of a horizontal cylinder of this diameter. */
export const cylinderCoefficient = (film: Film, diameter: number): number =>
  (cylinder(film.rayleigh * diameter * diameter * diameter, film.prandtl) * film.conductivity) / diameter;

/** Net heat radiated by a grey surface [W]. */
export function radiated(emissivity: number, area: number, surface: number, surroundings: number): number {
  const hot = surface * surface;
  const cold = surroundings * surroundings;
  return emissivity * STEFAN_BOLTZMANN * area * (hot * hot - cold * cold);
}
