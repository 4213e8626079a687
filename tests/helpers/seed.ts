/** Property tests draw the same cases on every machine, so that a red run is always a real one; `FC_SEED` draws others. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? '20260514') });
