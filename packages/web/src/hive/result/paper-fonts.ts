import type { PaperFonts } from '@combside/papers/layout/pdf';
import regularUrl from '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf?url';
import boldUrl from '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf?url';
import fallbackRegularUrl from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import fallbackBoldUrl from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url';

async function fetched(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`the font at ${url} is not on this device (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

async function pair(regular: string, bold: string): Promise<{ regular: Uint8Array; bold: Uint8Array }> {
  const [first, second] = await Promise.all([fetched(regular), fetched(bold)]);
  return { regular: first, bold: second };
}

/** The fonts of our papers, kept with the program so that a paper can be made without a network. */
export async function fetchPaperFonts(): Promise<PaperFonts> {
  return { ...(await pair(regularUrl, boldUrl)), fallback: () => pair(fallbackRegularUrl, fallbackBoldUrl) };
}
