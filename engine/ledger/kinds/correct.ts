/** Some fields of an earlier line are to count as written otherwise; null takes a field away. Settled before anything is added up. */
import { defineKind } from './kind.ts';

export const correct = defineKind({
  kind: 'correct',
  fields: [
    { name: 'line', type: 'count', required: true, min: 1 },
    { name: 'print', type: 'text', required: true },
    { name: 'with', type: 'replacements', required: true },
  ],
  example: '{"kind":"correct","on":"2026-05-02","line":41,"print":"9f2c01ab","with":{"count":3}}',
  apply: () => {},
});
