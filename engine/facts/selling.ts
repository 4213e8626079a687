/** How many birds of the keeper's own raising are slaughtered in the year, and whether United States law is what counts. */
import { defineFact } from './define.ts';
import { settingOf } from './setting.ts';

const yearOf = (day: string): string => day.slice(0, 4);

export const sellingFacts = [
  defineFact({
    id: 'country',
    unit: null,
    per: 'flock',
    compute: (read) => {
      const told = settingOf(read, 'country')?.value;
      return typeof told === 'string' ? told : undefined;
    },
  }),
  defineFact({
    id: 'country-name',
    unit: null,
    per: 'flock',
    needs: ['country'],
    compute: (read) => read.text('country').toLowerCase().replaceAll('.', '').replace(/^the /, '').trim(),
  }),
  defineFact({
    id: 'in-united-states',
    unit: null,
    per: 'flock',
    wants: ['country-name'],
    figures: ['selling/united-states'],
    compute: (read) => {
      const name = read.maybe('country-name');
      if (name === undefined) return 'not-told';
      // The table is a list of names; that a name stands in it is no amount to be shown.
      return read.namesOf('selling/united-states').includes(String(name)) ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'slaughtered-this-year',
    unit: 'bird',
    per: 'flock',
    compute: (read) => {
      const done = read.state.groups
        .flatMap((group) => group.processed)
        .filter((each) => yearOf(each.on) === yearOf(read.on) && each.on <= read.on);
      read.from(...done);
      return done.reduce((sum, each) => sum + each.count, 0);
    },
  }),
  defineFact({
    id: 'slaughter-to-come',
    unit: 'bird',
    per: 'flock',
    each: ['birds-for-table', 'table-until'],
    // One whose day is not known is counted: a limit is not to be passed unawares.
    compute: (read) => {
      const until = read.each('table-until');
      return read
        .each('birds-for-table')
        .filter((_, index) => yearOf(String(until[index]?.value ?? read.on)) === yearOf(read.on))
        .reduce((sum, { value }) => sum + Number(value ?? 0), 0);
    },
  }),
  defineFact({ id: 'birds-asked-about', unit: 'bird', per: 'flock', compute: () => 0 }),
  defineFact({
    id: 'birds-this-year',
    unit: 'bird',
    per: 'flock',
    needs: ['slaughtered-this-year', 'slaughter-to-come', 'birds-asked-about'],
    compute: (read) =>
      Math.max(
        read.number('slaughtered-this-year') + read.number('slaughter-to-come'),
        read.number('birds-asked-about'),
      ),
  }),
];
