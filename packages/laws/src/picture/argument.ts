/** The argument that nearly every law of sight takes: the focal length in pixels. */
export const FOCAL_PIXELS = {
  symbol: 'F',
  is: 'focal length in pixels of the picture sent',
  unit: 'px',
  above: 0,
} as const;
