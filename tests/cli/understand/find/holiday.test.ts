import { expect, test } from 'vitest';
import { findDays } from '../../../../cli/understand/find/day.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

// Dates as printed in the almanacs of these years.
test.each([
  ['2026-05-14', 'thanksgiving', '2025-11-27', '2026-11-26'],
  ['2026-05-14', 'labor day', '2025-09-01', '2026-09-07'],
  ['2026-05-14', 'labour day', '2025-09-01', '2026-09-07'],
  ['2026-05-14', 'memorial day', '2025-05-26', '2026-05-25'],
  ['2026-05-14', 'easter', '2026-04-05', '2027-03-28'],
  ['2023-12-01', 'easter', '2023-04-09', '2024-03-31'],
  ['2026-05-14', 'christmas', '2025-12-25', '2026-12-25'],
  ['2026-12-25', 'christmas', '2026-12-25', '2026-12-25'],
  ['2026-05-14', 'the fourth of july', '2025-07-04', '2026-07-04'],
])('on %s %s was %s and will be %s', (today, words, past, future) => {
  const [day] = findDays(tokenise(words), today, false);
  expect([day?.past, day?.future]).toEqual([past, future]);
});
