/** Which record is meant where several may be, and whether it is sure enough to be written. */
import type { Line } from './find/all.ts';
import { weighForm } from './form.ts';
import type { Reading } from './types.ts';

/** A line that is asked as plainly as this is no record, however likely its words make one. */
const asked = 1.5;
/** What is told as plainly as this, and lacks nothing that its record needs, may lead by less than other readings. */
const plain = { told: -0.5, lead: 0.3 };
/** A record that lacks nothing is meant before one that does, where it is at least so likely beside it. */
const beside = 0.5;

const isTold = ({ topic }: Reading): boolean => topic.startsWith('tell:');
const isWhole = ({ entries }: Reading): boolean =>
  entries.length > 0 && entries.every(({ missing }) => missing.length === 0);

/** How a line begins, up to its first comma or stop: "lost another, no idea why" begins with what is told. */
const beginOf = (line: Line): Line => {
  const end = line.tokens.findIndex((token) => token.isMark && token.word !== '?');
  return end <= 0 ? line : { ...line, tokens: line.tokens.slice(0, end) };
};

/** The readings with a whole record before one that lacks something. */
export const wholeFirst = (readings: readonly Reading[]): readonly Reading[] => {
  const [best] = readings;
  if (best === undefined || !isTold(best) || isWhole(best)) return readings;
  const whole = readings.find((each) => isTold(each) && isWhole(each) && each.score >= best.score * beside);
  return whole === undefined ? readings : [whole, ...readings.filter((each) => each !== whole)];
};

/** Never where the line plainly asks; sooner where it plainly tells and nothing lacks. `sure` is by the words alone. */
export const sureOfRecord = (readings: readonly Reading[], line: Line, sure: boolean): boolean => {
  const [best, ...others] = readings;
  if (best === undefined || !isTold(best)) return sure;
  const form = weighForm(beginOf(line));
  if (form >= asked) return false;
  const rivals = others.filter((each) => !isTold(each) || isWhole(each));
  const isPlain = isWhole(best) && form <= plain.told;
  return sure || (isPlain && best.score - (rivals[0]?.score ?? 0) >= plain.lead);
};
