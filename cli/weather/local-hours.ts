/** Hours of UTC as the clocks of a place show them. */

/** A function from hours since 1970 in UTC to `2026-05-14T07`; undefined for a zone that there is not. */
export const localHoursIn = (zone: string): ((hour: number) => string) | undefined => {
  try {
    const clock = new Intl.DateTimeFormat('en-CA', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
    });
    return (hour) => {
      const parts = new Map(
        clock.formatToParts(hour * 3_600_000).map(({ type, value }) => [type, value] as const),
      );
      return `${parts.get('year')}-${parts.get('month')}-${parts.get('day')}T${parts.get('hour')}`;
    };
  } catch {
    // The zone comes from a reply.
    return undefined;
  }
};
