/** Colours that can be read on a light and on a dark ground, measured as the Web Content Accessibility Guidelines 2.2 do. */
import { expect, test } from 'vitest';
import { tintOf } from '../../../cli/chat/colours.ts';
import type { Tone } from '../../../cli/say/tokens.ts';

const tones: readonly Tone[] = ['plain', 'aside', 'held', 'failed', 'not known', 'careful'];

/** Levels of the colour cube 16 to 231, and the greys behind it, as xterm has them. */
const rgbOf = (index: number): readonly number[] => {
  if (index >= 232) return Array(3).fill(8 + (index - 232) * 10);
  const place = index - 16;
  return [Math.floor(place / 36), Math.floor(place / 6) % 6, place % 6].map((each) =>
    each === 0 ? 0 : 55 + each * 40,
  );
};

/** Relative luminance, by the formula of WCAG 2.2. */
const luminance = (rgb: readonly number[]): number => {
  const [red = 0, green = 0, blue = 0] = rgb.map((each) => {
    const part = each / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

const contrast = (one: readonly number[], other: readonly number[]): number => {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
};

const colours = new Set(tones.flatMap((tone) => tintOf(tone, true).color ?? []));

test.each([...colours])('%s stands out from black and from white', (colour) => {
  const index = Number(/^ansi256\((\d+)\)$/.exec(colour)?.[1]);
  // Below 16 each theme has colours of its own.
  expect(index).toBeGreaterThanOrEqual(16);
  for (const ground of [
    [0, 0, 0],
    [255, 255, 255],
  ])
    expect(contrast(rgbOf(index), ground)).toBeGreaterThan(4);
});

/** Grounds of themes in wide use, light and dark; by name they would be somebody's. */
const grounds = [
  'fdf6e3',
  'fbf1c7',
  'fafafa',
  '1e1e1e',
  '282828',
  '282a36',
  '2e3440',
  '002b36',
  '300a24',
  '2d2d2d',
];

test.each(grounds)('on #%s a tinted word can still be made out', (ground) => {
  const rgb = [0, 2, 4].map((at) => Number.parseInt(ground.slice(at, at + 2), 16));
  for (const colour of colours) {
    const index = Number(/^ansi256\((\d+)\)$/.exec(colour)?.[1]);
    expect(contrast(rgbOf(index), rgb)).toBeGreaterThan(2.5);
  }
});

test('only words of an outcome are tinted and what warns: whole rows stand in the colours of the theme', () => {
  expect(tones.filter((tone) => tintOf(tone, true).color === undefined)).toEqual([
    'plain',
    'aside',
    'careful',
  ]);
});

test('the measure is that of the guidelines: black on white is 21', () => {
  expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 5);
});

test('no colour is given where none is wanted', () => {
  expect(tones.map((tone) => tintOf(tone, false))).toEqual(tones.map(() => ({})));
});
