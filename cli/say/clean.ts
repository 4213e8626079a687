/** Makes any text safe to show on one row: no escapes, controls, direction marks or unseen characters get to the terminal. */
import { stripVTControlCharacters } from 'node:util';

// What joins or varies emoji is left where it does so; anywhere else it is as unseen as the rest. Interlinear marks hide
// what stands between them and are not counted among the ignorable.
const unseen =
  /(?<=\p{Extended_Pictographic}|\p{Emoji_Modifier}|\ufe0f)\u200d(?=\p{Extended_Pictographic})|(?<=\p{Emoji})\ufe0f|([\p{Cc}\p{Bidi_Control}\p{Default_Ignorable_Code_Point}\u2028\u2029\ufff9-\ufffb])/gu;

/** Puts something in the place of every character that no terminal shows. */
export const replaceUnseen = (text: string, put: (unseen: string) => string): string =>
  text.replace(unseen, (kept: string, found: string | undefined) =>
    found === undefined ? kept : put(found),
  );

/**
 * A text without terminal escapes, control characters, bidirectional controls, unseen characters or lone surrogates. Line
 * ends and tabs become one space each; other spaces stay, so that what the keeper is still typing is not trimmed under the
 * cursor.
 */
export const clean = (text: string): string =>
  replaceUnseen(
    stripVTControlCharacters(text).replace(/\r\n|[\n\r\t\v\f\u0085\u2028\u2029]/g, ' '),
    () => '',
  ).replace(/\p{Surrogate}/gu, '\ufffd');
