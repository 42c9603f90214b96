/** For tests: a plain dossier as text, with something of every kind in it, and how to change one place of it. */

/** A rear-driven toy with snap steering, its bridge described in place, with a reading, a fit, a pack and an outing. */
export const PLAIN_TEXT = `{
  "format": 1,
  "name": "Plain",
  "donor": {
    "title": "toy truck of no kind in particular",
    "body": {
      "mass": "1.62 kg ± 5 g",
      "removed": "210 g ± 10 g",
      "length": "380 mm ± 2 mm",
      "width": "220 mm ± 2 mm",
      "height": "180 mm ± 2 mm",
      "wheelDiameter": "95 mm ± 1 mm",
      "clearance": "38 mm ± 2 mm",
      "frontOverhang": "60 mm ± 2 mm",
      "rearOverhang": "70 mm ± 2 mm"
    },
    "axles": [
      { "wheels": 2, "driven": false, "steered": true, "track": "180 mm ± 2 mm", "load": "0.74 kg ± 5 g" },
      {
        "wheels": 2,
        "driven": true,
        "position": "230 mm ± 2 mm",
        "track": "180 mm ± 2 mm",
        "load": "0.88 kg ± 5 g",
        "springRate": "900 N/m ± 10 %"
      }
    ],
    "drive": {
      "motorPer": "axle",
      "motor": {
        "resistance": "0.9 Ω ± 15 %",
        "stallCurrent": { "value": "3.1 A ± 10 %", "basis": "label", "remark": "printed on the can" },
        "stallVoltage": "3 V ± 2 %",
        "noLoadCurrent": "0.3 A ± 10 %",
        "noLoadSpeed": "14000 rpm ± 3 %",
        "noLoadVoltage": "7.2 V ± 2 %"
      },
      "gear": { "ratio": "24 ± 2 %" }
    },
    "steering": { "kind": "on-off", "clutch": true, "angle": "20 ° ± 2 °" },
    "pack": { "chemistry": "nimh", "cells": 6, "capacity": "1800 mAh ± 20 %" }
  },
  "conversion": {
    "parts": {
      "pack": "lipo-2s-2200",
      "converter": "buck-5v-3a-synchronous",
      "bridge": {
        "kind": "bridge",
        "title": "board from the drawer",
        "type": "mosfet",
        "channels": 2,
        "currentContinuous": "8 A ± 10 %",
        "currentPeak": "20 A ± 10 %",
        "voltageMax": "24 V",
        "voltageMin": "5 V",
        "toAir": "20 K/W ± 20 %",
        "quiescent": "2 mA ± 20 %",
        "mass": "12 g ± 1 g",
        "onResistance": "30 mΩ ± 20 %"
      },
      "computer": "board-microcontroller-wlan",
      "camera": "camera-board-2mp",
      "modem": "modem-wlan-2g4-board",
      "aerial": "aerial-chip",
      "fuse": "fuse-mini-3a",
      "charger": "charger-lithium-3s-1a"
    },
    "places": { "camera": { "behind": "-20 mm ± 5 mm", "height": "240 mm ± 5 mm" } },
    "wiring": {
      "pack": { "wire": "wire-awg20-pvc", "length": "0.15 m ± 20 %", "connector": "connector-toy-8a", "pairs": 3 },
      "bridge": { "wire": "wire-awg22-pvc", "connector": "connector-screw-10a", "pairs": 2 },
      "motor": { "wire": "wire-awg24-pvc", "connector": "connector-soldered", "pairs": 0 },
      "converter": { "wire": "wire-awg24-pvc", "connector": "connector-jumper-1a", "pairs": 20 },
      "board": { "wire": "wire-awg24-pvc", "connector": "connector-jumper-1a", "pairs": 1 }
    },
    "settings": { "dutyCeiling": "80 %" }
  },
  "service": {
    "want": { "runTime": "1.5 h", "slope": "6 °" },
    "day": { "coldest": "2 °C", "hottest": "30 °C", "usual": "8 … 22 °C" },
    "surfaces": [{ "surface": "tarmac, dry", "share": 0.7 }, { "surface": "carpet", "share": 0.3 }]
  },
  "link": { "distance": "60 m" },
  "picture": { "width": "640 px", "height": "480 px" },
  "driving": { "reaction": "0.8 … 1.4 s" },
  "packs": [{ "label": "blue one", "bought": "2023-04-01", "cycles": 40 }],
  "readings": [{ "date": "2024-02-29", "of": "motor.resistance", "value": "0.95 Ω ± 5 %" }],
  "fits": [
    {
      "date": "2024-03-02",
      "quantities": ["motor.resistance", "gear.efficiency"],
      "correlation": [[1, -0.4], [-0.4, 1]]
    }
  ],
  "outings": [{ "date": "2024-05-01", "title": "round the pond" }]
}
`;

/**
 * A text with one place of it changed.
 * @throws Error where the place is not there exactly once, so that no test changes nothing
 */
export function changed(text: string, from: string, to: string): string {
  const parts = text.split(from);
  if (parts.length !== 2) throw new Error(`'${from}' stands ${parts.length - 1} times in the text`);
  return parts.join(to);
}
