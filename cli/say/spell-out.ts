/** Short forms and signs as the words that they stand for: a voice says "ft³" as "f t three". */

/** One and many of what follows a number. */
const units: Readonly<Record<string, readonly [string, string]>> = {
  'lb/ft³': ['pound per cubic foot', 'pounds per cubic foot'],
  'lb/ft²': ['pound per square foot', 'pounds per square foot'],
  'kg/m²': ['kilogram per square metre', 'kilograms per square metre'],
  'ft³': ['cubic foot', 'cubic feet'],
  'ft²': ['square foot', 'square feet'],
  'm²': ['square metre', 'square metres'],
  'm³': ['cubic metre', 'cubic metres'],
  'km/h': ['kilometre an hour', 'kilometres an hour'],
  mph: ['mile an hour', 'miles an hour'],
  ft: ['foot', 'feet'],
  cm: ['centimetre', 'centimetres'],
  mm: ['millimetre', 'millimetres'],
  m: ['metre', 'metres'],
  lb: ['pound', 'pounds'],
  oz: ['ounce', 'ounces'],
  kg: ['kilogram', 'kilograms'],
  g: ['gram', 'grams'],
  gal: ['gallon', 'gallons'],
  ml: ['millilitre', 'millilitres'],
  l: ['litre', 'litres'],
};

// What stands in quotes is a line of the file, read as it is.
const number = String.raw`(?<![\w.,/"-])([\d.,]*\d)`;
// The longer ones first, so that the cubic foot is not taken for a foot.
const names = Object.keys(units)
  .toSorted((one, other) => other.length - one.length)
  .join('|');
const measured = new RegExp(String.raw`${number} (${names})(?![\w²³/])`, 'gu');
/** An inch has the letters of a common word, so it is told by what follows. */
const inches = new RegExp(
  String.raw`${number} in(?= (?:of|is|x|by|deep|long|wide|high|above|and|or|apart)\b|[.,;:)]|$)`,
  'g',
);

const inWords = (amount: string, [one, many]: readonly [string, string]): string =>
  `${amount} ${amount === '1' ? one : many}`;

/** The text as it should be said; numbers, names and money stay as they are. */
export const spellOut = (text: string): string =>
  text
    .replace(measured, (whole, amount: string, unit: string) => {
      const words = units[unit];
      return words === undefined ? whole : inWords(amount, words);
    })
    .replace(inches, (_, amount: string) => inWords(amount, ['inch', 'inches']))
    .replace(/(?<=\w) [x×] (?=\d)/g, ' by ')
    .replace(/ → /g, ' to ')
    .replace(/ – /g, ', ');
