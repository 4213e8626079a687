/** The entry kinds. A new kind is one file beside this one and one line here. */
import { arrive } from './arrive.ts';
import { buy } from './buy.ts';
import { correct } from './correct.ts';
import { eat } from './eat.ts';
import { feed } from './feed.ts';
import { figure } from './figure.ts';
import { keep } from './keep.ts';
import type { Kind } from './kind.ts';
import { loss } from './loss.ts';
import { move } from './move.ts';
import { note } from './note.ts';
import { out } from './out.ts';
import { process } from './process.ts';
import { setting } from './setting.ts';
import { share } from './share.ts';
import { sign } from './sign.ts';
import { undo } from './undo.ts';
import { weather } from './weather.ts';
import { weigh } from './weigh.ts';

export const kinds: readonly Kind[] = [
  arrive,
  loss,
  feed,
  buy,
  weigh,
  move,
  out,
  weather,
  sign,
  process,
  keep,
  share,
  eat,
  setting,
  figure,
  note,
  undo,
  correct,
];

const byName: ReadonlyMap<string, Kind> = new Map(kinds.map((kind) => [kind.kind, kind]));

/** The entry kind of this name, or undefined. */
export const kindNamed = (name: unknown): Kind | undefined =>
  typeof name === 'string' ? byName.get(name) : undefined;
