// Holds a page against the rules of WCAG 2.2 A and AA that a program can look at, those of axe-core.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const options: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
  resultTypes: ['violations'],
};

/** One line a broken rule: the rule, what it says, and the first few places. */
export async function broken(page: Page): Promise<readonly string[]> {
  // Evaluated from outside: the page's own policy lets no other script in.
  await page.evaluate(axeSource);
  const { violations, passed } = await page.evaluate(async (asked) => {
    const { axe } = window as unknown as {
      axe: { run: (root: Document, wanted: unknown) => Promise<AxeResults> };
    };
    const results = await axe.run(document, asked);
    // A list that the keys in a field move through scrolls with them, though nothing in it takes the focus.
    const listed = document.activeElement?.getAttribute('aria-controls') ?? null;
    const isListed = (target: unknown): boolean =>
      listed !== null && typeof target === 'string' && document.querySelector(target)?.id === listed;
    const left = results.violations
      .map(({ id, help, nodes }) => ({
        id,
        help,
        nodes: nodes.filter(({ target }) => id !== 'scrollable-region-focusable' || !isListed(target[0])),
      }))
      .filter(({ nodes }) => nodes.length > 0);
    return { violations: left, passed: results.passes.length };
  }, options);
  // A look that saw nothing fails.
  expect(passed).toBeGreaterThan(10);
  return violations.map(
    ({ id, help, nodes }) =>
      `${id} (${help}), ${nodes.length} times: ${nodes
        .slice(0, 4)
        .map((node) => `${node.target.join(' ')} | ${node.any[0]?.message ?? node.all[0]?.message ?? ''}`)
        .join(' || ')}`,
  );
}
