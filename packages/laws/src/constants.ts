/** Constants used by several laws. Values: CODATA 2018 where physical; exact by definition where noted. */

/** 0 °C on the kelvin scale [K], exact by definition. The only place this number occurs. */
export const ZERO_CELSIUS = 273.15;
/** 20 °C, the reference temperature of copper tables [K]. */
export const COPPER_REFERENCE = ZERO_CELSIUS + 20;
/** 25 °C, the reference temperature of data sheets [K]. */
export const ROOM = ZERO_CELSIUS + 25;
/** Standard gravity [m/s²], exact by definition (CGPM 1901). */
export const GRAVITY = 9.80665;
/** Stefan–Boltzmann constant [W/(m²·K⁴)], CODATA 2018. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;
/** Boltzmann constant [J/K], exact since 2019. */
export const BOLTZMANN = 1.380649e-23;
/** Molar gas constant [J/(mol·K)], exact since 2019. */
export const GAS_CONSTANT = 8.31446261815324;
/** Speed of light in vacuum [m/s], exact by definition. */
export const LIGHT_SPEED = 299792458;
