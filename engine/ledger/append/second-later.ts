/** The next second after a written time, in the same offset from universal time. */

const stamp = /^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2})(Z|[+-]\d{2}:\d{2})$/;

/** `2026-05-14T09:30:00+02:00` → `2026-05-14T09:30:01+02:00`; null for what is no local time with seconds and an offset. */
export const aSecondLater = (written: string): string | null => {
  const [, local, offset] = stamp.exec(written) ?? [];
  if (local === undefined || offset === undefined) return null;
  const time = Date.parse(`${local}Z`);
  return Number.isNaN(time) ? null : `${new Date(time + 1000).toISOString().slice(0, 19)}${offset}`;
};
