/** Whole numbers of things that cannot be halved, safe from the last digits of floating point. */

const noise = 1e-9;

/** The fewest whole things that make at least `amount`; a begun one counts whole. `amount` is 0 or more. */
export const wholeUp = (amount: number): number => Math.max(0, Math.ceil(amount - noise));

/** The most whole things that go into `amount`, 0 or more. */
export const wholeDown = (amount: number): number => Math.max(0, Math.floor(amount + noise));
