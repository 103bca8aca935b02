import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import type { CombDeskDraft } from './use-comb-desk-draft.ts';

/** Names a draft by the photograph and the machine's cells: words count cells by their place among just these. */
export function draftName(
  colony: string,
  {
    photograph,
    reader,
    cells,
  }: Pick<CombReadingBody, 'reader' | 'cells'> & { readonly photograph: { readonly hash: string } },
): string {
  return `${colony}/${photograph.hash}/${reader.version}/${cells.count}`;
}

/** Says that what was said before is here again, and lets go of it where nobody wants it. */
export function CameBack({ draft }: { readonly draft: CombDeskDraft }) {
  const words = useWords();
  return (
    <div className="caution stack close">
      <p role="status">{words.say('district.comb.draft.back')}</p>
      <div>
        <Button onClick={draft.beginAgain}>{words.say('district.comb.draft.begin-again')}</Button>
      </div>
    </div>
  );
}
