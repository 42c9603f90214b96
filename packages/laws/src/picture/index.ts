export * from './age.ts';
export * from './blur.ts';
export * from './bytes.ts';
export * from './ground.ts';
export * from './lens.ts';
export * from './seeing.ts';
export * from './sight-limit.ts';
