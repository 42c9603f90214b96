/**
 * The sums of the sight limit, held to published stopping examples, to walks along the arc and the picture by brute
 * force, and to rover and person moved in small steps of time.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateSum, type Values } from '../testing.ts';
import { sightSums } from './sight.ts';

const DEGREE = Math.PI / 180;
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the nearest ground in the picture', () => {
  const near = (pitch: number, view: number) =>
    evaluateSum(sightSums['picture.nearGround'], {
      'at.camera.height': 0.3,
      'camera.pitch': pitch * DEGREE,
      'picture.viewUp': view * DEGREE,
    });

  it('lies where the lowest ray meets the level, also of a camera that looks up a little', () => {
    fc.assert(
      fc.property(span(-20, 60), span(20, 100), (pitch, view) => {
        const down = (pitch + view / 2) * DEGREE;
        fc.pre(down > 0.01 && Math.abs(down - Math.PI / 2) > 0.01);
        expect(near(pitch, view) / (0.3 / Math.tan(down))).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is a kilometre away, and so behind all that is made out, where the camera looks over it altogether', () => {
    expect(near(-25, 40)).toBe(1000);
    expect(near(-20, 40)).toBe(1000);
  });
});

describe('what can be made out', () => {
  it('is 51.2 m with a focal length of 640 px at the 12.5 px to a metre of the standard for watching', () => {
    // IEC 62676-4:2014, monitor.
    const values: Values = { 'picture.focal': 640, 'near.obstacle': 1, 'picture.pixelsWanted': 12.5 };
    expect(evaluateSum(sightSums['picture.sightObstacle'], values)).toBeCloseTo(51.2, 9);
  });

  it('of a person grows in the same measure as that of an obstacle of his breadth', () => {
    const values: Values = { 'picture.focal': 530, 'near.obstacle': 0.3, 'picture.pixelsWanted': 8 };
    const [obstacle, walker] = (['picture.sightObstacle', 'picture.sightWalker'] as const).map((id) =>
      evaluateSum(sightSums[id], values),
    );
    expect(walker).toBeCloseTo(obstacle as number, 9);
  });

  it('of an edge is where both sides of the band, projected row by row, lie the wanted rows apart', () => {
    fc.assert(
      fc.property(span(200, 2000), span(0.05, 1), span(0.02, 0.5), span(1, 8), (focal, camera, band, rows) => {
        const sight = evaluateSum(sightSums['picture.sightEdge'], {
          'picture.focal': focal,
          'at.camera.height': camera,
          'near.dropWidth': band,
          'picture.pixelsEdge': rows,
        });
        const row = (distance: number) => (focal * camera) / distance;
        expect((row(sight) - row(sight + band)) / rows).toBeCloseTo(1, 6);
      }),
    );
  });

  it('in a turn ends where the arc leaves the view or the sight, found by walking along it', () => {
    fc.assert(
      fc.property(span(0.3, 20), span(20, 150), span(0.2, 10), span(0.2, 10), (radius, degrees, obstacle, edge) => {
        const steered = evaluateSum(sightSums['picture.sightSteered'], {
          'want.cornerRadius': radius,
          'picture.view': degrees * DEGREE,
          'picture.sightObstacle': obstacle,
          'picture.sightEdge': edge,
        });
        const farthest = Math.max(obstacle, edge);
        const step = radius / 2000;
        let walked = 0;
        for (;;) {
          const turned = (walked + step) / radius;
          const [ahead, aside] = [radius * Math.sin(turned), radius * (1 - Math.cos(turned))];
          const inView = Math.atan2(aside, ahead) <= (degrees * DEGREE) / 2 && turned <= Math.PI;
          if (!inView || Math.hypot(ahead, aside) > farthest) break;
          walked += step;
        }
        expect(Math.abs(steered - walked)).toBeLessThanOrEqual(2 * step);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the ground near by', () => {
  const near = (height: number, pitch: number, view: number) =>
    evaluateSum(sightSums['picture.nearGround'], {
      'at.camera.height': height,
      'camera.pitch': pitch * DEGREE,
      'picture.viewUp': view * DEGREE,
    });

  it('enters the picture at 0.219 m from 0.15 m up, 10° down and 48.8° high; at 0.126 m from 30° and 40°', () => {
    expect(near(0.15, 10, 48.8)).toBeCloseTo(0.219, 3);
    expect(near(0.15, 30, 40)).toBeCloseTo(0.126, 3);
  });

  it('is blind from the bumper on, not from the camera', () => {
    const behind: Values = { 'at.camera.behind': 0.08, 'toy.frontOverhang': 0.05 };
    const overhang = evaluateSum(sightSums['picture.overhang'], behind);
    const blind = (nearGround: number) =>
      evaluateSum(sightSums['picture.blind'], { 'picture.nearGround': nearGround, 'picture.overhang': overhang });
    expect(blind(0.219)).toBeCloseTo(0.089, 9);
    expect(blind(0.1)).toBe(0);
  });

  it('is taken off every clear way, which a turn bounds except for people ahead', () => {
    const values: Values = {
      'picture.sightObstacle': 5,
      'picture.sightEdge': 2,
      'picture.sightWalker': 20,
      'picture.sightSteered': 3,
      'picture.overhang': 0.2,
    };
    expect(evaluateSum(sightSums['picture.clearObstacle'], values)).toBeCloseTo(2.8, 9);
    expect(evaluateSum(sightSums['picture.clearEdge'], values)).toBeCloseTo(1.8, 9);
    expect(evaluateSum(sightSums['picture.clearWalker'], values)).toBeCloseTo(19.8, 9);
    const blind: Values = { ...values, 'picture.overhang': 30 };
    for (const id of ['picture.clearObstacle', 'picture.clearEdge', 'picture.clearWalker'] as const) {
      expect(evaluateSum(sightSums[id], blind)).toBe(0);
    }
  });
});

describe('the speed', () => {
  const standing = (sight: number, delay: number, braking: number) =>
    evaluateSum(sightSums['picture.speedObstacle'], {
      'picture.clearObstacle': sight,
      'picture.delay': delay,
      'safe.descentDeceleration': braking,
    });
  const walking = (sight: number, walker: number, delay: number, braking: number) =>
    evaluateSum(sightSums['picture.speedWalker'], {
      'picture.clearWalker': sight,
      'near.walkerSpeed': walker,
      'picture.delay': delay,
      'safe.descentDeceleration': braking,
    });

  it('of two stops worked by hand comes back: 1.5 m/s in 2.1375 m, 2 m/s in 4.36 m', () => {
    expect(standing(2.1375, 1.05, 2)).toBeCloseTo(1.5, 9);
    expect(standing(4.36, 1.68, 2)).toBeCloseTo(2, 9);
  });

  it('before an edge follows the same stop as before an obstacle', () => {
    const edge = evaluateSum(sightSums['picture.speedEdge'], {
      'picture.clearEdge': 2.1375,
      'picture.delay': 1.05,
      'safe.descentDeceleration': 2,
    });
    expect(edge).toBeCloseTo(1.5, 9);
  });

  it('before a walker leaves both at rest where they meet, when rover and walker are moved step by step', () => {
    fc.assert(
      fc.property(span(3, 30), span(0, 2), span(0.2, 1.2), span(0.3, 5), (sight, walker, delay, braking) => {
        const limit = walking(sight, walker, delay, braking);
        let [speed, gap, time] = [limit, sight, 0];
        const step = 1e-4;
        while (speed > 0) {
          gap -= (speed + walker) * step;
          time += step;
          if (time > delay) speed -= braking * step;
        }
        expect(Math.abs(gap)).toBeLessThan(5e-3);
      }),
      { numRuns: 40 },
    );
  });

  it('before a walker who stands is that before an obstacle', () => {
    fc.assert(
      fc.property(span(0.1, 30), span(0.1, 3), span(0.1, 5), (sight, delay, braking) => {
        expect(walking(sight, 0, delay, braking)).toBeCloseTo(standing(sight, delay, braking), 9);
      }),
    );
  });

  it('is nothing where nothing is seen, where a walker arrives within the delay, or where it slides on downhill', () => {
    expect(standing(0, 1, 2)).toBe(0);
    expect(walking(1.3, 1.4, 1, 2)).toBe(0);
    for (const braking of [0, -0.3]) {
      expect(standing(5, 1, braking)).toBe(0);
      expect(walking(5, 1, 1, braking)).toBe(0);
    }
  });

  it('never grows with the delay and never falls with sight or braking', () => {
    fc.assert(
      fc.property(span(0, 20), span(0.1, 3), span(0.1, 5), span(0, 2), (sight, delay, braking, more) => {
        const speed = standing(sight, delay, braking);
        expect(standing(sight, delay + more, braking)).toBeLessThanOrEqual(speed + 1e-12);
        expect(standing(sight + more, delay, braking)).toBeGreaterThanOrEqual(speed - 1e-12);
        expect(standing(sight, delay, braking + more)).toBeGreaterThanOrEqual(speed - 1e-12);
      }),
    );
  });

  it('allowed by the picture is that of whatever is seen last', () => {
    fc.assert(
      fc.property(span(0, 3), span(0, 3), span(0, 3), (obstacle, edge, walker) => {
        const limit = evaluateSum(sightSums['picture.speedLimit'], {
          'picture.speedObstacle': obstacle,
          'picture.speedEdge': edge,
          'picture.speedWalker': walker,
        });
        expect([obstacle, edge, walker].toSorted((a, b) => a - b)[0]).toBe(limit);
      }),
    );
  });
});
