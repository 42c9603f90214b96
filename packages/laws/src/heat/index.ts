export * from './air.ts';
export * from './convection.ts';
export * from './enclosure.ts';
export * from './materials.ts';
export * from './network.ts';
export * from './radiation.ts';
export * from './transient.ts';
