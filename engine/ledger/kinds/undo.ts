/** An earlier line is to count as never written. What it takes back is settled before anything is added up. */
import { defineKind } from './kind.ts';

export const undo = defineKind({
  kind: 'undo',
  fields: [
    { name: 'line', type: 'count', required: true, min: 1 },
    { name: 'print', type: 'text', required: true },
  ],
  example: '{"kind":"undo","on":"2026-05-02","line":41,"print":"9f2c01ab"}',
  apply: () => {},
});
