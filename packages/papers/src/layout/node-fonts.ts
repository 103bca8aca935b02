import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { PaperFonts } from './pdf.ts';

/** The fonts of our papers, read from the packages they come in. For Node; a browser fetches the same files. */
export async function readPaperFonts(): Promise<PaperFonts> {
  const resolve = createRequire(import.meta.url).resolve;
  const read = async (file: string): Promise<Uint8Array> => readFile(resolve(file));
  const [regular, bold] = await Promise.all([
    read('@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf'),
    read('@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf'),
  ]);
  return {
    regular,
    bold,
    fallback: async () => {
      const [fallbackRegular, fallbackBold] = await Promise.all([
        read('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
        read('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
      ]);
      return { regular: fallbackRegular, bold: fallbackBold };
    },
  };
}
