import { expect, installed, judge, picture, test } from './journey.ts';
import { signIn } from './sign-in.ts';

const pixel = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

test('hives nobody registered are kept in under thirty seconds, without a network, and reach the office with their photograph', async ({
  page,
  context,
  browser,
  server,
}) => {
  test.setTimeout(180_000);
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ latitude: 56.42, longitude: 3.44, accuracy: 9 });
  await page.goto('/');
  await signIn(page, 'tobin@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await installed(page);
  await context.setOffline(true);
  await page.goto('/hive/find');
  await picture(page, 'find-apiary');

  const began = performance.now();
  await page.getByRole('link', { name: 'Apiary not in the register' }).click();
  await expect(page.getByText('56.42, 3.44, to within 9 m')).toBeVisible();
  await page
    .getByLabel('Take a photograph')
    .and(page.locator('input'))
    .setInputFiles({ name: 'hives.png', mimeType: 'image/png', buffer: pixel });
  await expect(page.getByText('Photograph kept on this phone')).toBeVisible();
  for (let hive = 0; hive < 3; hive++) await page.getByRole('button', { name: 'Hives seen from here: more' }).click();
  await page.getByRole('button', { name: 'Keep this apiary' }).click();
  await expect(page.getByText('Saved here. The owner may be found later.')).toBeVisible();
  expect(performance.now() - began).toBeLessThan(30_000);
  await judge(page, 'phone/roadside-kept/en');
  await context.setOffline(false);
  await page.getByRole('link', { name: /^Back to/ }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });

  const desk = await (await browser.newContext({ baseURL: server.address })).newPage();
  await desk.goto('/');
  await signIn(desk, 'wilda@quillmoor.example');
  await desk.getByRole('link', { name: 'Register', exact: true }).click();
  await desk.getByRole('searchbox').fill('roadside');
  await desk
    .getByRole('link', { name: /^Roadside/ })
    .first()
    .click();
  await expect(desk.getByText('Keeper not known').last()).toBeVisible();
  await expect(desk.getByText('3 colonies registered')).toBeVisible();
  await expect(desk.getByRole('img', { name: /^Photograph of the site/ })).toBeVisible({ timeout: 30_000 });
});

test('a phone that may not say where it is says what to do, and a registered neighbour is named', async ({
  page,
  context,
}) => {
  await page.goto('/');
  await signIn(page, 'tobin@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await page.goto('/hive/roadside');
  await expect(page.getByText(/Allow it in the settings|No position yet/)).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('button', { name: 'Keep this apiary' })).toBeDisabled();
  await judge(page, 'phone/roadside-no-position/en');

  const apiaries = (await (await page.request.get('/api/apiaries?search=Hazel')).json()) as {
    apiaries: { name: string; latitude: number; longitude: number }[];
  };
  const hazel = apiaries.apiaries[0];
  if (!hazel) throw new Error('the demo district has no Hazel Bank');
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ latitude: hazel.latitude + 0.0002, longitude: hazel.longitude, accuracy: 120 });
  await page.getByRole('button', { name: 'Measure again' }).click();
  await expect(page.getByText(/Hazel Bank is in the register, \d+\sm from here/)).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText(/To within 120\sm only/)).toBeVisible();
  await picture(page, 'roadside-near');
});
