/** The few comparisons that a rule may make, under the names rule files use, with what each takes. */

export interface Operator {
  readonly name: string;
  /** The rule engine's own operator; `known` is answered by us, as the engine has no third value. */
  readonly engine: string;
  /** What may stand on both sides: numbers of one dimension (days too), or any values that are simply the same or not. */
  readonly takes: 'order' | 'same' | 'list' | 'nothing';
}

export const operators: readonly Operator[] = [
  { name: 'less-than', engine: 'lessThan', takes: 'order' },
  { name: 'at-most', engine: 'lessThanInclusive', takes: 'order' },
  { name: 'more-than', engine: 'greaterThan', takes: 'order' },
  { name: 'at-least', engine: 'greaterThanInclusive', takes: 'order' },
  { name: 'is', engine: 'equal', takes: 'same' },
  { name: 'is-not', engine: 'notEqual', takes: 'same' },
  { name: 'one-of', engine: 'in', takes: 'list' },
  { name: 'none-of', engine: 'notIn', takes: 'list' },
  { name: 'known', engine: 'known', takes: 'nothing' },
];

export const operatorNamed = (name: string): Operator | undefined =>
  operators.find((each) => each.name === name);
