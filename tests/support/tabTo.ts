import type { Locator, Page } from 'playwright-core';

const most = 120;

/**
 * Goes to a control as a hand without a mouse does: by Tab, one after another.
 * @throws when the keyboard does not get there
 */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  for (let turn = 0; turn < most; turn++) {
    if (await target.evaluate(isFocused)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not get to ${String(target)}.`);
}

export const isFocused = (element: any): boolean => element === element.ownerDocument.activeElement;
