/** What a supposed number can be, by the words about it and its kind. The ids are facts of the engine. */

/** First fit counts, so the more telling come first. */
export interface Supposable {
  readonly what: string;
  readonly fact: string;
  readonly words: ReadonlySet<string>;
  /** Dimensions of quantities, `money`, or `number` for a bare one. */
  readonly takes: readonly string[];
}

const about = (what: string, fact: string, takes: readonly string[], words: string): Supposable => ({
  what,
  fact,
  takes,
  words: new Set(words.split(' ')),
});

export const supposable: readonly Supposable[] = [
  about('feed price', 'bag-price', ['money', 'number'], 'price cost costs priced'),
  about('feed price', 'bag-price', ['money'], 'feed bag bags sack grain'),
  about('weight of a bag', 'bag-mass', ['mass'], 'bag bags sack sacks'),
  about('wanted carcass', 'wanted-carcass', ['mass'], 'want wanted dressed carcass carcasses cleaned target'),
  about('feed in stock', 'feed-left', ['mass'], 'feed bin stock left grain'),
  about('rain', 'rain-soon', ['rain', 'length'], 'rain rains rained pours'),
  about(
    'night low',
    'night-low',
    ['temperature', 'number'],
    'night nights tonight low overnight lows minimum cold colder freezes drops',
  ),
  about(
    'high',
    'today-high',
    ['temperature', 'number'],
    'high hit hits hot hotter heat day days out reaches maximum outside afternoon',
  ),
  about('night low', 'night-low', ['temperature'], 'it degrees temperature warmer temperatures'),
  about('drinkers', 'drinkers', ['number'], 'drinkers drinker waterers waterer'),
  about('people eating', 'eaters', ['number'], 'eating eaters mouths table dinner supper'),
  about('losses', 'order-loss', ['ratio'], 'mortality losses loss die dies died lost lose'),
  about('hands', 'hands', ['number'], 'hands helpers people crew us'),
  about('birds', 'alive', ['number'], 'birds bird chicks chickens of em them whites reds more fewer'),
];
