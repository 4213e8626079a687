/** Facts of what is done with the meat after the processing day. */
import { storeFacts } from './store.ts';

export const keepingFacts = [...storeFacts];
