// Times taken in the page itself: when the board's rows have come to rest, and every frame while something
// is done to them.
import type { Page } from 'playwright-core';

interface TimedWindow {
  drawnAt?: number;
  frames?: number[];
}

/** From now on every page of it notes when its rows were drawn last. */
export async function noteDrawing(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const noted = window as unknown as TimedWindow;
    const look = (changes: readonly MutationRecord[]): void => {
      const rows = document.querySelector('.chart-rows');
      if (rows === null || !changes.some(({ target }) => rows.contains(target) || target.contains(rows)))
        return;
      // The frame that shows the change has been made when the task after it begins.
      requestAnimationFrame(() =>
        setTimeout(() => {
          noted.drawnAt = performance.now();
        }),
      );
    };
    new MutationObserver(look).observe(document, { childList: true, subtree: true, attributes: true });
  });
}

export interface Drawn {
  /** Milliseconds from the navigation until the rows stood in a frame. */
  readonly whole: number;
  /** Of that, from the request for the board until the whole answer was there. */
  readonly core: number;
  /** And from then on. */
  readonly drawing: number;
  readonly rows: number;
}

/** Loads an address anew and waits until its board has been at rest for half a second. */
export async function drawBoard(page: Page, address: string): Promise<Drawn> {
  await page.goto('about:blank');
  await page.goto(address);
  await page.locator('.marks').first().waitFor();
  await page.waitForFunction(() => {
    const { drawnAt } = window as unknown as TimedWindow;
    return drawnAt !== undefined && performance.now() - drawnAt > 500;
  });
  return page.evaluate(() => {
    const calls = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
    const board = calls.find((call) => call.name.endsWith('/call/board.read'));
    const { drawnAt = Number.NaN } = window as unknown as TimedWindow;
    const [asked, answered] = [board?.requestStart ?? Number.NaN, board?.responseEnd ?? Number.NaN];
    return {
      whole: drawnAt,
      core: answered - asked,
      drawing: drawnAt - answered,
      rows: document.querySelectorAll('.marks').length,
    };
  });
}

/** Milliseconds from frame to frame while `work` is done, and a little after it. */
export async function framesWhile(page: Page, work: () => Promise<void>): Promise<readonly number[]> {
  await page.evaluate(() => {
    const noted = window as unknown as TimedWindow;
    const frames: number[] = [];
    noted.frames = frames;
    const next = (before: number) => (at: number) => {
      frames.push(at - before);
      if (noted.frames === frames) requestAnimationFrame(next(at));
    };
    requestAnimationFrame((at) => requestAnimationFrame(next(at)));
  });
  await work();
  await page.waitForTimeout(200);
  return page.evaluate(() => {
    const noted = window as unknown as TimedWindow;
    const { frames = [] } = noted;
    delete noted.frames;
    return frames;
  });
}

/** Takes the first row in sight by its bars, over several days and back, and leaves it where it was. */
export async function dragPour(page: Page): Promise<void> {
  const box = await page.locator('.row-chart .pour-mark').first().boundingBox();
  if (box === null) throw new Error('No pour is in sight.');
  const [x, y] = [box.x - 6, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 60; step += 1) {
    await page.mouse.move(x + 320 * Math.sin((step / 60) * Math.PI), y);
    await page.waitForTimeout(16);
    if (step === 30) await page.locator('.marks.ghost').waitFor();
  }
  await page.mouse.up();
}

/** Moves the first pour by days, as fast as a key repeats, waits for the answer and leaves it as it was. */
export async function keyPour(page: Page): Promise<void> {
  await page.locator('.row-head').first().focus();
  for (let press = 0; press < 6; press += 1) {
    await page.keyboard.press('Shift+ArrowRight');
    await page.waitForTimeout(60);
  }
  await page.locator('.difference').waitFor();
  await page.keyboard.press('Escape');
}
