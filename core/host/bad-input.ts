// Turns what zod says about a wrong input into one refusal in plain words: the first wrong place, what
// was read there and what was wanted.
import type { z } from 'zod';
import { never, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** The first thing wrong with `input`, with the field in dots and brackets (`turns[3].from`). */
export function badInput(error: z.ZodError, input: unknown): Answer<never> {
  const first = error.issues[0];
  if (first === undefined) return refuse('bad-input', 'The input is not what was wanted.');
  const { issue, path } = innermost(first, []);
  const field = fieldName(path);
  const place = field === '' ? 'The input' : field;
  const rest = error.issues.length - 1;
  const more = rest === 0 ? '' : `, and ${rest} more`;
  const message = `${place}: ${sentence(issue, valueAt(input, path))}${more}.`;
  return refuse('bad-input', message, field === '' ? {} : { field });
}

export function fieldName(path: Path): string {
  let name = '';
  for (const step of path)
    name += typeof step === 'number' ? `[${step}]` : `${name === '' ? '' : '.'}${String(step)}`;
  return name;
}

/** A union that fails names every branch: the branch that came furthest says what was meant. */
function innermost(issue: Issue, before: Path): { readonly issue: Issue; readonly path: Path } {
  const path = [...before, ...issue.path];
  if (issue.code === 'invalid_key' || issue.code === 'invalid_element') {
    const inner = issue.issues[0];
    return inner === undefined ? { issue, path } : { issue: inner, path };
  }
  if (issue.code !== 'invalid_union') return { issue, path };
  const furthest = issue.errors
    .map((branch) => branch[0])
    .filter((inner) => inner !== undefined)
    .sort((one, other) => other.path.length - one.path.length)[0];
  if (furthest === undefined || furthest.path.length === 0) return { issue, path };
  return innermost(furthest, path);
}

function sentence(issue: Issue, read: unknown): string {
  if (issue.code === 'unrecognized_keys') {
    const keys = issue.keys.map((key) => `"${key}"`).join(', ');
    return `${issue.keys.length === 1 ? 'the key' : 'the keys'} ${keys} ${issue.keys.length === 1 ? 'is' : 'are'} unknown`;
  }
  if (issue.code === 'custom' || isOurs(issue.message)) return issue.message.replace(/\.$/u, '');
  return `${read === undefined ? 'it is missing' : `read ${shown(read)}`}, wanted ${wanted(issue)}`;
}

/** Zod's own sentences begin with one of these; any other is one of ours, and says more than we can here. */
function isOurs(message: string): boolean {
  return !/^(?:Invalid|Too|Unrecognized|Expected)/u.test(message);
}

function wanted(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return typeNames[issue.expected] ?? issue.expected;
    case 'too_small':
      return issue.origin === 'string' || issue.origin === 'array'
        ? `a length of at least ${issue.minimum}`
        : `${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}`;
    case 'too_big':
      return issue.origin === 'string' || issue.origin === 'array'
        ? `a length of at most ${issue.maximum}`
        : `${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}`;
    case 'invalid_value':
      return issue.values.map((value) => JSON.stringify(value)).join(' or ');
    case 'invalid_format':
      return formatNames[issue.format] ?? `a text in the form of ${issue.format}`;
    case 'invalid_union':
      return unionWanted(issue);
    case 'not_multiple_of':
      return `a multiple of ${issue.divisor}`;
    case 'custom':
    case 'unrecognized_keys':
    case 'invalid_key':
    case 'invalid_element':
      return 'something else';
    default:
      return never(issue);
  }
}

function unionWanted(issue: Extract<Issue, { code: 'invalid_union' }>): string {
  const branches = issue.errors.map((branch) => branch[0]).filter((inner) => inner !== undefined);
  if (branches.length === 0) return 'one of the known kinds';
  return [...new Set(branches.map(wanted))].join(' or ');
}

const typeNames: Readonly<Record<string, string>> = {
  array: 'a list',
  boolean: 'true or false',
  int: 'a whole number',
  number: 'a number',
  object: 'an object',
  record: 'an object',
  string: 'a text',
  tuple: 'a list',
};

const formatNames: Readonly<Record<string, string>> = {
  date: 'a date as 2026-03-02',
  datetime: 'an instant with offset as 2026-03-02T07:00:00-05:00',
};

function valueAt(input: unknown, path: Path): unknown {
  let value = input;
  for (const step of path) {
    if (value === null || typeof value !== 'object') return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (value !== null && typeof value === 'object') return 'an object';
  const text = typeof value === 'string' ? JSON.stringify(value) : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}..."` : text;
}
