/** Property tests draw the same cases on every machine, so that a red run is always a real one; `FC_DRAWS` draws others. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.FC_DRAWS ?? '20260514') });
