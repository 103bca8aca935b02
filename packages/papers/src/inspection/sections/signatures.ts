import type { InspectionRecord, Signature } from '@combside/casework/report/inspection-record';
import { drawSignature } from '../../drawings/signature.ts';
import type { Block } from '../../layout/paper-definition.ts';
import type { PaperWords } from '../phrases.ts';

/** Who signed, and the lines to sign on. */
export function signaturesSection(record: InspectionRecord, words: PaperWords): Block[] {
  const line = (as: Signature['as'], given: Signature | undefined) => {
    const title = words.say(`papers.signatures.${as}`);
    if (!given) return { title, drawing: null, alternative: '', below: words.say('papers.signatures.missing') };
    const at = words.dayAndTime(given.at, record.visit.timeZone);
    const below = [
      words.say('papers.signatures.name-at', { name: given.name, at }),
      given.how ? words.say(`papers.signatures.how.${given.how}`) : '',
      given.path || given.how === 'refused' ? '' : words.say('papers.signatures.typed'),
    ].filter(Boolean);
    return {
      title,
      drawing: given.path ? drawSignature(given.path) : null,
      alternative: words.say('papers.signatures.drawn', { name: given.name }),
      below: below.join('\n'),
    };
  };
  const inspector = record.signatures.findLast((one) => one.as === 'inspector');
  const receiver = record.signatures.findLast((one) => one.as === 'receiver');
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', level: 2, text: words.say('papers.signatures.title') },
        { kind: 'signatures', lines: [line('inspector', inspector), line('receiver', receiver)] },
      ],
    },
  ];
}
