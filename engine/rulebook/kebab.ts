/** What an id in the rule files looks like. */
import { z } from 'zod';

/** An id in kebab-case. */
export const kebab = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'wants lower-case words joined by hyphens');
