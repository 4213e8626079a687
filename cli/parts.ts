/** Records that are read only when looked at: of hundreds of rules, an answer needs those of a few questions. */

/** By id: where the part's JSON begins in the text of all parts, and where it ends. */
export type Places = Readonly<Record<string, readonly [from: number, to: number]>>;

/** JSON in ASCII letters, so that its text can be read at one byte a letter and cut anywhere. */
export const toAscii = (value: unknown): string =>
  JSON.stringify(value).replace(
    /[\u007f-\uffff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** Joins parts into one text, after what stands in `before`. */
export const joinParts = (
  parts: Readonly<Record<string, unknown>>,
  before: string,
): { readonly places: Places; readonly text: string } => {
  const texts = [before];
  let at = before.length;
  const places = Object.entries(parts).map(([id, part]) => {
    const text = toAscii(part);
    texts.push(text);
    at += text.length;
    return [id, [at - text.length, at]] as const;
  });
  return { places: Object.fromEntries(places), text: texts.join('') };
};

/** The record of all parts. Looked at in whatever way, it is the plain record; each part is read once, when it is wanted. */
export const openParts = <T>(places: Places, text: string): Readonly<Record<string, T>> => {
  const read = new Map<string, T>();
  const partAt = (id: string, [from, to]: readonly [number, number]): T => {
    const known = read.get(id);
    if (known !== undefined) return known;
    const part: T = JSON.parse(text.slice(from, to));
    read.set(id, part);
    return part;
  };
  return new Proxy<Record<string, unknown>>(
    // Its keys are those of the record; what stands there is never handed out.
    places,
    {
      get: (of, id) => {
        const place = typeof id === 'string' && Object.hasOwn(places, id) ? places[id] : undefined;
        return place === undefined ? Reflect.get(of, id) : partAt(String(id), place);
      },
    },
  ) as Readonly<Record<string, T>>;
};
