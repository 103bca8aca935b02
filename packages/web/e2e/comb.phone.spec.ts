import type { Locator, Page } from '@playwright/test';
import { combPhotograph, framedBy, frameUnderBees } from './comb-picture.ts';
import { expect, installed, picture, test } from './journey.ts';
import { signIn } from './sign-in.ts';

const saved = (page: Page) => expect(page.getByRole('status').filter({ hasText: 'saved here' })).toBeVisible();
const comb = (page: Page) => page.getByRole('application');

/** Taps a place of the upright photograph, in its pixels. */
async function tapAt(page: Page, at: { x: number; y: number }, width: number): Promise<void> {
  const box = await comb(page).boundingBox();
  if (!box) throw new Error('the comb is not in sight');
  const scale = box.width / width;
  await comb(page).tap({ position: { x: at.x * scale, y: at.y * scale } });
}

/** A finger on the glass, as the browser's own touch input sends it. */
async function finger(page: Page) {
  const session = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...touchPoints: { x: number; y: number }[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints });
  return {
    down: (at: { x: number; y: number }) => send('touchStart', at),
    to: (at: { x: number; y: number }) => send('touchMove', at),
    up: () => send('touchEnd'),
  };
}

async function middleOf(part: Locator): Promise<{ x: number; y: number }> {
  await part.scrollIntoViewIfNeeded();
  const box = await part.boundingBox();
  if (!box) throw new Error('not in sight');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const ring = (page: Page, name: string) => page.getByRole('slider', { name, exact: true });

async function keepAsFrameOneSideA(page: Page): Promise<void> {
  await page
    .getByRole('group', { name: /^Frame/ })
    .getByRole('button', { name: /: More$/ })
    .click();
  await page.getByRole('radio', { name: 'side A', exact: true }).click();
  await page.getByRole('button', { name: 'I looked and agree' }).click();
  await saved(page);
  await page.getByRole('button', { name: 'Keep with this examination' }).click();
  await expect(page.getByText('A person looked and agreed.')).toBeVisible();
}

test('a comb photograph is read without a network, corrected, kept, and seen at the office', async ({
  page,
  browser,
  server,
}) => {
  test.setTimeout(300_000);
  const { file, painted, width } = await combPhotograph();
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await installed(page);
  await page.context().setOffline(true);
  await page.getByRole('link', { name: /^Hazel Bank/ }).click();
  await page.getByRole('button', { name: '6, as registered' }).click();
  await page.getByRole('radio', { name: 'with consent', exact: true }).click();
  await page.getByRole('button', { name: 'Start the visit' }).click();
  await page.getByRole('button', { name: 'Open colony 1' }).click();
  await page.getByRole('button', { name: 'Rope test, finds, photographs' }).click();
  const more = page.url();

  // A photograph nobody can read says what to do, and stays.
  await page.setInputFiles('input[type=file]', { name: 'hand.jpg', mimeType: 'image/jpeg', buffer: frameUnderBees() });
  await page.getByRole('link', { name: 'Read the comb' }).click();
  await expect(page.getByRole('alert')).toContainText('let the comb fill the picture, and take it again', {
    timeout: 60_000,
  });
  await page.getByRole('link', { name: 'Back to colony 1' }).click();

  await page.setInputFiles('input[type=file]', { name: 'comb.jpg', mimeType: 'image/jpeg', buffer: file });
  await expect(page.getByRole('heading', { name: /^2 photographs/ })).toBeVisible();
  await expect(page.getByRole('list', { name: 'Photographs' }).getByRole('img')).toHaveCount(2);
  await page.getByRole('link', { name: 'Read the comb' }).last().click();
  await page.getByRole('button', { name: 'Stop reading' }).click();
  await expect(page.getByText('Stopped. Nothing was read')).toBeVisible();
  await expect(page.getByText('A measurement, not a diagnosis.')).toBeVisible();
  await picture(page, 'comb-stopped');

  // Its corners, set by finger under a loupe, by keys and by steps; what cannot be read between is refused in words.
  await page.getByRole('button', { name: 'Set the comb’s corners' }).click();
  const topLeft = ring(page, 'Top left corner');
  await expect(topLeft).toHaveAttribute('aria-valuetext', '10% from the left edge, 10% from the top edge');
  const hand = await finger(page);
  const from = await middleOf(topLeft);
  await hand.down(from);
  await hand.to({ x: from.x + 10, y: from.y + 20 });
  await hand.to({ x: from.x + 40, y: from.y + 60 });
  await expect(page.locator('.comb-loupe')).toBeVisible();
  await picture(page, 'comb-corners-loupe');
  await hand.up();
  await expect(page.locator('.comb-loupe')).toHaveCount(0);
  const moved = await middleOf(topLeft);
  expect(Math.hypot(moved.x - from.x - 40, moved.y - from.y - 60)).toBeLessThan(2);
  // Sent without waiting, so that the finger is up before its last way is drawn: the corner stays where it left it.
  await Promise.all([hand.down(moved), hand.to({ x: moved.x - 30, y: moved.y - 40 }), hand.up()]);
  await expect(page.locator('.comb-loupe')).toHaveCount(0);
  const flicked = await middleOf(topLeft);
  expect(Math.hypot(flicked.x - moved.x + 30, flicked.y - moved.y + 40)).toBeLessThan(2);
  const bottomRight = ring(page, 'Bottom right corner');
  await bottomRight.focus();
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('ArrowRight');
  await expect(bottomRight).toHaveAttribute('aria-valuetext', '91% from the left edge, 80% from the top edge');
  await page.getByRole('button', { name: 'Bottom right corner: a step down' }).click();
  await expect(page.getByText('Bottom right corner: 91% from the left edge, 81% from the top edge')).toBeVisible();
  const readPart = page.getByRole('button', { name: 'Read this part' });
  await saved(page);
  await bottomRight.focus();
  for (let n = 0; n < 8; n++) await page.keyboard.press('Shift+ArrowUp');
  await expect(page.getByRole('alert')).toContainText('Move the rings until the lines go once around the comb');
  await expect(readPart).toBeDisabled();
  for (let n = 0; n < 8; n++) await page.keyboard.press('Shift+ArrowDown');
  await expect(readPart).toBeEnabled();
  const stands = await topLeft.getAttribute('aria-valuetext');
  await saved(page);
  await page.reload();
  await expect(topLeft).toHaveAttribute('aria-valuetext', stands ?? '');
  await page.getByRole('button', { name: 'Read the whole picture' }).click();
  await expect(comb(page)).toBeVisible({ timeout: 60_000 });
  await saved(page);

  // What the screen says of sealed brood is what was painted, within a tenth.
  const sealed = painted.cells.filter((cell) => cell.class === 'sealed-worker-brood').length;
  const told = await page
    .getByRole('list', { name: 'Cells of each kind' })
    .getByRole('listitem')
    .filter({ hasText: 'Sealed worker brood' })
    .textContent();
  const counted = Number(told?.replace(/\D/g, ''));
  expect(Math.abs(counted - sealed)).toBeLessThan(0.1 * sealed);
  await expect(page.getByText(/^Solidness of sealed brood: \d+/)).toBeVisible();
  await page.getByText('How solidness is counted').click();

  // Held, the picture is bare until the finger goes; no cell comes under the lens.
  const drawn = page.locator('.comb-picture .comb-overlay .line');
  await expect(drawn.first()).toBeAttached();
  await hand.down(await middleOf(comb(page)));
  await expect(drawn).toHaveCount(0);
  await hand.up();
  await expect(drawn.first()).toBeAttached();
  await expect(page.getByRole('region', { name: 'One cell, magnified' })).toHaveCount(0);

  // One cell, known to be sealed, under the lens: what the machine read, what the person says, and back again.
  const one = painted.cells.find(
    (cell) =>
      cell.class === 'sealed-worker-brood' &&
      cell.covered === 0 &&
      Math.hypot(cell.x - 0.5 * width, cell.y - 0.6 * width) < 80,
  );
  if (!one) throw new Error('no sealed cell was painted near the middle');
  await tapAt(page, one, width);
  const lens = page.getByRole('region', { name: 'One cell, magnified' });
  const cell = lens.getByRole('status');
  await expect(cell).toContainText('Sealed worker brood. Read by the machine');
  await lens.getByRole('radio', { name: /^Pollen/ }).click();
  await expect(cell).toContainText('Pollen, by your look. The machine read: Sealed worker brood.');
  await page.getByRole('button', { name: 'Take back the last word on a cell' }).click();
  await expect(cell).toContainText('Read by the machine');
  await lens.getByRole('radio', { name: /^Pollen/ }).click();
  await saved(page);
  // Back, as the system means it, leads from the lens to the picture, with everything that was said.
  await page.goBack();
  await expect(comb(page)).toBeFocused();
  await expect(page.getByText('1 cell corrected by hand')).toBeVisible();

  // The page dies; what was said is there again.
  const crashed = page.waitForEvent('crash');
  const session = await page.context().newCDPSession(page);
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  const phone = await page.context().newPage();
  await page.close();
  await phone.goto(more);
  await phone.getByRole('link', { name: 'Go on with the comb reading' }).click();
  await expect(phone.getByText('This reading was begun before.')).toBeVisible();
  await expect(phone.getByText('1 cell corrected by hand')).toBeVisible();

  // Peeled off and back; a capping to look at again comes under the lens.
  const overlay = phone.getByRole('button', { name: 'Show what was read' });
  await expect(phone.locator('.comb-picture .comb-overlay .line').first()).toBeAttached();
  await overlay.click();
  await expect(phone.locator('.comb-picture .comb-overlay')).toHaveCount(0);
  await overlay.click();
  await phone.getByRole('button', { name: /^1: / }).click();
  await expect(phone.getByRole('region', { name: 'One cell, magnified' })).toBeVisible();
  await picture(phone, 'comb-second-look');
  await phone.getByRole('button', { name: 'Back to the whole comb' }).click();
  await keepAsFrameOneSideA(phone);
  await expect(phone.getByText('1 cell corrected by hand')).toBeVisible();

  const kept = phone.url();

  // The same side photographed once more, so that the office can set the two side by side; then the colony is closed.
  await phone.goto(more);
  const again = await combPhotograph(840, 1080, 42, true);
  await phone.setInputFiles('input[type=file]', { name: 'again.jpg', mimeType: 'image/jpeg', buffer: again.file });
  await expect(phone.getByRole('heading', { name: /^3 photographs/ })).toBeVisible();
  await phone.getByRole('link', { name: 'Read the comb' }).last().click();
  await expect(comb(phone)).toBeVisible({ timeout: 60_000 });

  // Two words on cells, then only a part is read, from where the frame was found and further in on the left: the word
  // within goes along, the other is told to be gone.
  const whole = again.width + 2 * framedBy;
  for (const [x, y] of [
    [0.5, 0.5],
    [0.03, 0.5],
  ] as const) {
    await tapAt(phone, { x: framedBy + x * again.width, y: framedBy + y * again.height }, whole);
    await phone.getByRole('radio', { name: /^Nectar/ }).click();
    await phone.getByRole('button', { name: 'Back to the whole comb' }).click();
  }
  await phone.getByRole('button', { name: 'Set the comb’s corners' }).click();
  await expect(phone.getByText('The rings stand where the frame was found.')).toBeVisible();
  await picture(phone, 'comb-corners-found');
  // The gap within the wood begins at 94 of 1036 pixels across and of 1276 down.
  await expect(ring(phone, 'Top left corner')).toHaveAttribute('aria-valuetext', /^9% from the left edge, 7% /);
  for (const name of ['Top left corner', 'Bottom left corner']) {
    await ring(phone, name).focus();
    await phone.keyboard.press('Shift+ArrowRight');
  }
  await phone.getByRole('button', { name: 'Read this part' }).click();
  await expect(phone.getByRole('alert')).toContainText('You spoke of 2 cells in this reading');
  await picture(phone, 'comb-corners-ask');
  await phone.getByRole('button', { name: 'Leave the reading as it is' }).click();
  await phone.getByRole('button', { name: 'Read this part' }).click();
  await phone.getByRole('button', { name: 'Read afresh' }).click();
  await expect(phone.getByText('Of your words on 2 cells, 1 went along to this reading.')).toBeVisible({
    timeout: 60_000,
  });
  await expect(phone.getByText('Only the part between the corners that were set was read.')).toBeVisible();
  await expect(phone.locator('.comb-picture .line.corners')).toBeAttached();
  await picture(phone, 'comb-part');
  await keepAsFrameOneSideA(phone);
  await phone.getByRole('link', { name: 'Back to colony 1' }).click();
  await phone.getByRole('button', { name: 'Back to colony 1' }).click();
  await phone.getByRole('button', { name: /^Nothing seen/ }).click();
  await phone.getByRole('button', { name: 'Close colony 1' }).click();
  await expect(phone.getByText('1 of 6')).toBeVisible();

  // A closed colony: the reading stands there, and a cell is corrected with a reason.
  await phone.goto(kept);
  await tapAt(phone, one, width);
  await phone.getByRole('radio', { name: /^Not decided/ }).click();
  await phone.getByRole('button', { name: 'Back to the whole comb' }).click();
  await phone.getByRole('button', { name: 'Why it is corrected' }).click();
  await phone.goBack();
  await expect(comb(phone)).toBeVisible();
  await phone.getByRole('button', { name: 'Why it is corrected' }).click();
  const write = phone.getByRole('button', { name: 'Write the correction' });
  await expect(write).toBeDisabled();
  await phone.getByRole('radio', { name: 'Tapped the wrong line' }).click();
  await picture(phone, 'comb-correct');
  await write.click();
  await expect(phone.getByText(/^Corrected .*: Tapped the wrong line$/)).toBeVisible();
  await phone.context().setOffline(false);
  await phone.goto('/hive');
  await expect(phone.getByText('at the office')).toBeVisible({ timeout: 60_000 });

  const desk = await browser.newContext({ baseURL: server.address, viewport: { width: 1440, height: 900 } });
  const office = await desk.newPage();
  await office.goto('/');
  await signIn(office, 'wilda@quillmoor.example');
  await expect(office.getByRole('link', { name: 'Questions' })).toBeVisible({ timeout: 60_000 });
  const [, visit, , hash] = /visit\/([^/]+)\/comb\/([^/]+)\/([^/]+)/.exec(kept) ?? [];
  await office.goto(`/district/visit/${visit}`);
  await expect(office.locator(`a[href$="${hash}"]`)).toHaveText('Comb on this photograph');
  await office.locator(`a[href$="${hash}"]`).click();
  await expect(comb(office)).toBeVisible({ timeout: 30_000 });
  await expect(office.locator('.comb-picture .comb-overlay .line').first()).toBeAttached();
  await expect(office.getByText(/^Corrected by Ines Marrowby, .*: Tapped the wrong line$/)).toBeVisible();

  // By keys alone: to a cell, to its neighbour and back, a class by its digit, taken back, and said again.
  await comb(office).focus();
  await office.keyboard.press('ArrowRight');
  const inHand = office.locator('.comb-desk [role=status][id$="-cell"]');
  const first = await inHand.textContent();
  expect(first).toMatch(/^Cell [\d,]+ of/);
  await office.keyboard.press('ArrowRight');
  expect(await inHand.textContent()).not.toBe(first);
  await office.keyboard.press('ArrowLeft');
  await expect(inHand).toHaveText(first ?? '');
  await office.keyboard.press('7');
  await expect(inHand).toContainText('Pollen');
  await office.keyboard.press('Control+z');
  await expect(inHand).toHaveText(first ?? '');
  await office.keyboard.press('7');
  await expect(inHand).toContainText('Pollen');
  await office.getByLabel('Why is it corrected?').fill('looked at the photograph again');
  await office.getByRole('button', { name: 'Write the correction' }).click();
  await expect(office.getByText(/^Corrected by Wilda .*: looked at the photograph again$/)).toBeVisible({
    timeout: 30_000,
  });

  await office.getByLabel('Set beside it').selectOption({ index: 1 });
  await expect(office.locator('.comb-side')).toHaveCount(2);
  await expect(office.locator('.comb-side .line.corners')).toHaveCount(1);
  const table = office.getByRole('table', { name: 'The same comb side at other visits' });
  await expect(table.getByRole('row', { name: /^Solidness of sealed brood/ })).toContainText('%');
  await expect(office.getByText('so the areas are not compared')).toBeVisible();
  await desk.close();
});
