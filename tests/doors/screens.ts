// `npm run screens -- FOLDER`: a picture of every screen with the demo, light and dark, in two sizes, for
// people to look at. Fails where a screen reports an error of its own, or shows nothing.
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import type { Browser } from 'playwright-core';
import { newFolder, startBrowser, startLocalServer } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { screenRoutes } from './screen-routes.ts';

const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
] as const;
const schemes = ['light', 'dark'] as const;

async function takeAll(folder: string): Promise<readonly string[]> {
  const home = newFolder();
  const server = await startLocalServer(['--demo', '--stay'], home);
  const browser = await startBrowser();
  const problems: string[] = [];
  try {
    for (const colorScheme of schemes)
      for (const viewport of sizes)
        problems.push(...(await takeSet(browser, server.url, folder, { colorScheme, viewport })));
  } finally {
    await browser.close();
    await server.stop();
    rmSync(home, { recursive: true, force: true });
  }
  return problems;
}

interface Look {
  readonly colorScheme: (typeof schemes)[number];
  readonly viewport: (typeof sizes)[number];
}

async function takeSet(
  browser: Browser,
  url: string,
  folder: string,
  look: Look,
): Promise<readonly string[]> {
  const problems: string[] = [];
  const context = await browser.newContext({ ...look, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.on('pageerror', (error) => problems.push(`${page.url()}: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(`${page.url()}: ${message.text()}`);
  });
  await page.goto(url);
  await page.waitForURL((now) => !now.searchParams.has('token'));
  for (const screen of screenRoutes) {
    const name = `${screen.name}-${look.colorScheme}-${look.viewport.width}x${look.viewport.height}.png`;
    await goToScreen(page, screen.address);
    const words = (await page.locator('body').innerText()).trim();
    if (words.length < 40) problems.push(`${name}: almost nothing is on it ("${words}")`);
    await page.screenshot({ path: path.join(folder, name) });
    console.log(name);
  }
  await context.close();
  return problems;
}

const [folder] = process.argv.slice(2);
if (folder === undefined) {
  console.error('npm run screens -- FOLDER');
  process.exitCode = 2;
} else {
  const target = path.resolve(process.env['INIT_CWD'] ?? process.cwd(), folder);
  mkdirSync(target, { recursive: true });
  const problems = await takeAll(target);
  for (const problem of problems) console.error(problem);
  console.log(`${screenRoutes.length * sizes.length * schemes.length} pictures in ${target}`);
  process.exitCode = problems.length === 0 ? 0 : 1;
}
