/** Questions whose span lies behind them: asked at its last day, with its first day given to the facts. */
import type { Request, Rulebook } from '../types.ts';

/**
 * A request over a span that lies behind (`moment.on` to `until`) as one at the span's end, where all of its entries are
 * known, with the fact `span-from` set to its first day. Any other request comes back as it is.
 */
export const lookBack = (book: Rulebook, request: Request): Request => {
  const { moment, until, supposing } = request;
  if (until === null || book.questions[request.question]?.looksBack !== true) return request;
  const [from, to] = moment.on <= until ? [moment.on, until] : [until, moment.on];
  return {
    ...request,
    moment: { ...moment, on: to },
    until: null,
    supposing: [...supposing, { what: { fact: 'span-from' }, value: from, adds: false }],
  };
};
