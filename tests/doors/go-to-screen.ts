// Going to a screen by its address, and waiting until it has come to rest.
import type { Page } from 'playwright-core';

/** Addresses stand behind the #; a screen is there when its words have stopped changing. */
export async function goToScreen(page: Page, address: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, address);
  let before = '';
  for (let look = 0; look < 100; look += 1) {
    const now = await page.locator('body').innerText();
    if (now === before && (await page.locator('.waiting').count()) === 0) return;
    before = now;
    await page.evaluate(async () => {
      await document.fonts.ready;
      await new Promise((done) => setTimeout(done, 250));
    });
  }
  throw new Error(`${address} did not come to rest.`);
}
