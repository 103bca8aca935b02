import type { Page } from '@playwright/test';

/**
 * Signs in to the demonstration where the page asks for it, in English or German. What stands behind is not waited for.
 *
 * @param email of an account of the demonstration; all have the one password
 */
export async function signIn(page: Page, email: string): Promise<void> {
  await page.getByLabel(/^E-mail$/i).fill(email);
  await page.getByLabel(/^(Password|Passwort)$/).fill('quillmoor-comb-7');
  await page.getByRole('button', { name: /^(Sign in|Anmelden)$/ }).click();
}
