/** A text in nothing but ASCII, for a terminal whose locale has no other characters. */

/** Signs that have a usual stand-in; whatever else has none is shown as `?`. */
const standIns: Readonly<Record<string, string>> = {
  '\u00a0': ' ',
  '\u202f': ' ',
  '–': '-',
  '—': '-',
  '−': '-',
  '…': '...',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '·': '.',
  '×': 'x',
  '÷': '/',
  '²': '2',
  '³': '3',
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '→': '->',
  '≥': '>=',
  '≤': '<=',
  '√': 'root ',
  '€': 'EUR ',
  '£': 'GBP ',
  ß: 'ss',
  ø: 'o',
  æ: 'ae',
};

/** The text with accents taken off and signs spelt out; `50 °F` becomes `50 F`. */
export const toAscii = (text: string): string =>
  /^[\0-\x7f]*$/.test(text)
    ? text
    : text
        .replace(/°(?=[CF])/g, '')
        .replaceAll('°', ' deg')
        .replace(/[^\0-\x7f]/gu, (sign) => standIns[sign] ?? sign.normalize('NFKD').replace(/\p{Mark}/gu, ''))
        .replace(/[^\0-\x7f]/gu, '?');
