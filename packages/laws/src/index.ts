/** Every law of the house, by subject. */
export * from './conductors/index.ts';
export * from './constants.ts';
export * from './drive/index.ts';
export * from './heat/index.ts';
export {
  type AnyLaw,
  type Argument,
  type Arguments,
  acceptedRange,
  type Given,
  isLaw,
  type Law,
  type LawFacts,
  law,
  OutOfRange,
  type Values,
} from './law.ts';
export * from './link/index.ts';
export * from './motion/index.ts';
export * from './picture/index.ts';
export * from './supply/index.ts';
