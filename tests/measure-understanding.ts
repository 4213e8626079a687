/**
 * Prints how well labelled lines are understood: `npm run understanding -- FILE.jsonl... [--lines] [--topic ID]`. Without files: the
 * voices set aside, of which no line is shown.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { lexiconFor } from './helpers/learned.ts';
import { readRules } from './helpers/read-rules.ts';
import { placeFor } from './understanding/place.ts';
import { countOutcomes, readLabelled, type Scored, scoreLines } from './understanding/score.ts';
import { scoreSlots, tableOfSlots } from './understanding/slots.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { lines: { type: 'boolean', default: false }, topic: { type: 'string' } },
});

const share = (part: number, whole: number): string =>
  whole === 0 ? '-' : `${Math.round((100 * part) / whole)} %`;

const summary = (name: string, scored: readonly Scored[]): string => {
  const { right, asked, astray, wrong, away } = countOutcomes(scored);
  const all = scored.length;
  return `${name.padEnd(18)} ${String(all).padStart(4)} lines: right ${share(right, all)}, asked back with it among the choices ${share(asked, all)}, without it ${share(astray, all)}, wrong ${share(wrong, all)}, turned away ${share(away, all)}`;
};

const confusions = (scored: readonly Scored[]): readonly string[] => {
  const counts = new Map<string, number>();
  for (const { line, heard, outcome } of scored) {
    if (outcome !== 'wrong') continue;
    const pair = `${line.topic} taken for ${heard.readings[0]?.topic}`;
    counts.set(pair, (counts.get(pair) ?? 0) + 1);
  }
  return [...counts]
    .sort((one, other) => other[1] - one[1])
    .slice(0, 12)
    .map(([pair, count]) => `  ${count} x ${pair}`);
};

const lineReport = ({ line, heard, outcome }: Scored): string => {
  const tops = heard.readings.map((reading) => `${reading.topic} ${reading.score.toFixed(1)}`).join(', ');
  return `${outcome.padEnd(6)} ${line.topic.padEnd(14)} | ${line.text} | ${tops === '' ? `near ${heard.nearest.map(({ topic }) => topic).join(', ')}` : tops}`;
};

const aside = fileURLToPath(new URL('./understanding/aside/', import.meta.url));
const paths = positionals.length > 0 ? positionals : readdirSync(aside).map((file) => `${aside}${file}`);

const about = placeFor(readRules());

for (const path of paths) {
  const all = scoreLines(readLabelled(readFileSync(path, 'utf8')), about);
  const scored = values.topic === undefined ? all : all.filter((each) => each.line.topic === values.topic);
  const askable = scored.filter((each) => each.askable);
  const others = scored.filter((each) => !each.askable);
  const report = [
    path,
    summary('can be asked', askable),
    summary(
      '  questions',
      askable.filter((each) => !each.line.topic.startsWith('tell:')),
    ),
    summary(
      '  records',
      askable.filter((each) => each.line.topic.startsWith('tell:')),
    ),
    summary('cannot be asked', others),
    ...[...new Set(askable.map((each) => each.line.topic))].sort().map((topic) =>
      summary(
        `  ${topic}`,
        askable.filter((each) => each.line.topic === topic),
      ),
    ),
    ...confusions(scored),
    ...tableOfSlots(scoreSlots(readLabelled(readFileSync(path, 'utf8')), about, lexiconFor(about.book))),
    ...(values.lines && positionals.length > 0
      ? scored
          .filter((each) => (each.askable ? each.outcome !== 'right' : each.outcome !== 'away'))
          .map(lineReport)
      : []),
  ];
  process.stdout.write(`${report.join('\n')}\n`);
}
